#include "report/findings_answer.h"

#include "engine/site/findings_text.h"
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

template <class Picture>
void add_frame(JsonText&, const Picture&, int) {}

/// So that something else can be laid where the plan is.
void add_frame(JsonText& into, const PlanPicture& picture, int width) {
  const auto frame = frame_of(picture, width);
  if (!frame) return;
  into.key("frame")
      .begin_object()
      .field("left", frame->left)
      .field("top", frame->top)
      .field("metres_per_pixel", frame->metres_per_pixel)
      .end_object();
}

template <class Picture>
void draw_all(const std::vector<Picture>& pictures, const char* kind, UnitSystem units, int width,
              JsonText& into) {
  for (const auto& picture : pictures) {
    into.begin_object()
        .field("id", picture.id)
        .field("kind", kind)
        .field("title", picture.title)
        .field("description", picture.description)
        .field("svg", draw(picture, units, width));
    add_frame(into, picture, width);
    into.end_object();
  }
}

void write_pictures(JsonText& into, const Findings& findings, int width) {
  const auto units = findings.units;
  into.begin_array();
  draw_all(findings.gradation_pictures, "gradation", units, width, into);
  draw_all(findings.filter_pictures, "filter", units, width, into);
  draw_all(findings.section_pictures, "section", units, width, into);
  draw_all(findings.plan_pictures, "plan", units, width, into);
  draw_all(findings.typical_sections, "typical section", units, width, into);
  draw_all(findings.profile_pictures, "profile", units, width, into);
  draw_all(findings.stones_pictures, "stones", units, width, into);
  draw_all(findings.method_sizes_pictures, "method sizes", units, width, into);
  draw_all(findings.run_charts, "run chart", units, width, into);
  draw_all(findings.sequential_counts, "sequential count", units, width, into);
  draw_all(findings.mix_pictures, "mix", units, width, into);
  into.end_array();
}

}  // namespace

std::string findings_answer(const Findings& findings, std::optional<int> width) {
  JsonText answer(JsonText::Letters::escaped);
  write_findings(answer.begin_object().key("findings"), findings);
  if (width) write_pictures(answer.key("pictures"), findings, *width);
  answer.end_object();
  return answer.take();
}

}  // namespace proofstone
