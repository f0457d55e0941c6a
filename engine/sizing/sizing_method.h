#pragma once

#include <memory>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "engine/method/typed_method.h"
#include "engine/rock/gradation.h"
#include "engine/sizing/zone_setting.h"

namespace proofstone {

/// The size a method asks for, as a point of a gradation curve: `size` must not be larger than the
/// size of which `percent_smaller` of the rock, by mass, is smaller.
struct RequiredSize {
  double percent_smaller = 50;  ///< 30 for D30, 50 for D50
  Length size;
  /// The method asks for the mass of a stone; `size` is then the sphere of that mass and is turned
  /// into whatever the word size means in the class or measurement it is held against.
  bool by_mass = false;
};

/// The size asked for as `meaning` measures stones.
Length size_as(const RequiredSize& required, SizeMeaning meaning);

/// Density of the rock of a zone: its specific gravity times 1000 kg/m³.
Density density_of(const RockProperties& rock);

/// Why a method does not speak about a zone.
struct NotApplicable {
  std::string reason;
};

/// What a sizing method says of a zone.
struct SizingAnswer {
  std::optional<RequiredSize> required;  ///< present when the method applies and could compute
  std::optional<NotApplicable> not_applicable;
  Problems problems;  ///< why it could not compute, when it applies
  /// Why the answer only stands beside the others and does not govern; absent when it may govern.
  std::optional<std::string> for_comparison;
  Evaluation evaluation;
};

/// The size a method asks for as a function of some of its inputs.
struct VariedSize {
  double percent_smaller = 50;
  std::shared_ptr<const VariedOutput> size;
};

/// Inputs held at dimensionless values, as a JSON object of inputs.
class HeldInputs {
 public:
  HeldInputs();
  void hold(const std::string& key, double value);
  const nlohmann::json& held() const { return *held_; }

 private:
  std::shared_ptr<nlohmann::json> held_;
};

/// A method that sizes rock: it can be called by name like any method, and it can read what it
/// needs from a zone.
class SizingMethod : public Method {
 public:
  /// Where zones must lie for this method to speak about them.
  virtual const std::vector<ZonePlace>& places() const = 0;
  virtual SizingAnswer size(const ZoneSetting& zone) const = 0;
  /// What `size` requires, without the working: for many trials. Absent where that is.
  virtual std::optional<RequiredSize> required_size(const ZoneSetting& zone) const = 0;
  /// Those of its inputs that are margins of safety, at values that leave none.
  virtual const nlohmann::json& without_margins() const = 0;
  /// The size at the brink of motion in a zone, as a function of the inputs named in `varied`:
  /// safety margins among the inputs are held where they leave none. Problems: why the method
  /// cannot speak, and names that are no quantities of it.
  /// The size is as `meaning` measures stones.
  virtual Expected<VariedSize> vary_size(const ZoneSetting& zone,
                                         const std::vector<std::string>& varied,
                                         SizeMeaning meaning) const = 0;
};

/// Whether zones of this place are what the method is made for.
bool serves(const SizingMethod& method, ZonePlace place);

/// What the designer chose for a method in a zone; nullptr where nothing was chosen.
const nlohmann::json* choices_for(const std::string& method, const ZoneSetting& zone);

/// Whether the designer chose every one of these inputs.
bool all_chosen(const nlohmann::json* choices, const std::vector<std::string>& keys);

/// Why a method for `places` is silent about a zone elsewhere.
NotApplicable made_for_other_places(const std::vector<ZonePlace>& places, ZonePlace place);

/// TypedMethod that sizes rock in zones at `places`. `from_zone` fills the inputs from a zone or
/// says why the method does not apply; the designer's choices for this method are then read over
/// them. A required input that neither gives is a Problem that names it.
template <class Inputs, class Result>
class TypedSizingMethod : public TypedMethod<Inputs, Result, SizingMethod> {
 public:
  using FromZone = std::variant<Inputs, NotApplicable> (*)(const ZoneSetting&);
  using ToRequired = RequiredSize (*)(const Result&);
  using Parent = TypedMethod<Inputs, Result, SizingMethod>;

  TypedSizingMethod(MethodDescription about, typename Parent::Function function, FromZone from_zone,
                    ToRequired to_required,
                    std::vector<ZonePlace> places = {ZonePlace::bank, ZonePlace::bed})
      : Parent(std::move(about), function),
        from_zone_(from_zone),
        to_required_(to_required),
        places_(std::move(places)) {}

  const std::vector<ZonePlace>& places() const override { return places_; }

  /// A zone does not tell these inputs; with their defaults the answer is for comparison, for
  /// `reason`. It may govern once the designer has chosen every one of them for the zone.
  void for_comparison_until_chosen(std::vector<std::string> keys, std::string reason) {
    untold_ = std::move(keys);
    why_for_comparison_ = std::move(reason);
  }

  /// The answer only ever stands beside the others, for `reason`, unless the designer has this
  /// method govern the zone.
  void for_comparison(std::string reason) {
    only_compared_ = true;
    why_for_comparison_ = std::move(reason);
  }

  /// The input `key` is a margin of safety that the designer asks for, and no property of water or
  /// rock: at `none` it leaves none.
  void safety_margin(const std::string& key, double none) { margins_.hold(key, none); }
  const nlohmann::json& without_margins() const override { return margins_.held(); }

  SizingAnswer size(const ZoneSetting& zone) const override {
    SizingAnswer answer;
    const auto inputs = inputs_of(zone, answer);
    if (!inputs) return answer;
    auto result = this->run_typed(*inputs, answer.evaluation);
    if (!result) {
      answer.problems = located(result.problems());
    } else {
      answer.required = to_required_(*result);
    }
    return answer;
  }

  std::optional<RequiredSize> required_size(const ZoneSetting& zone) const override {
    SizingAnswer answer;
    const auto inputs = inputs_of(zone, answer);
    if (!inputs) return std::nullopt;
    const auto result = this->run_unread(*inputs);
    if (!result) return std::nullopt;
    return to_required_(*result);
  }

  Expected<VariedSize> vary_size(const ZoneSetting& zone, const std::vector<std::string>& varied,
                                 SizeMeaning meaning) const override {
    SizingAnswer answer;
    auto inputs = inputs_of(zone, answer);
    if (answer.not_applicable) {
      return Problem{"not-applicable", answer.not_applicable->reason, "", "", ""};
    }
    if (!inputs) return answer.problems;
    inputs = *this->read(margins_.held(), std::move(*inputs), false);
    const auto result = this->run_unread(*inputs);
    if (!result) return located(result.problems());
    auto size = this->vary_from(*inputs, varied, [this, meaning](const Result& at) {
      return size_as(to_required_(at), meaning).meters();
    });
    if (!size) return size.problems();
    return VariedSize{to_required_(*result).percent_smaller, std::move(*size)};
  }

 private:
  /// Problems of this method among those of others.
  Problems located(Problems problems) const {
    return located_under(std::move(problems), "/" + this->description().id);
  }

  /// The inputs that a zone gives, with the designer's choices over them; without them the answer
  /// says why.
  std::optional<Inputs> inputs_of(const ZoneSetting& zone, SizingAnswer& answer) const {
    if (!serves(*this, zone.place)) {
      answer.not_applicable = made_for_other_places(places_, zone.place);
      return std::nullopt;
    }
    auto filled = from_zone_(zone);
    if (auto* reason = std::get_if<NotApplicable>(&filled)) {
      answer.not_applicable = std::move(*reason);
      return std::nullopt;
    }
    Inputs inputs = std::get<Inputs>(std::move(filled));
    const auto* choices = choices_for(this->description().id, zone);
    if (choices != nullptr) {
      auto read = this->read(*choices, std::move(inputs), false);
      if (!read) {
        answer.problems = located(read.problems());
        return std::nullopt;
      }
      inputs = std::move(*read);
    }
    answer.problems = located(this->not_given(inputs));
    if (!answer.problems.empty()) return std::nullopt;
    if (only_compared_ || !all_chosen(choices, untold_)) {
      answer.for_comparison = why_for_comparison_;
    }
    return inputs;
  }

  FromZone from_zone_;
  ToRequired to_required_;
  std::vector<ZonePlace> places_;
  HeldInputs margins_;
  std::vector<std::string> untold_;
  bool only_compared_ = false;
  std::string why_for_comparison_;
};

}  // namespace proofstone
