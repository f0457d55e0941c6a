#include "engine/hydrology/flood_frequency.h"

#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

struct AnnualPeriod {
  Dimensionless return_period;
};
struct Partial {
  Dimensionless partial_return_period;
  Dimensionless times_a_year;
};

Expected<Partial> partial(const AnnualPeriod& inputs, Steps& steps) {
  const double years = partial_duration_years(inputs.return_period.number());
  const Partial result{Dimensionless::number(years), Dimensionless::number(1 / years)};
  steps.given("T_a", "return period of annual greatest floods, years",
              measure(inputs.return_period));
  steps.computed("T_p", "mean years between floods of that size", "1/(ln T_a − ln(T_a − 1))",
                 measure(result.partial_return_period), "Langbein 1949 (from memory; confirm)");
  steps.computed("λ", "times a year", "1/T_p", measure(result.times_a_year));
  return result;
}

TypedMethod<AnnualPeriod, Partial> build_partial() {
  MethodDescription about;
  about.id = "partial-duration-return-period";
  about.title = "How often a flood of a size comes";
  about.purpose =
      "The mean time between floods of at least a size from the return period of the year's "
      "greatest flood; for frequent floods the two differ.";
  about.group = MethodGroup::water;
  about.sources = {{"Langbein, Annual floods and the partial-duration flood series (1949)", "",
                    SourceStanding::memory}};
  about.cautions = {
      "A count of independent floods, not of days under water; see a duration curve for those."};
  TypedMethod<AnnualPeriod, Partial> method(about, &partial);
  method.required({"return_period", "T_a", "return period of annual greatest floods, years"},
                  &AnnualPeriod::return_period, unit::number, {1.0, std::nullopt, 1e6});
  method.output({"partial_return_period", "T_p", "mean years between floods of that size"},
                &Partial::partial_return_period, unit::number);
  method.output({"times_a_year", "λ", "how many such floods come in a year on average"},
                &Partial::times_a_year, unit::number);
  return method;
}

struct RiskInputs {
  Dimensionless return_period;
  Dimensionless years;
};
struct Risk {
  Dimensionless risk;
};

Expected<Risk> risk(const RiskInputs& inputs, Steps& steps) {
  const Risk result{Dimensionless::number(
      chance_within_years(inputs.return_period.number(), inputs.years.number()))};
  steps.given("T", "return period, years", measure(inputs.return_period));
  steps.given("N", "years at risk", measure(inputs.years));
  steps.computed("R", "chance of at least one such flood", "1 − (1 − 1/T)^N", measure(result.risk));
  return result;
}

TypedMethod<RiskInputs, Risk> build_risk() {
  MethodDescription about;
  about.id = "risk-of-exceedance";
  about.title = "Risk that the design flood is exceeded";
  about.purpose = "The chance that a flood of a return period comes within the life of the works.";
  about.group = MethodGroup::water;
  about.sources = {{"Chow, Maidment & Mays, Applied Hydrology (1988)", "risk of exceedance",
                    SourceStanding::memory}};
  TypedMethod<RiskInputs, Risk> method(about, &risk);
  method.required({"return_period", "T", "return period, years"}, &RiskInputs::return_period,
                  unit::number, AllowedRange::between(1, 1e6));
  method.required({"years", "N", "years at risk"}, &RiskInputs::years, unit::number,
                  AllowedRange::between(0, 1e4));
  method.output({"risk", "R", "chance of at least one such flood in those years"}, &Risk::risk,
                unit::number);
  return method;
}

struct PearsonInputs {
  Dimensionless mean;
  Dimensionless standard_deviation;
  Dimensionless skew;
  Dimensionless return_period;
  Discharge unit_discharge = Discharge::cubic_feet_per_second(1);
};
struct Pearson {
  Dimensionless frequency_factor;
  Discharge discharge;
};

/// K = (2/G)·[(1 + G·z/6 − G²/36)³ − 1], z at no skew.
double wilson_hilferty(double z, double skew) {
  constexpr double no_skew = 1e-6;
  if (std::abs(skew) < no_skew) return z;
  const double base = 1 + skew * z / 6 - skew * skew / 36;
  return 2 / skew * (base * base * base - 1);
}

Expected<Pearson> pearson(const PearsonInputs& inputs, Steps& steps) {
  const double z = normal_quantile(1 - 1 / inputs.return_period.number());
  const double k = wilson_hilferty(z, inputs.skew.number());
  const double logarithm = inputs.mean.number() + k * inputs.standard_deviation.number();
  const Pearson result{Dimensionless::number(k), inputs.unit_discharge * std::pow(10.0, logarithm)};
  steps.given("X", "mean of log₁₀ of the annual peaks", measure(inputs.mean));
  steps.given("S", "standard deviation of the same", measure(inputs.standard_deviation));
  steps.given("G", "skew of the same", measure(inputs.skew));
  steps.given("T", "return period, years", measure(inputs.return_period));
  steps.computed("z", "standard normal deviate", "Φ⁻¹(1 − 1/T)", measure(z));
  steps.computed("K", "frequency factor", "(2/G)·[(1 + G·z/6 − G²/36)³ − 1]",
                 measure(result.frequency_factor), "Wilson & Hilferty (from memory; confirm)");
  steps.computed("Q", "discharge", "10^(X + K·S)", measure(result.discharge));
  return result;
}

TypedMethod<PearsonInputs, Pearson> build_pearson() {
  MethodDescription about;
  about.id = "log-pearson-discharge";
  about.title = "Flood discharge of a return period";
  about.purpose =
      "The discharge of a return period from mean, standard deviation and skew of the logarithms "
      "of annual peaks (log-Pearson type III).";
  about.group = MethodGroup::water;
  about.sources = {{"USGS Bulletin 17B (1982)", "log-Pearson type III", SourceStanding::memory}};
  about.cautions = {
      "Regulated, urban and spring-fed basins, and records with outliers, need the full procedure "
      "of Bulletin 17C."};
  TypedMethod<PearsonInputs, Pearson> method(about, &pearson);
  method.required({"mean", "X", "mean of the base-10 logarithms of the annual peaks"},
                  &PearsonInputs::mean, unit::number, AllowedRange::between(-3, 8));
  method.required({"standard_deviation", "S", "standard deviation of the same logarithms"},
                  &PearsonInputs::standard_deviation, unit::number, AllowedRange::between(0, 2));
  method.required({"skew", "G", "skew of the same logarithms"}, &PearsonInputs::skew, unit::number,
                  AllowedRange::between(-4, 4));
  method.required({"return_period", "T", "return period, years"}, &PearsonInputs::return_period,
                  unit::number, {1.0, std::nullopt, 1e4});
  method.defaulted({"unit_discharge", "", "the unit in which the peaks' logarithms were taken"},
                   &PearsonInputs::unit_discharge, unit::cubic_foot_per_second,
                   AllowedRange::positive_to(1e3));
  method.output({"frequency_factor", "K", "frequency factor"}, &Pearson::frequency_factor,
                unit::number);
  method.output({"discharge", "Q", "discharge of the return period"}, &Pearson::discharge,
                unit::cubic_foot_per_second);
  method.limit({"skew between −1 and 1, within which the frequency factor is good to about 0.005",
                "Wilson & Hilferty approximation"},
               [](const PearsonInputs& in) { return std::abs(in.skew.number()) <= 1; });
  return method;
}

}  // namespace

double partial_duration_years(double annual) {
  return 1 / (std::log(annual) - std::log(annual - 1));
}

double chance_within_years(double annual, double years) {
  return 1 - std::pow(1 - 1 / annual, years);
}

const Method& partial_duration_return_period_method() {
  static const TypedMethod<AnnualPeriod, Partial> method = build_partial();
  return method;
}

const Method& risk_of_exceedance_method() {
  static const TypedMethod<RiskInputs, Risk> method = build_risk();
  return method;
}

const Method& log_pearson_discharge_method() {
  static const TypedMethod<PearsonInputs, Pearson> method = build_pearson();
  return method;
}

}  // namespace proofstone
