#include "engine/sizing/sizing_from_zone.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <utility>

namespace proofstone {
namespace {

/// What the designer chose for a method in a zone; nullptr where nothing was chosen.
const nlohmann::json* choices_for(const std::string& method, const ZoneSetting& zone) {
  if (zone.method_choices == nullptr) return nullptr;
  const auto chosen = zone.method_choices->find(method);
  return chosen == zone.method_choices->end() ? nullptr : &*chosen;
}

/// Whether the designer chose every one of these inputs.
bool all_chosen(const nlohmann::json* choices, const std::vector<std::string>& keys) {
  return std::all_of(keys.begin(), keys.end(), [choices](const std::string& key) {
    return choices != nullptr && choices->contains(key);
  });
}

/// Why a method for `places` is silent about a zone elsewhere.
NotApplicable made_for_other_places(const std::vector<ZonePlace>& places, ZonePlace place) {
  std::string words;
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (i > 0) words += i + 1 == places.size() ? " and " : ", ";
    words += zone_place_word(places[i]);
  }
  return {fmt::format("It is made for zones of place {}, and this one is of place {}.", words,
                      zone_place_word(place))};
}

}  // namespace

SizingFromZone::SizingFromZone()
    : margins_(std::make_unique<nlohmann::json>(nlohmann::json::object())) {}
SizingFromZone::SizingFromZone(SizingFromZone&&) noexcept = default;
SizingFromZone::~SizingFromZone() = default;

void SizingFromZone::made_for(std::vector<ZonePlace> places) { places_ = std::move(places); }

void SizingFromZone::for_comparison_until_chosen(std::vector<std::string> keys,
                                                 std::string reason) {
  untold_ = std::move(keys);
  why_for_comparison_ = std::move(reason);
}

void SizingFromZone::for_comparison(std::string reason) {
  only_compared_ = true;
  why_for_comparison_ = std::move(reason);
}

void SizingFromZone::safety_margin(const std::string& key, double none) { (*margins_)[key] = none; }

SizingAnswer SizingFromZone::size(const ZoneSetting& zone) const {
  SizingAnswer answer;
  const Untyped inputs = inputs_of(zone, answer);
  if (!inputs) return answer;
  const Parts of = parts();
  const auto result = of.method.run(of.types, inputs.get(), answer.evaluation);
  if (!result) {
    answer.problems = located(result.problems());
  } else {
    answer.required = required_from(result->get());
  }
  return answer;
}

std::optional<RequiredSize> SizingFromZone::required_size(const ZoneSetting& zone) const {
  SizingAnswer answer;
  const Untyped inputs = inputs_of(zone, answer);
  if (!inputs) return std::nullopt;
  const Parts of = parts();
  const auto result = of.method.run_unread(of.types, inputs.get());
  if (!result) return std::nullopt;
  return required_from(result->get());
}

Expected<VariedSize> SizingFromZone::vary_size(const ZoneSetting& zone,
                                               const std::vector<std::string>& varied,
                                               SizeMeaning meaning) const {
  SizingAnswer answer;
  const Untyped inputs = inputs_of(zone, answer);
  if (answer.not_applicable) {
    return Problem{"not-applicable", answer.not_applicable->reason, "", "", ""};
  }
  if (!inputs) return answer.problems;
  const Parts of = parts();
  auto problems =
      method_inputs::read(of.method.about, of.method.slots, *margins_, false, inputs.get());
  if (!problems.empty()) return located(std::move(problems));
  const auto result = of.method.run_unread(of.types, inputs.get());
  if (!result) return located(result.problems());
  auto size = of.method.vary_from(of.types, inputs, varied, [this, meaning](const void* at) {
    return size_as(required_from(at), meaning).meters();
  });
  if (!size) return size.problems();
  return VariedSize{required_from(result->get()).percent_smaller, std::move(*size)};
}

Problems SizingFromZone::located(Problems problems) const {
  return located_under(std::move(problems), "/" + description().id);
}

/// The inputs that a zone gives, with the designer's choices over them; without them the answer
/// says why.
Untyped SizingFromZone::inputs_of(const ZoneSetting& zone, SizingAnswer& answer) const {
  if (!serves(*this, zone.place)) {
    answer.not_applicable = made_for_other_places(places_, zone.place);
    return nullptr;
  }
  Untyped inputs = inputs_from(zone, answer.not_applicable);
  if (!inputs) return nullptr;
  const Parts of = parts();
  const auto* choices = choices_for(of.method.about.id, zone);
  if (choices != nullptr) {
    answer.problems = located(
        method_inputs::read(of.method.about, of.method.slots, *choices, false, inputs.get()));
    if (!answer.problems.empty()) return nullptr;
  }
  answer.problems = located(
      method_inputs::not_given(of.method.about, of.method.slots, inputs.get(), of.defaults));
  if (!answer.problems.empty()) return nullptr;
  if (only_compared_ || !all_chosen(choices, untold_)) answer.for_comparison = why_for_comparison_;
  return inputs;
}

}  // namespace proofstone
