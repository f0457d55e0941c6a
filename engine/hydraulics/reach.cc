#include "engine/hydraulics/reach.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

#include "engine/hydraulics/interpolated_section.h"

namespace proofstone {

namespace {

constexpr std::size_t most_sections = 20'000;
constexpr double greatest_length_m = 100'000;

/// Collects what is wrong with one section of a reach.
class SectionCheck {
 public:
  SectionCheck(const ReachSection& section, std::size_t index, Problems& problems)
      : section_(section), index_(index), problems_(problems) {}

  void check(bool is_last) {
    check_banks();
    check_ineffective();
    check_share(section_.losses.contraction, "contraction loss");
    check_share(section_.losses.expansion, "expansion loss");
    if (section_.energy_coefficient) {
      const double alpha = section_.energy_coefficient->number();
      if (!(alpha >= 1 && alpha <= 10)) {
        add("energy-coefficient", "The energy coefficient is out of range.", "energy coefficient",
            "1 to 10");
      }
    }
    if (is_last) return;
    check_length(section_.to_next.left, "left length");
    check_length(section_.to_next.channel, "channel length");
    check_length(section_.to_next.right, "right length");
  }

 private:
  void add(const char* code, const char* what, const char* field, const char* allowed) {
    problems_.push_back(
        {code, what, "", fmt::format("section {}, {}", index_ + 1, field), allowed});
  }
  bool inside(Length station) const {
    return station >= section_.section.left_end() && station <= section_.section.right_end();
  }
  void check_length(Length length, const char* field) {
    if (length.meters() > 0 && length.meters() <= greatest_length_m) return;
    add("length-not-positive", "The distance to the next section is not above 0.", field,
        "a length above 0, at most 100 km");
  }
  void check_share(Dimensionless share, const char* field) {
    if (share.number() >= 0 && share.number() <= 1) return;
    add("loss-out-of-range", "The loss coefficient is out of range.", field, "0 to 1");
  }
  void check_banks() {
    if (section_.left_bank.has_value() != section_.right_bank.has_value()) {
      add("one-bank", "Only one bank is given.", section_.left_bank ? "right bank" : "left bank",
          "both banks or neither");
      return;
    }
    if (!section_.left_bank) return;
    if (!inside(*section_.left_bank) || !inside(*section_.right_bank)) {
      add("bank-outside", "A bank lies outside the section.", "banks",
          "stations inside the section");
    }
    if (!(*section_.left_bank < *section_.right_bank)) {
      add("banks-crossed", "The left bank does not stand left of the right one.", "banks",
          "left before right, looking downstream");
    }
  }
  void check_ineffective() {
    const auto& parts = section_.ineffective;
    for (std::size_t i = 0; i < parts.size(); ++i) {
      const bool finite = std::isfinite(parts[i].until.meters());
      const bool ordered = parts[i].left < parts[i].right;
      const bool apart = i == 0 || parts[i - 1].right <= parts[i].left;
      const bool touches = parts[i].right >= section_.section.left_end() &&
                           parts[i].left <= section_.section.right_end();
      if (finite && ordered && apart && touches) continue;
      add("ineffective-part", "The ineffective parts are not in order and apart in the section.",
          "ineffective parts", "left before right, one after the other, inside the section");
      return;
    }
  }

  const ReachSection& section_;
  std::size_t index_;
  Problems& problems_;
};

Problems problems_of(const std::vector<ReachSection>& sections) {
  Problems problems;
  for (std::size_t i = 0; i < sections.size(); ++i) {
    SectionCheck(sections[i], i, problems).check(i + 1 == sections.size());
    if (sections[i].left_bank.has_value() == sections.front().left_bank.has_value()) continue;
    problems.push_back({"banks-in-some", "Some sections have banks and some have none.", "",
                        fmt::format("section {}, banks", i + 1),
                        "banks in all sections of a reach or in none"});
  }
  return problems;
}

Problem whole_reach(const std::string& code, const std::string& what, const std::string& allowed) {
  return {code, what, "", "sections", allowed};
}

/// Into how many steps the way to the next section is cut; 0 when there would be too many.
std::size_t steps_to_next(const ReachSection& section, std::optional<Length> greatest_step) {
  if (!greatest_step) return 1;
  const double steps = std::ceil(section.to_next.channel / *greatest_step - 1e-9);
  if (steps > static_cast<double>(most_sections)) return 0;
  return steps > 1 ? static_cast<std::size_t>(steps) : 1;
}

}  // namespace

Expected<Reach> Reach::make(std::vector<ReachSection> sections,
                            std::optional<Length> greatest_step) {
  if (sections.size() < 2 || sections.size() > most_sections) {
    return whole_reach("section-count", fmt::format("The reach has {} sections.", sections.size()),
                       "2 to 20,000 sections");
  }
  if (greatest_step && !(greatest_step->meters() > 0)) {
    return whole_reach("step-not-positive", "The greatest step is not above 0.",
                       "a length above 0");
  }
  Problems problems = problems_of(sections);
  if (!problems.empty()) return problems;

  std::vector<ReachSection> all;
  for (std::size_t i = 0; i + 1 < sections.size(); ++i) {
    const std::size_t steps = steps_to_next(sections[i], greatest_step);
    if (steps == 0 || all.size() + steps > most_sections) {
      return whole_reach("too-many-sections", "The greatest step asks for too many sections.",
                         "a greater step, so that there are at most 20,000");
    }
    for (std::size_t step = 0; step < steps; ++step) {
      const double share = static_cast<double>(step) / static_cast<double>(steps);
      auto one = step == 0 ? Expected<ReachSection>(sections[i])
                           : interpolated_section(sections[i], sections[i + 1], share);
      if (!one) {
        return located_under(one.problems(),
                             fmt::format("between sections {} and {}, ", i + 1, i + 2));
      }
      const double part = 1.0 / static_cast<double>(steps);
      one->to_next = {part * sections[i].to_next.left, part * sections[i].to_next.channel,
                      part * sections[i].to_next.right};
      all.push_back(std::move(*one));
    }
  }
  all.push_back(sections.back());
  return Reach(std::move(all));
}

}  // namespace proofstone
