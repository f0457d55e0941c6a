#include "report/site_requests.h"

#include <fmt/format.h>

#include "engine/site/assess.h"
#include "engine/site/quantities.h"
#include "engine/site/version.h"
#include "report/blend_request.h"
#include "report/checklist_answer.h"
#include "report/compared_answer.h"
#include "report/count_sheet_answer.h"
#include "report/findings_answer.h"
#include "report/html_report.h"
#include "report/layered_section.h"
#include "report/mix_answer.h"
#include "report/quantity_answer.h"
#include "report/request_reading.h"
#include "report/specification_html.h"
#include "report/state_answer.h"

namespace proofstone {
namespace {

using nlohmann::json;

Answer assess_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto width = picture_width(request, problems);
  return answer_on_site(request, problems, [&](const Site& site) {
    return Answer::written(findings_answer(assess(site, units), width));
  });
}

Answer lot_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto width = picture_width(request, problems);
  const auto lot = request.required_text("lot");
  return answer_on_site(request, problems, [&](const Site& site) {
    if (!site.lots.contains(lot)) return refused({no_such_lot(site, lot)});
    return Answer::written(findings_answer(assess_lot(site, lot, units), width));
  });
}

Answer count_sheet_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto lot = request.required_text("lot");
  return answer_on_site(request, problems, [&](const Site& site) {
    return answer_named("count_sheet", count_sheet_answer(site, lot, units));
  });
}

Answer checklist_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto zone = request.required_text("zone");
  return answer_on_site(request, problems, [&](const Site& site) {
    return answer_named("checklist", checklist_answer(site, zone, units));
  });
}

/// The document as its revisions leave it: what a screen lists and edits.
Answer state_request(FieldReader& request, Problems& problems) {
  const auto* document = request.required("document");
  request.finish();
  if (!problems.empty()) return refused(problems);
  auto state = state_answer(*document);
  if (!state) return refused(state.problems());
  return Answer(*state);
}

Answer report_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto asked = read_paper(request, problems);
  return answer_on_site(request, problems, [&](const Site& site) {
    const auto paper = paper_of(site, asked, units);
    if (!paper) return refused(paper.problems());
    return Answer(json{{"html", html_report(*paper)}});
  });
}

/// The typical section of a zone and, below it, the key at its ends.
Answer drawing_of_zone(const Site& site, const std::string& zone, UnitSystem units) {
  std::string known;
  std::optional<LayeredDrawing> drawing;
  for (const auto& picture : assess(site, units).typical_sections) {
    const auto id = picture.id.substr(picture.id.find('.') + 1);
    if (picture.id == "typical." + id) known += (known.empty() ? "" : ", ") + id;
    if (id != zone) continue;
    auto drawn = layered_section(picture, units);
    if (drawing && drawn) place_below(*drawing, *drawn);
    if (!drawing) drawing = std::move(drawn);
  }
  if (drawing) return Answer(json{{"drawing", layered_drawing_json(*drawing)}});
  return refused(
      {{"no-section", fmt::format("There is no typical section of \"{}\".", zone), "", "/zone",
        known.empty() ? "a zone whose lines the document gives: a bank or bed with a section, a "
                        "shore, chute or drop with its slope, an outfall with its apron, a pier "
                        "with its pier_width; methods give the apron of an abutment and the pool "
                        "of a basin"
                      : known}});
}

Answer drawing_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto zone = request.required_text("zone");
  return answer_on_site(request, problems,
                        [&](const Site& site) { return drawing_of_zone(site, zone, units); });
}

Answer quantities_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  return answer_on_site(request, problems, [&](const Site& site) {
    const auto table = quantities_of(site, Wording(units));
    json answer = {{"quantities", quantities_json(table, units)},
                   {"csv", quantities_csv(table, units)}};
    answer["quantities"]["site"] = {{"name", site.name}, {"revision", site.revision}};
    answer["quantities"]["engine"] = engine_version;
    answer["quantities"]["cautions"] = usual_cautions();
    return Answer(answer);
  });
}

Answer substitution_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  SubstituteRock rock;
  rock.zone = request.required_text("zone");
  rock.source = request.optional_text("source");
  rock.rock_class = request.optional_text("class");
  rock.specific_gravity = request.optional_quantity<Dimensionless>("specific_gravity");
  if (request.has("angularity")) {
    rock.angularity = request.choice<Angularity>(
        "angularity", {{"angular", Angularity::angular}, {"rounded", Angularity::rounded}},
        std::nullopt);
  }
  return answer_on_site(request, problems, [&](const Site& site) {
    const auto study = study_substitution(site, rock, Wording(units));
    if (!study) return refused(study.problems());
    return Answer(json{{"substitution", substitution_json(*study, units)}});
  });
}

Answer mix_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto width = picture_width(request, problems);
  const auto zone = request.required_text("zone");
  return answer_on_site(request, problems, [&](const Site& site) {
    const auto proposed = propose_mix(site, zone, Wording(units));
    if (!proposed) return refused(proposed.problems());
    return Answer(json{{"mix", mix_json(*proposed, units, width)}});
  });
}

Answer submittals_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto source = request.required_text("source");
  return answer_on_site(request, problems, [&](const Site& site) {
    const auto comparison = compare_submittals(site, source, Wording(units));
    if (!comparison) return refused(comparison.problems());
    return Answer(json{{"submittals", submittals_json(*comparison, units)}});
  });
}

Answer specification_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  return answer_on_site(request, problems, [&](const Site& site) {
    return Answer(json{{"html", specification_html(specification_of(site), units)}});
  });
}

Answer validate_request(FieldReader& request, Problems& problems) {
  const auto site = site_of(request, problems);
  request.finish();
  if (!problems.empty()) return refused(problems);
  return refused(site ? Problems{} : site.problems());
}

Answer blend_request(FieldReader& request, Problems& problems) {
  const auto units = units_of(request);
  const auto width = picture_width(request, problems);
  const auto question = read_blend_question(request, problems);
  return answer_on_site(request, problems, [&](const Site& site) {
    const auto blend = blend_on_site(site, question);
    if (!blend) return refused(blend.problems());
    return Answer(json{{"blend", blend_json(*blend, units, width)}});
  });
}

}  // namespace

std::span<const SiteRequest> site_requests() {
  static constexpr SiteRequest known[] = {{"assess", assess_request},
                                          {"blend", blend_request},
                                          {"checklist", checklist_request},
                                          {"count-sheet", count_sheet_request},
                                          {"drawing", drawing_request},
                                          {"lot", lot_request},
                                          {"mix", mix_request},
                                          {"quantities", quantities_request},
                                          {"report", report_request},
                                          {"specification", specification_request},
                                          {"state", state_request},
                                          {"submittals", submittals_request},
                                          {"substitution", substitution_request},
                                          {"validate", validate_request}};
  return known;
}

}  // namespace proofstone
