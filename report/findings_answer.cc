#include "report/findings_answer.h"

#include <nlohmann/json.hpp>

#include "report/filter_picture.h"
#include "report/gradation_picture.h"
#include "report/method_sizes_picture.h"
#include "report/mix_picture.h"
#include "report/plan_picture.h"
#include "report/profile_picture.h"
#include "report/run_chart_picture.h"
#include "report/section_picture.h"
#include "report/sequential_count_picture.h"
#include "report/stones_picture.h"
#include "report/typical_section_picture.h"

namespace proofstone {
namespace {

using nlohmann::json;

template <class Picture>
void draw_all(const std::vector<Picture>& pictures, const char* kind, UnitSystem units, int width,
              json& into) {
  for (const auto& picture : pictures) {
    into.push_back({{"id", picture.id},
                    {"kind", kind},
                    {"title", picture.title},
                    {"description", picture.description},
                    {"svg", draw(picture, units, width)}});
  }
}

}  // namespace

json findings_answer(const Findings& findings, std::optional<int> width) {
  json answer = {{"findings", findings_json(findings)}};
  if (!width) return answer;
  const auto units = findings.units;
  json drawn = json::array();
  draw_all(findings.gradation_pictures, "gradation", units, *width, drawn);
  draw_all(findings.filter_pictures, "filter", units, *width, drawn);
  draw_all(findings.section_pictures, "section", units, *width, drawn);
  draw_all(findings.plan_pictures, "plan", units, *width, drawn);
  draw_all(findings.typical_sections, "typical section", units, *width, drawn);
  draw_all(findings.profile_pictures, "profile", units, *width, drawn);
  draw_all(findings.stones_pictures, "stones", units, *width, drawn);
  draw_all(findings.method_sizes_pictures, "method sizes", units, *width, drawn);
  draw_all(findings.run_charts, "run chart", units, *width, drawn);
  draw_all(findings.sequential_counts, "sequential count", units, *width, drawn);
  draw_all(findings.mix_pictures, "mix", units, *width, drawn);
  answer["pictures"] = std::move(drawn);
  return answer;
}

}  // namespace proofstone
