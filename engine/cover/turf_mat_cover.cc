#include "engine/cover/turf_mat_cover.h"

namespace proofstone {

namespace {

using DescribedTurfMatCover = TypedMethod<TurfMatCoverInputs, TurfMatCoverResult>;

const char* const hec15_of_turf_mat_cover =
    "FHWA HEC-15 3rd ed. (2005) ch. 5 (from memory; confirm)";

MethodDescription describe_turf_mat_cover() {
  MethodDescription about;
  about.id = "turf-mat-cover";
  about.title = "Cover factor of a turf-reinforcement mat";
  about.purpose =
      "Cover factor of grass grown through a mat, from tests of the grass with and without it.";
  about.group = MethodGroup::cover;
  about.sources = {
      {"FHWA HEC-15 3rd ed. (2005), FHWA-NHI-05-114", "ch. 5", SourceStanding::memory}};
  about.cautions = {"It holds once the grass has grown through the mat."};
  return about;
}

DescribedTurfMatCover build_turf_mat_cover() {
  DescribedTurfMatCover method(describe_turf_mat_cover(), &turf_mat_cover);
  method.required({"grass_shear", "τp,veg", "permissible shear of the grass alone in the test"},
                  &TurfMatCoverInputs::grass_shear, unit::pascal, AllowedRange::positive_to(2000));
  method.required({"mat_shear", "τp,mat", "permissible shear of grass and mat in the test"},
                  &TurfMatCoverInputs::mat_shear, unit::pascal, AllowedRange::positive_to(5000));
  method.required({"grass_cover", "Cf,veg", "cover factor of the grass in the test"},
                  &TurfMatCoverInputs::grass_cover, unit::number, AllowedRange::positive_to(1));
  method.output({"cover", "Cf", "cover factor with the mat"}, &TurfMatCoverResult::cover,
                unit::number);
  return method;
}

}  // namespace

Expected<TurfMatCoverResult> turf_mat_cover(const TurfMatCoverInputs& inputs, Steps& steps) {
  if (inputs.mat_shear < inputs.grass_shear) {
    return Problem{"mat-weaker", "The mat bears less than the grass alone.", "", "/mat_shear",
                   "a shear not less than that of the grass alone"};
  }
  const double ratio = inputs.grass_shear / inputs.mat_shear;
  TurfMatCoverResult result;
  result.cover = Dimensionless::number(1 - ratio * (1 - inputs.grass_cover.number()));
  steps.given("τp,veg", "grass alone", measure(inputs.grass_shear));
  steps.given("τp,mat", "grass and mat", measure(inputs.mat_shear));
  steps.given("Cf,veg", "cover factor of the grass", measure(inputs.grass_cover));
  steps.computed("Cf", "cover factor with the mat", "1 − (τp,veg/τp,mat)·(1 − Cf,veg)",
                 measure(result.cover), hec15_of_turf_mat_cover);
  return result;
}

const Method& turf_mat_cover_method() {
  static const DescribedTurfMatCover method = build_turf_mat_cover();
  return method;
}

}  // namespace proofstone
