#include "report/specification_html.h"

#include <fmt/format.h>

#include "engine/rock/rock_requirements.h"
#include "engine/site/assess.h"
#include "engine/site/version.h"
#include "engine/site/wording.h"
#include "report/html_style.h"
#include "report/html_table.h"
#include "report/markup.h"
#include "report/specified_filter_html.h"
#include "report/specified_mix_html.h"

namespace proofstone {
namespace {

template <class Q>
std::string range_text(const std::optional<Q>& least, const std::optional<Q>& most,
                       const Wording& wording, LengthUse use) {
  const auto shown = [&](const Q& value) { return wording.shown(measure(value), use); };
  if (least && most) return shown(*least) + " to " + shown(*most);
  if (least) return "at least " + shown(*least);
  return most ? "at most " + shown(*most) : std::string();
}

std::string sizes_table(const SpecifiedClass& rock, const Wording& wording) {
  std::vector<std::vector<std::string>> rows;
  for (const auto& size : rock.sizes) {
    rows.push_back({fmt::format("D{}: {} % smaller", percent_number(size.percent),
                                percent_number(size.percent)),
                    range_text(size.least, size.most, wording, LengthUse::rock),
                    range_text(size.least_mass, size.most_mass, wording, LengthUse::ground)});
  }
  return html_table({"Percent smaller", "Size", "Stone of that size"}, rows);
}

std::string count_text(const SpecifiedLimit& limit, bool shown) {
  if (!limit.counted) {
    return shown ? "none seen that breaks it, in enough stones" : "one stone that breaks it";
  }
  const auto& number = shown ? limit.count.shown : limit.count.broken;
  if (!number) return "not by so few stones";
  const bool at_most = (limit.sense == BandCondition::Sense::at_most) == shown;
  return fmt::format("{} {}", at_most ? "at most" : "at least", *number);
}

std::string limits_table(const SpecifiedClass& rock) {
  std::vector<std::vector<std::string>> rows;
  for (const auto& limit : rock.limits) {
    rows.push_back({limit.wording, count_text(limit, true), count_text(limit, false)});
  }
  return html_table(
      {"Limit", "Shown to be kept: smaller stones", "Shown to be broken: smaller stones"}, rows);
}

std::string class_section(const SpecifiedClass& rock, const Specification& whole,
                          const Wording& wording) {
  std::string html = fmt::format("<section>\n<h2>{}</h2>\n<p class=\"kind\">{}</p>\n",
                                 escaped(rock.name), escaped(rock.family));
  std::vector<std::string> places;
  for (const auto& place : rock.places) {
    places.push_back(fmt::format("{}: a layer of {}, square to the slope, placed {}", place.zone,
                                 wording.rock(place.thickness),
                                 place.placement == Placement::dry ? "in the dry" : "under water"));
  }
  html += html_list(places);
  html += fmt::format(
      "<h3>Sizes</h3>\n<p>Size is the {}, percent is by {}. Masses are of rock with a specific "
      "gravity of {} ({}); another source has other masses for the same sizes.</p>\n",
      size_meaning_name(rock.basis.size), percent_of_name(rock.basis.percent),
      significant(rock.specific_gravity.number(), 4), escaped(listed(rock.sources)));
  html += sizes_table(rock, wording);
  html += fmt::format(
      "<h3>Limits, and what a count of {} stones on a grid says of them</h3>\n<p>All limits are "
      "judged together at {} confidence. Between the two numbers nothing is decided, and more "
      "stones are counted.</p>\n",
      whole.counted_stones, confidence_text(whole.confidence));
  html += limits_table(rock);
  html += fmt::format("<p class=\"source\">{}</p>\n", escaped(rock.source.sentence()));
  if (!rock.notes.empty()) html += html_list(rock.notes);
  return html + "</section>\n";
}

std::string tests_section(const Specification& whole, UnitSystem units) {
  std::string html = "<section>\n<h2>Tests of the source</h2>\n";
  html += whole.rock_limits_chosen
              ? "<p>Every limit is to be shown by tests of rock from the ledge and the season that "
                "the deliveries come from.</p>\n"
              : "<p><b>The document chooses no set of requirements.</b> Published ones are shown "
                "side by side; the designer is to choose before this sheet is used.</p>\n";
  if (!whole.exposure.empty()) {
    html += fmt::format("<p>Exposure: {}.</p>\n", escaped(whole.exposure));
  }
  std::vector<std::vector<std::string>> rows;
  for (const auto& kind : rock_test_kinds()) {
    for (const auto& limit : whole.rock_limits) {
      if (limit.test != kind.test) continue;
      rows.push_back(
          {kind.name, limit_text(limit, units), kind.standards, limit.source.sentence()});
    }
  }
  return html + html_table({"Test", "Limit", "By", "Source"}, rows) + "</section>\n";
}

std::vector<std::string> sentences_of(const std::vector<SourcedRule>& rules) {
  std::vector<std::string> sentences;
  for (const auto& rule : rules) {
    sentences.push_back(fmt::format("{} ({}).", rule.what, rule.source.sentence()));
  }
  return sentences;
}

std::string stated_or_published(const char* heading, const std::vector<std::string>& stated,
                                const std::vector<SourcedRule>& published) {
  std::string html = fmt::format("<section>\n<h2>{}</h2>\n", heading);
  if (!stated.empty()) {
    html += html_list(stated);
  } else {
    html += "<p><b>The document states nothing of this.</b> The designer is to state it.</p>\n";
  }
  return html + "<h3>What published documents say</h3>\n" + html_list(sentences_of(published)) +
         "</section>\n";
}

std::string acceptance_section(const Specification& whole) {
  const auto sure = confidence_text(whole.confidence);
  return "<section>\n<h2>How a lot is accepted</h2>\n" +
         html_list(
             {fmt::format("Meets: every limit of its class is shown to be kept at {} confidence, "
                          "all limits together, by all looks at the lot put together.",
                          sure),
              fmt::format("Falls short: some limit is shown to be broken at {} confidence.", sure),
              ("Not yet known: neither is shown. More stones are counted or weighed, on a grid "
               "spread over the whole pile and both its sides."),
              ("Looks that contradict one another beyond chance are not put together; the "
               "designer is asked."),
              ("Counts of every stone of a face or a load are turned into shares of mass before "
               "they are judged; counts on a grid stand as they are."),
              ("A lot that falls short is taken back through the design of its zones: it may "
               "serve elsewhere, be blended, or go back.")}) +
         "</section>\n";
}

std::string opening(const Specification& whole) {
  return fmt::format(
      "<header>\n<p class=\"kind\">Rock protection: specification sheet</p>\n<h1>{}</h1>\n"
      "<dl class=\"facts\">\n<dt>Document</dt><dd>revision {}</dd>\n<dt>Computed by</dt><dd>"
      "Proofstone {}</dd>\n</dl>\n</header>\n",
      escaped(whole.site_name.empty() ? "Unnamed site" : whole.site_name), escaped(whole.revision),
      engine_version);
}

}  // namespace

std::string specification_html(const Specification& whole, UnitSystem units) {
  const Wording wording(units);
  std::string html =
      "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
      "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
      "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
      "style-src 'unsafe-inline'\">\n";
  html += fmt::format("<title>{}: specification</title>\n<style>\n{}</style>\n</head>\n<body>\n",
                      escaped(whole.site_name), html_style());
  html += opening(whole) + "<main>\n";
  if (whole.classes.empty()) html += "<p>The site has no zone, and so no rock to specify.</p>\n";
  for (const auto& rock : whole.classes) html += class_section(rock, whole, wording);
  for (const auto& mix : whole.mixes) html += specified_mix_html(mix, wording);
  html += specified_filters_html(whole.filters, wording);
  const auto& catalog = requirement_catalog();
  html += tests_section(whole, units);
  html += stated_or_published("How often", whole.frequency, catalog.sampling);
  html += acceptance_section(whole);
  html += stated_or_published("Placing", whole.placing, catalog.placing);
  html += "</main>\n<section>\n<h2>Cautions</h2>\n<div class=\"cautions\">\n" +
          html_list(usual_cautions()) + "</div>\n</section>\n";
  return html + "</body>\n</html>\n";
}

}  // namespace proofstone
