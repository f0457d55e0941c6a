#include "report/specified_mix_html.h"

#include <fmt/format.h>

#include "engine/mix/filled_mix.h"
#include "engine/site/mix_verdict.h"
#include "report/html_table.h"
#include "report/markup.h"

namespace proofstone {
namespace {

std::string two(double value) { return fmt::format("{:.2f}", value); }

std::string percent(double share) { return significant(100 * share, 3) + " %"; }

std::string parts_table(const SpecifiedMix& mix) {
  const auto number = [](double value) { return significant(value, 3); };
  std::vector<std::vector<std::string>> rows = {{mix.rock_name, number(mix.rock_parts),
                                                 percent(mix.rock_share), number(mix.rock.number()),
                                                 ""}};
  for (const auto& fill : mix.fills) {
    rows.push_back({fill.name, number(fill.parts), percent(fill.share), number(fill.loose.number()),
                    fill.bank ? number(fill.bank->number()) : ""});
  }
  return html_table({"Material", mix.bucket ? "Buckets in a batch" : "Parts in a batch, loose",
                     "Share of a batch, loose", "Loose, for each unit of layer in place",
                     "In the ground, for each unit of layer in place"},
                    rows);
}

std::string gradation_text(const Gradation& gradation, const Wording& wording) {
  std::vector<std::string> points;
  for (const auto& point : gradation.points()) {
    points.push_back(fmt::format("{} % smaller than {}", percent_number(point.percent_smaller),
                                 wording.shown(measure(point.size), LengthUse::grain)));
  }
  return listed(points);
}

std::string materials(const SpecifiedMix& mix, const Wording& wording) {
  std::vector<std::string> lines;
  for (const auto& fill : mix.fills) {
    lines.push_back(
        fmt::format("{}: {}, as the mix was worked out with; other gradation, other "
                    "parts.",
                    fill.name, gradation_text(fill.gradation, wording)));
  }
  return "<h3>Materials of the fill</h3>\n" + html_list(lines);
}

std::string tests(const SpecifiedMix& mix) {
  std::vector<std::vector<std::string>> rows = {
      {"Voids of the rock, by weighing a box or a truck of known volume",
       "before the first batch, and when rock or source changes", two(mix.rock_voids.number())}};
  for (const auto& fill : mix.fills) {
    rows.push_back({"Gradation of " + fill.name,
                    "before the first batch, and when the pit or its face changes",
                    "as above, within what the trial layer has shown to serve"});
    if (fill.in_place_over_loose) {
      rows.push_back({fill.name + ": volume in place over loose volume, in a box",
                      "before the first batch", two(fill.in_place_over_loose->number())});
    }
  }
  rows.push_back({"Count of buckets or loads of every material against the parts above",
                  "every batch", "the parts above, within the range below"});
  rows.push_back({"Trial layer, opened to its bottom", "before the layer is begun",
                  "voids full, stones touching, no pockets of fill alone"});
  rows.push_back({"Placed layer, opened to its bottom", "as often as the designer states",
                  "as the trial layer"});
  return "<h3>Tests</h3>\n<p>Common practice, no source: the designer is to state others and how "
         "often where local criteria ask for them.</p>\n" +
         html_table({"Test", "How often", "What is expected"}, rows);
}

std::string fill_range(const SpecifiedMix& mix) {
  std::vector<std::string> ranges;
  for (const auto& fill : mix.fills) {
    ranges.push_back(fmt::format("{} to {} of {}",
                                 significant(fill.parts * mix.tolerance->least, 3),
                                 significant(fill.parts * mix.tolerance->most, 3), fill.name));
  }
  return listed(ranges);
}

std::string acceptance(const SpecifiedMix& mix) {
  std::vector<std::string> lines;
  lines.push_back(fmt::format("To {} of {}, {}: {}, all fills changed alike.",
                              significant(mix.rock_parts, 3), mix.rock_name,
                              mix.bucket ? "buckets" : "parts by loose volume", fill_range(mix)));
  lines.push_back(
      fmt::format("Less leaves more than a tenth of the voids open (filled below {}); more {}.",
                  two(least_filling),
                  mix.placing == MixPlacing::mixed ? "holds the stones further apart"
                                                   : "is more than the voids hold"));
  lines.push_back(mix.placing == MixPlacing::mixed
                      ? "Mixed until no pocket of one material is seen, then placed."
                      : "Washed or vibrated into rock that already lies and bears, in lifts thin "
                        "enough for the fill to reach their bottom.");
  lines.emplace_back(
      "Not accepted: pockets of fill alone, stones that fill holds apart, voids that are open. It "
      "is taken out and placed again.");
  return "<h3>What is accepted</h3>\n" + html_list(lines);
}

std::string facts(const SpecifiedMix& mix, const Wording& wording) {
  std::string text = fmt::format("Rock with voids of {}; filled to {}",
                                 two(mix.rock_voids.number()), two(mix.filling.number()));
  if (mix.dilation && mix.placing == MixPlacing::mixed) {
    text += fmt::format("; dilation of the rock {}", two(mix.dilation->number()));
  }
  text += ".";
  if (mix.bucket) {
    text += fmt::format(" Bucket of {}.", wording.of(*mix.bucket));
  }
  if (mix.batch_in_place) {
    text += fmt::format(" One batch makes {} of layer in place.", wording.of(*mix.batch_in_place));
  }
  if (mix.designed) text += " These parts were found for the materials on offer.";
  return text;
}

std::string not_specified(const SpecifiedMix& mix) {
  return "<p><b>Nothing can be specified of this mix yet.</b></p>\n" + html_list(mix.problems);
}

std::string warning(const SpecifiedMix& mix) {
  return fmt::format("<p><b>Not to be ordered as it stands: {}.</b> {} {}</p>\n",
                     outcome_phrase(mix.outcome), escaped(mix.sentence), escaped(mix.next));
}

/// Parts that serve, beside stated ones that do not.
std::string beside(const SpecifiedMix& mix, const Wording& wording) {
  std::string html = "<h3>Proportions found beside those stated</h3>\n";
  if (!mix.none_beside.empty()) {
    return html + "<p>None could be found for the materials on offer.</p>\n" +
           html_list(mix.none_beside);
  }
  for (const auto& found : mix.beside) {
    if (found.outcome != Outcome::meets) html += warning(found);
    html += fmt::format("<p>{}</p>\n", escaped(facts(found, wording)));
    html += parts_table(found) + materials(found, wording);
    if (found.tolerance) html += acceptance(found);
  }
  return html;
}

}  // namespace

std::string specified_mix_html(const SpecifiedMix& mix, const Wording& wording) {
  std::string html =
      fmt::format("<section>\n<h2>{}</h2>\n<p class=\"kind\">{} rock of {}, in {}</p>\n",
                  escaped(mix.name), mix.kind, escaped(mix.rock_name), escaped(listed(mix.zones)));
  if (!mix.problems.empty()) return html + not_specified(mix) + "</section>\n";
  if (mix.outcome != Outcome::meets) html += warning(mix);
  html += fmt::format("<p>{}</p>\n", escaped(facts(mix, wording)));
  html += parts_table(mix) + materials(mix, wording) + tests(mix);
  if (mix.tolerance) html += acceptance(mix);
  if (mix.recipe) {
    html += fmt::format("<p class=\"source\">{}</p>\n", escaped(mix.recipe->sentence()));
  }
  if (!mix.notes.empty()) html += html_list(mix.notes);
  if (!mix.beside.empty() || !mix.none_beside.empty()) html += beside(mix, wording);
  return html + "</section>\n";
}

}  // namespace proofstone
