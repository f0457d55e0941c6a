#include "engine/outfall/dane_county_apron.h"
#include "engine/sizing/typed_sizing_method.h"

#include <cmath>
#include <optional>

namespace proofstone {

namespace {

using DescribedDaneCountyApron = TypedSizingMethod<DaneCountyApronInputs, DaneCountyApronResult>;

const char* const manual = "Dane County (Wisconsin) erosion-control manual";

struct ListedRock {
  double velocity_fps;
  double d50_in;
};
constexpr ListedRock listed[] = {{5.0, 2}, {6.3, 4}, {7.6, 6}, {8.8, 8}, {9.9, 10}, {10.8, 12}};

std::optional<Length> listed_size(Velocity velocity) {
  for (const ListedRock& row : listed) {
    if (velocity.feet_per_second() <= row.velocity_fps + 1e-9) return Length::inches(row.d50_in);
  }
  return std::nullopt;
}

std::variant<DaneCountyApronInputs, NotApplicable> dane_county_apron_from_zone(
    const ZoneSetting& zone) {
  DaneCountyApronInputs in;
  if (zone.stated.discharge) in.discharge = *zone.stated.discharge;
  if (zone.stated.velocity) in.velocity = *zone.stated.velocity;
  return in;
}

MethodDescription describe_dane_county_apron() {
  MethodDescription about;
  about.id = "dane-county-apron";
  about.title = "Dane County outlet apron";
  about.purpose =
      "Rock size from a list of outlet velocities, with length, width and thickness of the apron "
      "below a pipe.";
  about.group = MethodGroup::rock_size;
  about.sources = {{manual, "outlet aprons: list of velocities and sizes, dimensions",
                    SourceStanding::published}};
  about.cautions = {"A county's own rule: use it where that county's criteria apply."};
  return about;
}

DescribedDaneCountyApron build_dane_county_apron() {
  DescribedDaneCountyApron method(
      describe_dane_county_apron(), &dane_county_apron, &dane_county_apron_from_zone,
      [](const DaneCountyApronResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::outfall});
  method.for_comparison("it is a county's own rule.");
  method.required({"discharge", "Q", "discharge of the pipe"}, &DaneCountyApronInputs::discharge,
                  unit::cubic_foot_per_second, AllowedRange::positive_to(1e5));
  method.required({"diameter", "D", "diameter of the pipe"}, &DaneCountyApronInputs::diameter,
                  unit::foot, AllowedRange::positive_to(50));
  method.required({"velocity", "V", "velocity at the outlet"}, &DaneCountyApronInputs::velocity,
                  unit::foot_per_second, AllowedRange::positive_to(60));
  method.output({"d50", "D50", "listed median size"}, &DaneCountyApronResult::d50, unit::inch,
                LengthUse::rock);
  method.output({"apron_length", "L", "length of the apron"}, &DaneCountyApronResult::apron_length,
                unit::foot);
  method.output({"apron_width", "W", "width of the apron"}, &DaneCountyApronResult::apron_width,
                unit::foot);
  method.output({"thickness", "T", "thickness of the apron"}, &DaneCountyApronResult::thickness,
                unit::foot);
  return method;
}

}  // namespace

Expected<DaneCountyApronResult> dane_county_apron(const DaneCountyApronInputs& inputs,
                                                  Steps& steps) {
  const auto size = listed_size(inputs.velocity);
  if (!size) {
    return Problem{"beyond-list", "The list of rock ends at an outlet velocity of 10.8 ft/s.", "",
                   "/velocity", "a velocity up to 10.8 ft/s, or another energy dissipator"};
  }
  const double Q = inputs.discharge.cubic_feet_per_second();
  const double D = inputs.diameter.feet();

  DaneCountyApronResult result;
  result.d50 = *size;
  result.apron_length = Length::feet(1.7 * Q / std::pow(D, 1.5) + 8 * D);
  result.apron_width = 3 * inputs.diameter;
  result.thickness = 2 * result.d50;
  steps.given("V", "velocity at the outlet", measure(inputs.velocity));
  steps.given_rock("D50", "smallest listed rock for that velocity or more", result.d50, manual);
  steps.given("Q", "discharge", measure(inputs.discharge));
  steps.given("D", "diameter of the pipe", measure(inputs.diameter));
  steps.computed("L", "length of the apron", "1.7·Q/D^1.5 + 8·D (ft, ft³/s)",
                 measure(result.apron_length), manual);
  steps.computed("W", "width of the apron", "3·D", measure(result.apron_width), manual);
  steps.computed("T", "thickness of the apron", "2·D50", measure(result.thickness), manual);
  return result;
}

const SizingMethod& dane_county_apron_method() {
  static const DescribedDaneCountyApron method = build_dane_county_apron();
  return method;
}

}  // namespace proofstone
