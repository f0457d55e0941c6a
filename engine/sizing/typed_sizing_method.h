#pragma once

#include <utility>
#include <variant>
#include <vector>

#include "engine/method/typed_method.h"
#include "engine/sizing/sizing_from_zone.h"

namespace proofstone {

/// TypedMethod that sizes rock in zones at `places`. `from_zone` fills the inputs from a zone or
/// says why the method does not apply.
template <class Inputs, class Result>
class TypedSizingMethod : public TypedMethod<Inputs, Result, SizingFromZone> {
 public:
  using FromZone = std::variant<Inputs, NotApplicable> (*)(const ZoneSetting&);
  using ToRequired = RequiredSize (*)(const Result&);
  using Parent = TypedMethod<Inputs, Result, SizingFromZone>;

  TypedSizingMethod(MethodDescription about, typename Parent::Function function, FromZone from_zone,
                    ToRequired to_required,
                    std::vector<ZonePlace> places = {ZonePlace::bank, ZonePlace::bed})
      : Parent(std::move(about), function), from_zone_(from_zone), to_required_(to_required) {
    this->made_for(std::move(places));
  }

 private:
  SizingFromZone::Parts parts() const override {
    return {this->described(), *this, &this->defaults()};
  }
  Untyped inputs_from(const ZoneSetting& zone,
                      std::optional<NotApplicable>& why_not) const override {
    auto filled = from_zone_(zone);
    if (auto* reason = std::get_if<NotApplicable>(&filled)) {
      why_not = std::move(*reason);
      return nullptr;
    }
    return std::make_shared<Inputs>(*std::get_if<Inputs>(&filled));
  }
  RequiredSize required_from(const void* result) const override {
    return to_required_(*static_cast<const Result*>(result));
  }

  FromZone from_zone_;
  ToRequired to_required_;
};

}  // namespace proofstone
