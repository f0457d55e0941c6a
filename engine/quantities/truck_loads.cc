#include "engine/quantities/truck_loads.h"

#include <cmath>

#include "engine/quantity/rounding.h"

namespace proofstone {

namespace {

TypedMethod<TruckLoadsInputs, TruckLoadsResult> build_truck_loads() {
  MethodDescription about;
  about.id = "truck-loads";
  about.title = "Truckloads";
  about.purpose = "How many whole truckloads an order comes to.";
  about.group = MethodGroup::quantities;
  about.sources = {{"mass balance", "M·(1 + s) over the load, rounded up to whole loads",
                    SourceStanding::computed}};
  about.cautions = {"Legal loads on the roads to the place decide what a truck carries."};
  TypedMethod<TruckLoadsInputs, TruckLoadsResult> method(about, &truck_loads);
  method.required({"mass", "M", "mass as it will lie"}, &TruckLoadsInputs::mass, unit::short_ton,
                  AllowedRange::positive_to(1e9));
  method.defaulted({"spare", "s", "ordered beyond that, as a share of it"},
                   &TruckLoadsInputs::spare, unit::percent, AllowedRange::between(0, 100));
  method.required({"truck_load", "M_t", "what one truck carries"}, &TruckLoadsInputs::truck_load,
                  unit::short_ton, AllowedRange::positive_to(500));
  method.output({"ordered", "M_o", "mass ordered"}, &TruckLoadsResult::ordered, unit::short_ton);
  method.output({"loads", "N", "whole truckloads"}, &TruckLoadsResult::loads, unit::number);
  return method;
}

}  // namespace

Expected<TruckLoadsResult> truck_loads(const TruckLoadsInputs& inputs, Steps& steps) {
  TruckLoadsResult result;
  result.ordered = inputs.mass * (1 + inputs.spare.number());
  const double full = result.ordered / inputs.truck_load;
  result.loads = Dimensionless::number(std::ceil(full * (1 - rounding)));
  steps.given("M", "mass as it will lie", measure(inputs.mass));
  steps.given("s", "ordered beyond that, as a share of it", measure(inputs.spare));
  steps.computed("M_o", "mass ordered", "M·(1 + s)", measure(result.ordered));
  steps.given("M_t", "what one truck carries", measure(inputs.truck_load));
  steps.computed("N", "whole truckloads", "⌈M_o/M_t⌉", measure(result.loads));
  return result;
}

const Method& truck_loads_method() {
  static const TypedMethod<TruckLoadsInputs, TruckLoadsResult> method = build_truck_loads();
  return method;
}

}  // namespace proofstone
