#include "engine/mix/packing_of_classes.h"

namespace proofstone {

namespace {

using DescribedPackingOfClasses = TypedMethod<PackingOfClassesInputs, PackingOfClassesResult>;

DescribedPackingOfClasses build_packing_of_classes() {
  MethodDescription about;
  about.id = "packing-of-classes";
  about.title = "Compressible packing of many sizes";
  about.purpose =
      "How dense a mix of many sizes packs, and how far the others force the first, the rock, "
      "apart.";
  about.sources = {{"F. de Larrard, Concrete Mixture Proportioning (1999)",
                    "compressible packing model, many classes", SourceStanding::memory}};
  about.group = MethodGroup::mix;
  DescribedPackingOfClasses method(std::move(about), &packing_of_classes);
  method.required_list({"sizes", "d", "sizes; the first is the rock"},
                       &PackingOfClassesInputs::sizes, unit::inch, AllowedRange::positive_to(400),
                       LengthUse::rock);
  method.required_list({"densities", "φ", "solids share of each packed alone"},
                       &PackingOfClassesInputs::densities, unit::number,
                       AllowedRange::between(0.2, 0.8));
  method.required_list({"shares", "y", "share of the volume of all solids"},
                       &PackingOfClassesInputs::shares, unit::number, AllowedRange::between(0, 1));
  method.defaulted({"index", "K", "compaction: 4.1 poured, 4.5 rodded, 4.75 vibrated, 9 pressed"},
                   &PackingOfClassesInputs::index, unit::number, AllowedRange::between(4.1, 20));
  method.output({"density", "Φ", "solids share of the mix"}, &PackingOfClassesResult::density,
                unit::number);
  method.output({"rock_solids", "", "solids of the rock, share of the mix"},
                &PackingOfClassesResult::rock_solids, unit::number);
  method.output({"dilation", "", "how far the rock is forced apart"},
                &PackingOfClassesResult::dilation, unit::number);
  return method;
}

}  // namespace

Expected<PackingOfClassesResult> packing_of_classes(const PackingOfClassesInputs& inputs,
                                                    Steps& steps) {
  const std::size_t count = inputs.sizes.size();
  if (inputs.densities.size() != count || inputs.shares.size() != count) {
    return Problem{"lists-differ", "The lists differ in length.", "", "/shares",
                   "one density and one share for each size"};
  }
  std::vector<PackedClass> classes;
  for (std::size_t i = 0; i < count; ++i) {
    classes.push_back({inputs.sizes[i], inputs.densities[i].number(), inputs.shares[i].number()});
  }
  const auto packing = compressible_packing(classes, inputs.index.number());
  if (!packing) return packing.problems();
  const auto& rock = classes.front();
  if (!(rock.share > 0)) {
    return Problem{"no-rock", "The first size has no share.", "", "/shares/0", "above 0"};
  }
  for (std::size_t i = 0; i < count; ++i) {
    steps.given_rock("d", "size", classes[i].size);
    steps.given("y", "its share of the solids", measure(classes[i].share));
    steps.computed("γ", "virtual density with it carrying", "de Larrard, many classes",
                   measure(packing->virtual_densities[i]));
  }
  PackingOfClassesResult result;
  result.density = Dimensionless::number(packing->density);
  result.rock_solids = Dimensionless::number(packing->density * rock.share);
  result.dilation =
      Dimensionless::number(dilation_index(rock.density, packing->density, rock.share));
  steps.computed("Φ", "solids share of the mix", "Σ (y/β)/(1/Φ − 1/γ) = K",
                 measure(result.density));
  steps.computed("", "how far the rock is forced apart", "φ1/(Φ·y1)", measure(result.dilation));
  return result;
}

const Method& packing_of_classes_method() {
  static const DescribedPackingOfClasses method = build_packing_of_classes();
  return method;
}

}  // namespace proofstone
