#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Mean years between floods of at least a size, from the return period of annual greatest floods:
/// T_p = 1/(ln T_a − ln(T_a − 1)) (Langbein 1949). A "1.5-year" flood comes about 1.1 times a year.
/// `annual` above 1.
double partial_duration_years(double annual);
/// Chance that at least one flood of a return period comes within some years:
/// 1 − (1 − 1/T)^N. `annual` at least 1, `years` at least 0.
double chance_within_years(double annual, double years);

/// The same by name.
const Method& partial_duration_return_period_method();
const Method& risk_of_exceedance_method();
/// Discharge of a return period from mean, standard deviation and skew of the logarithms of annual
/// peaks (log-Pearson type III, frequency factor after Wilson and Hilferty).
const Method& log_pearson_discharge_method();

}  // namespace proofstone
