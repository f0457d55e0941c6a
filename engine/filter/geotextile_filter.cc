#include "engine/filter/geotextile_filter.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

const char* const m288 = "AASHTO M 288, as quoted in UFGS-02373";
/// The No. 100 sieve (UFC 3-270-04, section 12.5).
constexpr Length finest_opening = Length::millimeters(0.15);

const char* const fhwa = "FHWA NHI-07-092; HEC-23 Design Guideline 16 (from memory; confirm)";

void describe_soil(TypedMethod<GeotextileFilterInputs, GeotextileFilterResult>& method) {
  const auto size = AllowedRange::positive_to(1000);
  method.required({"soil_d15", "d15", "of the soil"}, &GeotextileFilterInputs::soil_d15,
                  unit::millimeter, size, LengthUse::grain);
  method.required({"soil_d85", "d85", "of the soil"}, &GeotextileFilterInputs::soil_d85,
                  unit::millimeter, size, LengthUse::grain);
  method.optional({"uniformity", "Cu", "D60/D10 of the soil"}, &GeotextileFilterInputs::uniformity,
                  unit::number, AllowedRange::between(1, 1e5), "the factor B is taken as 1");
  method.required({"fines", "F", "of the soil, passing No. 200"}, &GeotextileFilterInputs::fines,
                  unit::percent, AllowedRange::between(0, 100));
  method.optional({"plasticity_index", "PI", "of the soil"},
                  &GeotextileFilterInputs::plasticity_index, unit::number,
                  AllowedRange::between(0, 400), "taken as not plastic");
  method.optional({"soil_conductivity", "K_s", "hydraulic conductivity of the soil"},
                  &GeotextileFilterInputs::soil_conductivity, unit::meter_per_second,
                  AllowedRange::positive_to(10), "the default permittivity alone");
  method.choice({"dispersion", "", "does the soil disperse"}, &GeotextileFilterInputs::dispersion,
                {ChoiceOption<Dispersion>{Dispersion::no, "no", "tested: no"},
                 {Dispersion::yes, "yes", "tested: yes"},
                 {Dispersion::not_tested, "not-tested", "not tested"}});
  method.choice(
      {"gap", "", "is the soil gap-graded"}, &GeotextileFilterInputs::gap,
      {ChoiceOption<GeotextileFilterInputs::Gap>{GeotextileFilterInputs::Gap::no, "no", "no"},
       {GeotextileFilterInputs::Gap::yes, "yes", "yes"}});
}

void describe_fabric(TypedMethod<GeotextileFilterInputs, GeotextileFilterResult>& method) {
  method.optional({"fabric_thickness", "t_g", "thickness of the fabric"},
                  &GeotextileFilterInputs::fabric_thickness, unit::millimeter,
                  AllowedRange::positive_to(100), "the default permittivity alone",
                  LengthUse::grain);
  method.choice({"fabric", "", "kind of fabric"}, &GeotextileFilterInputs::fabric,
                {ChoiceOption<Fabric>{Fabric::nonwoven, "nonwoven", "nonwoven"},
                 {Fabric::woven_monofilament, "woven-monofilament", "woven, monofilament"},
                 {Fabric::woven_slit_film, "woven-slit-film", "woven, slit film: not allowed"}});
  method.choice({"attack", "", "water over and in it"}, &GeotextileFilterInputs::attack,
                {ChoiceOption<FabricAttack>{FabricAttack::steady, "steady",
                                            "steady flow, a bedding layer over the fabric"},
                 {FabricAttack::dynamic, "dynamic",
                  "waves, reversing flow, or rock straight on the fabric"}});
  method.choice({"risk", "", "what clogging would do"}, &GeotextileFilterInputs::risk,
                {ChoiceOption<SeepageRisk>{SeepageRisk::benign, "benign", "K_g ≥ K_s"},
                 {SeepageRisk::critical, "critical", "K_g ≥ 10·K_s"}});
}

TypedMethod<GeotextileFilterInputs, GeotextileFilterResult> build_geotextile_filter() {
  MethodDescription about;
  about.id = "geotextile-filter";
  about.title = "Geotextile under rock";
  about.purpose = "Opening and permittivity of a geotextile that holds a soil under rock.";
  about.group = MethodGroup::filter;
  about.sources = {
      {"AASHTO M 288, as quoted in UFGS-02373",
       "largest opening; permittivity of drainage; soils that need a design of their own. The "
       "print heads its third row \"greater than 15 %\", which must read more than 50 %",
       SourceStanding::published},
      {"AASHTO M 288",
       "permittivity for permanent erosion control, 0.7, 0.2, 0.1 s⁻¹; opening for "
       "PI above 7",
       SourceStanding::memory},
      {"FHWA NHI-07-092; HEC-23 Design Guideline 16", "retention, permeability, clogging",
       SourceStanding::memory},
      {"UFC 3-270-04 (2001)",
       "section 12.5: no fabric on soils with 85 % and more of fines, none finer than the No. 100 "
       "sieve",
       SourceStanding::published}};
  about.cautions = {
      "The retention tree of HEC-23 Design Guideline 16, by clay, currents and waves, is not "
      "applied: it is recalled with doubt and one of its branches not at all. The rules of "
      "NHI-07-092 "
      "and M 288 stand in its place.",
      "An opening is a largest average of rolls; permittivity and strength are least averages.",
      "Fabric lies loose, without stretching; overlap 1 ft dry and 3 ft under water, the upstream "
      "piece on top; key it in at toe and top; never push rock uphill across it (from memory)."};
  TypedMethod<GeotextileFilterInputs, GeotextileFilterResult> method(about, &geotextile_filter);
  describe_soil(method);
  describe_fabric(method);
  const auto grain = LengthUse::grain;
  const auto& mm = unit::millimeter;
  method.output({"steady_opening", "O95", "largest, steady flow"},
                &GeotextileFilterResult::steady_opening, mm, grain);
  method.output({"dynamic_opening", "O95", "largest, dynamic flow"},
                &GeotextileFilterResult::dynamic_opening, mm, grain);
  method.output({"default_opening", "O95", "largest, default of M 288"},
                &GeotextileFilterResult::default_opening, mm, grain);
  method.output({"most_opening", "O95", "largest: what governs"},
                &GeotextileFilterResult::most_opening, mm, grain);
  method.output({"least_opening", "O95", "least, against clogging; 0 where nothing is asked"},
                &GeotextileFilterResult::least_opening, mm, grain);
  method.output({"default_permittivity", "ψ", "least, default of M 288"},
                &GeotextileFilterResult::default_permittivity, unit::per_second);
  method.output({"least_permittivity", "ψ", "least: what governs"},
                &GeotextileFilterResult::least_permittivity, unit::per_second);
  method.output({"conflicts", "", "rules that ask for larger openings than hold the soil"},
                &GeotextileFilterResult::conflicts, unit::number);
  method.output({"exclusions", "", "reasons to prefer granular bedding"},
                &GeotextileFilterResult::exclusions, unit::number);
  return method;
}

/// B of AOS ≤ B·d85 under steady flow.
double retention_factor(const GeotextileFilterInputs& in) {
  if (in.fines.in(unit::percent) >= 50) return in.fabric == Fabric::nonwoven ? 1.8 : 1;
  const double cu = in.uniformity ? in.uniformity->number() : 1;
  if (cu <= 2 || cu >= 8) return 1;
  return cu <= 4 ? 0.5 * cu : 8 / cu;
}

struct Default {
  Length opening;
  Rate permittivity;
};
Default default_of(double fines) {
  if (fines < 15) return {Length::millimeters(0.43), Rate::per_second(0.7)};
  if (fines <= 50) return {Length::millimeters(0.25), Rate::per_second(0.2)};
  return {Length::millimeters(0.22), Rate::per_second(0.1)};
}

void put_opening(const GeotextileFilterInputs& in, GeotextileFilterResult& result, Steps& steps) {
  const double fines = in.fines.in(unit::percent);
  const double factor = retention_factor(in);
  const double plastic = in.plasticity_index ? in.plasticity_index->number() : 0;
  result.steady_opening = factor * in.soil_d85;
  if (fines >= 50)
    result.steady_opening = std::min(result.steady_opening, Length::millimeters(0.3));
  result.dynamic_opening = 0.5 * in.soil_d85;
  result.default_opening = default_of(fines).opening;
  if (plastic > 7) {
    result.default_opening = std::min(result.default_opening, Length::millimeters(0.3));
  }
  steps.given("B", "factor of retention, by fines and uniformity", measure(factor), fhwa);
  steps.computed_grain("O95", "largest, steady flow", "B·d85; from 50 % of fines not above 0.3 mm",
                       result.steady_opening, fhwa);
  steps.computed_grain("O95", "largest, dynamic flow", "0.5·d85", result.dynamic_opening, fhwa);
  steps.given_grain("O95", "largest by fines of the soil", result.default_opening, m288);
  const bool dynamic = in.attack == FabricAttack::dynamic;
  result.most_opening =
      std::min(result.default_opening, dynamic ? result.dynamic_opening : result.steady_opening);
  steps.computed_grain("O95", "largest: what governs", "the least of those that apply",
                       result.most_opening);
}

void put_permittivity(const GeotextileFilterInputs& in, GeotextileFilterResult& result,
                      Steps& steps) {
  result.default_permittivity = default_of(in.fines.in(unit::percent)).permittivity;
  result.least_permittivity = result.default_permittivity;
  steps.given("ψ", "least by fines of the soil", measure(result.default_permittivity),
              "AASHTO M 288 (from memory; confirm)");
  if (!in.soil_conductivity || !in.fabric_thickness) return;
  const bool critical = in.risk == SeepageRisk::critical;
  const auto needed =
      Rate::per_second((critical ? 10 : 1) * in.soil_conductivity->meters_per_second() /
                       in.fabric_thickness->meters());
  steps.computed("ψ", "least for the conductivity of the soil", critical ? "10·K_s/t_g" : "K_s/t_g",
                 measure(needed), fhwa);
  result.least_permittivity = std::max(result.least_permittivity, needed);
}

void put_clogging(const GeotextileFilterInputs& in, GeotextileFilterResult& result, Steps& steps) {
  result.least_opening = Length::millimeters(0);
  if (in.uniformity && in.uniformity->number() > 3) {
    result.least_opening = 3 * in.soil_d15;
    steps.computed_grain("O95", "least, against clogging where Cu > 3", "3·d15",
                         result.least_opening, fhwa);
  }
  if (result.least_opening > result.most_opening) {
    result.conflict_words.push_back(fmt::format(
        "Against clogging the opening should be {} mm or more, to hold the soil {} mm or less: "
        "take a fabric near the latter and test its gradient ratio (ASTM D5101, at most 3), or "
        "prefer granular bedding.",
        significant(result.least_opening.millimeters(), 3),
        significant(result.most_opening.millimeters(), 3)));
  }
}

/// A fabric that would have to be finer than fabrics under rock should be.
void put_finest(GeotextileFilterResult& result) {
  if (result.most_opening >= finest_opening) return;
  result.conflict_words.push_back(fmt::format(
      "To hold the soil the opening must be {} mm or less, finer than the No. 100 sieve (0.15 mm), "
      "below which it clogs: lay bedding on the soil, or prefer granular bedding altogether.",
      significant(result.most_opening.millimeters(), 3)));
}

void put_exclusions(const GeotextileFilterInputs& in, GeotextileFilterResult& result) {
  const double fines = in.fines.in(unit::percent);
  const double plastic = in.plasticity_index ? in.plasticity_index->number() : 0;
  auto& because = result.excluded_because;
  if (fines >= 50 && plastic <= 4) {
    because.push_back("The soil is a silt that does not cohere: default rules do not serve it.");
  }
  if (in.gap == GeotextileFilterInputs::Gap::yes) because.push_back("The soil is gap-graded.");
  if (in.dispersion == Dispersion::yes) {
    because.push_back("The soil disperses: lay 3 to 6 in of sand and design the fabric for that.");
  }
  if (fines >= 85) because.push_back("85 % and more of the soil passes the No. 200 sieve.");
  if (in.fabric == Fabric::woven_slit_film) {
    because.push_back("Woven slit film is not allowed under permanent rock.");
  }
}

}  // namespace

Expected<GeotextileFilterResult> geotextile_filter(const GeotextileFilterInputs& in, Steps& steps) {
  if (in.soil_d85 < in.soil_d15) {
    return Problem{"out-of-order", "d85 of the soil is below its d15.", "", "/soil_d85",
                   "at least d15"};
  }
  GeotextileFilterResult result;
  put_opening(in, result, steps);
  put_permittivity(in, result, steps);
  put_clogging(in, result, steps);
  put_finest(result);
  put_exclusions(in, result);
  result.conflicts = Dimensionless::number(static_cast<double>(result.conflict_words.size()));
  result.exclusions = Dimensionless::number(static_cast<double>(result.excluded_because.size()));
  return result;
}

const Method& geotextile_filter_method() {
  static const TypedMethod<GeotextileFilterInputs, GeotextileFilterResult> method =
      build_geotextile_filter();
  return method;
}

}  // namespace proofstone
