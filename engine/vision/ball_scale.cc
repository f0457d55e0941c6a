#include <cmath>

#include "engine/method/typed_method.h"
#include "engine/vision/photo_scale.h"
#include "engine/vision/vision_sources.h"

namespace proofstone {
namespace {

TypedMethod<BallScaleInputs, BallScaleResult> build_ball_scale() {
  MethodDescription about;
  about.id = "photo-ball-scale";
  about.title = "Scale of a photo from a ball on the rock";
  about.purpose =
      "How much rock a pixel shows, from a ball of known diameter that lies on the rock. The ball "
      "stands out of the surface and is nearer to the camera, so that its own scale makes every "
      "stone too small.";
  about.group = MethodGroup::evidence;
  about.sources = {rendered_piles("scale: balls, plane 1.1 ball radii behind the ball centres")};
  about.cautions = {
      "A ball as large as the stones, seen from near by, is wrong by 20 % without the setting "
      "back; "
      "with it an error of 6 % (standard deviation) was left.",
      "On an oblique view one ball does not do: use one low and one high on the picture."};
  TypedMethod<BallScaleInputs, BallScaleResult> method(std::move(about), &ball_scale);
  method.required({"diameter", "d", "diameter of the ball"}, &BallScaleInputs::diameter,
                  unit::millimeter, AllowedRange::positive_to(2000), LengthUse::rock);
  method.required({"radius", "r", "radius of the ball on the picture, in pixels"},
                  &BallScaleInputs::radius, unit::number, AllowedRange::positive_to(1e5));
  method.required({"focal_length", "f", "focal length in pixels"}, &BallScaleInputs::focal_length,
                  unit::number, AllowedRange::positive_to(1e6));
  method.defaulted({"off_square", "θ", "line of sight off square to the face"},
                   &BallScaleInputs::off_square, unit::degree, AllowedRange::between(0, 75));
  method.defaulted({"stands_out", "k", "ball centre above the mean surface, in ball radii"},
                   &BallScaleInputs::stands_out, unit::number, AllowedRange::between(0, 2));
  method.output({"face_value", "s_b", "length of a pixel at the ball"},
                &BallScaleResult::face_value, unit::millimeter, LengthUse::rock);
  method.output({"pixel", "s", "length of a pixel on the rock"}, &BallScaleResult::pixel,
                unit::millimeter, LengthUse::rock);
  method.output({"ratio", "s_b/s", "size by the ball's own scale over size"},
                &BallScaleResult::ratio, unit::number);
  return method;
}

}  // namespace

Expected<BallScaleResult> ball_scale(const BallScaleInputs& in, Steps& steps) {
  const double d = in.diameter.meters();
  const double r = in.radius.number();
  const double f = in.focal_length.number();
  const double cos_view = std::cos(in.off_square.radians());
  const double k = in.stands_out.number();
  // The ball's distance is f·d/(2r); the plane behind it is k·d/2 off, measured square to the face.
  const double face_value = d / (2 * r);
  const double pixel = face_value + k * d / (2 * f * cos_view);
  const auto source = rendered_piles("scale");
  steps.given_rock("d", "diameter of the ball", in.diameter);
  steps.given("r", "radius of the ball on the picture, pixels", measure(r));
  steps.given("f", "focal length, pixels", measure(f));
  steps.given("k", "ball centre above the mean surface of the rock, in ball radii", measure(k),
              source.sentence());
  steps.computed("s_b", "metres to a pixel at the ball", "d/(2r)", measure(face_value));
  steps.computed("s", "metres to a pixel on the mean surface of the rock",
                 "d/(2r) + k·d/(2·f·cos θ)", measure(pixel), source.sentence());
  return BallScaleResult{Length::meters(face_value), Length::meters(pixel),
                         Dimensionless::number(face_value / pixel)};
}

const Method& photo_ball_scale_method() {
  static const auto method = build_ball_scale();
  return method;
}

}  // namespace proofstone
