#pragma once

#include <memory>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <vector>

#include "engine/method/untyped_method.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// How every TypedSizingMethod goes from a zone to the size it asks for, blind to its types: the
/// zone fills the inputs or says why the method does not apply; the designer's choices for this
/// method are read over them; a required input that neither gives is a Problem that names it.
class SizingFromZone : public SizingMethod {
 public:
  SizingFromZone();
  SizingFromZone(SizingFromZone&&) noexcept;
  ~SizingFromZone() override;

  const std::vector<ZonePlace>& places() const override { return places_; }
  SizingAnswer size(const ZoneSetting& zone) const override;
  std::optional<RequiredSize> required_size(const ZoneSetting& zone) const override;
  const nlohmann::json& without_margins() const override { return *margins_; }
  Expected<VariedSize> vary_size(const ZoneSetting& zone, const std::vector<std::string>& varied,
                                 SizeMeaning meaning) const override;

  /// A zone does not tell these inputs; with their defaults the answer is for comparison, for
  /// `reason`. It may govern once the designer has chosen every one of them for the zone.
  void for_comparison_until_chosen(std::vector<std::string> keys, std::string reason);

  /// The answer only ever stands beside the others, for `reason`, unless the designer has this
  /// method govern the zone.
  void for_comparison(std::string reason);

  /// The input `key` is a margin of safety that the designer asks for, and no property of water or
  /// rock: at `none` it leaves none.
  void safety_margin(const std::string& key, double none);

 protected:
  void made_for(std::vector<ZonePlace> places);

  /// What of a sizing method only its types know.
  struct Parts {
    const UntypedMethod& method;
    const MethodTypes& types;
    const void* defaults;
  };

 private:
  virtual Parts parts() const = 0;
  /// The inputs a zone gives; nothing, and why, where the method does not apply.
  virtual Untyped inputs_from(const ZoneSetting& zone,
                              std::optional<NotApplicable>& why_not) const = 0;
  virtual RequiredSize required_from(const void* result) const = 0;

  Untyped inputs_of(const ZoneSetting& zone, SizingAnswer& answer) const;
  /// Problems of this method among those of others.
  Problems located(Problems problems) const;

  std::vector<ZonePlace> places_;
  std::unique_ptr<nlohmann::json> margins_;
  std::vector<std::string> untold_;
  bool only_compared_ = false;
  std::string why_for_comparison_;
};

}  // namespace proofstone
