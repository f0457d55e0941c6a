#pragma once

#include <functional>
#include <optional>
#include <string>
#include <variant>

#include "engine/method/typed_method.h"
#include "engine/sizing/zone_setting.h"

namespace proofstone {

/// The size a method asks for, as a point of a gradation curve: `size` must not be larger than the
/// size of which `percent_smaller` of the rock, by mass, is smaller.
struct RequiredSize {
  double percent_smaller = 50;  ///< 30 for D30, 50 for D50
  Length size;
};

/// Why a method does not speak about a zone.
struct NotApplicable {
  std::string reason;
};

/// What a sizing method says of a zone.
struct SizingAnswer {
  std::optional<RequiredSize> required;  ///< present when the method applies and could compute
  std::optional<NotApplicable> not_applicable;
  Problems problems;  ///< why it could not compute, when it applies
  Evaluation evaluation;
};

/// A method that sizes rock: it can be called by name like any method, and it can read what it
/// needs from a zone.
class SizingMethod : public Method {
 public:
  virtual SizingAnswer size(const ZoneSetting& zone) const = 0;
};

/// TypedMethod that sizes rock. `from_zone` fills the inputs from a zone or says why the method
/// does not apply; the designer's choices for this method are then read over them.
template <class Inputs, class Result>
class TypedSizingMethod : public TypedMethod<Inputs, Result, SizingMethod> {
 public:
  using FromZone = std::variant<Inputs, NotApplicable> (*)(const ZoneSetting&);
  using ToRequired = RequiredSize (*)(const Result&);
  using Parent = TypedMethod<Inputs, Result, SizingMethod>;

  TypedSizingMethod(MethodDescription about, typename Parent::Function function, FromZone from_zone,
                    ToRequired to_required)
      : Parent(std::move(about), function), from_zone_(from_zone), to_required_(to_required) {}

  SizingAnswer size(const ZoneSetting& zone) const override {
    SizingAnswer answer;
    auto filled = from_zone_(zone);
    if (auto* reason = std::get_if<NotApplicable>(&filled)) {
      answer.not_applicable = std::move(*reason);
      return answer;
    }
    Inputs inputs = std::get<Inputs>(std::move(filled));
    if (zone.method_choices != nullptr) {
      const auto chosen = zone.method_choices->find(this->description().id);
      if (chosen != zone.method_choices->end()) {
        auto read = this->read(*chosen, std::move(inputs), false);
        if (!read) {
          answer.problems = located_under(read.problems(), "/" + this->description().id);
          return answer;
        }
        inputs = std::move(*read);
      }
    }
    auto result = this->run_typed(inputs, answer.evaluation);
    if (!result) {
      answer.problems = result.problems();
    } else {
      answer.required = to_required_(*result);
    }
    return answer;
  }

 private:
  FromZone from_zone_;
  ToRequired to_required_;
};

}  // namespace proofstone
