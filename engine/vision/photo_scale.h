#pragma once

#include "engine/finding/steps.h"
#include "engine/method/method.h"
#include "engine/vision/photo.h"

namespace proofstone {

/// How much rock a pixel shows: the same over a picture taken square to the face; on an oblique one
/// by the distance of the mean plane of the rock, which is inverse to a line down the picture.
class PhotoScale {
 public:
  /// One over the length of a pixel, in 1/m, is `inverse + slope·y`.
  PhotoScale(double inverse, double slope, double error, bool error_stated)
      : inverse_(inverse), slope_(slope), error_(error), error_stated_(error_stated) {}

  /// Length of a pixel at a height on the picture; 0 or less where the plane is beyond the horizon.
  Length pixel_at(double y) const { return Length::meters(1 / (inverse_ + slope_ * y)); }
  /// What a picture shows across its middle.
  Length width_of(const PictureSize& picture) const {
    return picture.width * pixel_at(picture.height / 2);
  }
  /// Standard deviation of the scale over the scale.
  double error() const { return error_; }
  /// By the observer, who then errs alike on every photo; else by the study, photo by photo.
  bool error_stated() const { return error_stated_; }

 private:
  double inverse_;
  double slope_;
  double error_;
  bool error_stated_;
};

/// Balls on an oblique view that make a line: 200 of 768 rows apart (study, section 6).
inline constexpr double least_apart = 200.0 / 768;
/// Of a telephone, as of a camera with a 36 × 24 mm picture (common practice).
inline constexpr Length usual_focal_length = Length::millimeters(26);

/// The scale of a photo from its balls, staffs and marker boards. A ball stands out by 1.1 of its
/// radii from the mean surface of the rock, nearer to the camera: the plane of the rock is set back
/// by so much. Problems name the mark ("photo 1, ball 2"): none at all, marks that contradict one
/// another, an oblique view with marks at one height, a staff or board whose error nobody stated,
/// marks outside the picture, numbers that are none.
Expected<PhotoScale> photo_scale(const Photo& photo, const std::string& where, Steps& steps);

/// Focal length in pixels of a picture, from that of a camera with a 36 × 24 mm picture.
double focal_length_in_pixels(const PictureSize& picture, Length focal_length);

/// Angle between the line of sight and square to the face: as stated, else the mean of the study.
Angle angle_of_view(const Photo& photo);

struct BallScaleInputs {
  Length diameter;
  Dimensionless radius;        ///< pixels
  Dimensionless focal_length;  ///< pixels
  Angle off_square = Angle::degrees(6);
  Dimensionless stands_out = Dimensionless::number(1.1);
};
struct BallScaleResult {
  Length face_value;  ///< of a pixel at the distance of the ball
  Length pixel;       ///< of a pixel on the mean surface of the rock
  Dimensionless ratio;
};

/// Length of a pixel on the rock behind a ball.
Expected<BallScaleResult> ball_scale(const BallScaleInputs& in, Steps& steps);

/// The same by name: "photo-ball-scale".
const Method& photo_ball_scale_method();

}  // namespace proofstone
