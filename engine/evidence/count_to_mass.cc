#include "engine/evidence/count_to_mass.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/evidence/evidence_sources.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

TypedMethod<CountToMassInputs, CountToMassResult> build_count_to_mass() {
  MethodDescription about;
  about.id = "count-to-mass";
  about.title = "Stone count to percent by mass";
  about.purpose =
      "Turns a count of stones in size bins into percent smaller by mass, whichever way the stones "
      "were picked.";
  about.group = MethodGroup::evidence;
  about.sources = {kellerhals_bray_source()};
  about.cautions = {
      "The conversion takes stones as packed cubes without voids. On photographs, where stones "
      "hide "
      "one another, the true power lies somewhat below 2.",
      "A grid's spacing should be at least the size of the largest stone, so that no stone is "
      "picked "
      "twice by chance.",
      "Keep clear of steep or loose pile faces and of working machines while counting."};
  TypedMethod<CountToMassInputs, CountToMassResult> method(std::move(about), &count_to_mass);
  method.required_list({"edges", "D", "sizes that bound the bins, from small to large"},
                       &CountToMassInputs::edges, unit::millimeter, AllowedRange::between(0, 5000),
                       LengthUse::rock);
  method.required_list({"counts", "n", "stones in each bin"}, &CountToMassInputs::counts,
                       unit::number, AllowedRange::between(0, 1e6));
  method.choice({"picked", "m", "how the stones were picked"}, &CountToMassInputs::picked,
                {{StonePicking::grid, "grid",
                  "the stone under each point of a grid, a tape or a random walk: m = 0"},
                 {StonePicking::line, "line", "every stone a line touches: m = 1"},
                 {StonePicking::area, "area", "every stone seen on a face: m = 2"},
                 {StonePicking::whole, "whole", "every stone of a load: m = 3"}});
  method.choice({"mid_size", "D", "the size that stands for a bin"}, &CountToMassInputs::mid_size,
                {{MidSize::geometric, "geometric", "√(lower·upper)"},
                 {MidSize::arithmetic, "arithmetic", "(lower + upper)/2"}});
  method.required({"size", "X", "size at which the percent smaller is asked"},
                  &CountToMassInputs::size, unit::millimeter, AllowedRange::positive_to(5000),
                  LengthUse::rock);
  method.defaulted({"percent", "p", "percent smaller at which the size is asked"},
                   &CountToMassInputs::percent, unit::percent, AllowedRange::between(0, 100));
  method.output({"percent_smaller", "F(X)", "percent smaller than X by mass"},
                &CountToMassResult::percent_smaller, unit::percent);
  method.output({"size_at_percent", "Dp", "size of which p is smaller by mass"},
                &CountToMassResult::size_at_percent, unit::millimeter, LengthUse::rock);
  method.output({"effective_stones", "ne", "equally informative stones behind the curve"},
                &CountToMassResult::effective_stones, unit::number);
  return method;
}

}  // namespace

Expected<std::vector<CountBin>> bins_of(const std::vector<Length>& edges,
                                        const std::vector<Dimensionless>& counts) {
  if (edges.size() != counts.size() + 1) {
    return Problem{"lists-differ",
                   fmt::format("There are {} counts and {} edges.", counts.size(), edges.size()),
                   "", "/edges", "one edge more than counts"};
  }
  Problems problems;
  std::vector<CountBin> bins;
  for (std::size_t i = 0; i < counts.size(); ++i) {
    const double stones = counts[i].number();
    if (!(stones >= 0 && stones <= 1e6) || std::floor(stones) < stones) {
      problems.push_back({"not-a-count", fmt::format("{:g} is not a number of stones.", stones), "",
                          fmt::format("/counts/{}", i), "a whole number from 0 to 1,000,000"});
      continue;
    }
    bins.push_back({edges[i], edges[i + 1], static_cast<int>(stones)});
  }
  if (!problems.empty()) return problems;
  return bins;
}

Expected<CountToMassResult> count_to_mass(const CountToMassInputs& in, Steps& steps) {
  const auto bins = bins_of(in.edges, in.counts);
  if (!bins) return bins.problems();
  const auto measured = gradation_from_bins(*bins, in.picked, in.mid_size);
  if (!measured) return measured.problems();
  steps.append(measured->steps);
  const auto size = measured->curve.size_at(in.percent.in(unit::percent));
  if (!size) return located_under(size.problems(), "/percent");
  const double percent = measured->curve.percent_smaller(in.size);
  steps.computed("F(X)", "percent smaller than X by mass",
                 "straight in log D between the points of the curve", measure(percent));
  steps.computed_rock("Dp", "size of which p is smaller by mass",
                      "straight in log D between the points of the curve", *size);
  return CountToMassResult{Dimensionless::of(percent, unit::percent), *size,
                           Dimensionless::number(measured->effective_stones)};
}

const Method& count_to_mass_method() {
  static const auto method = build_count_to_mass();
  return method;
}

}  // namespace proofstone
