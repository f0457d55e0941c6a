#include "engine/vision/photo_size.h"

#include <fmt/format.h>

#include "engine/method/typed_method.h"
#include "engine/vision/photo_gradation.h"
#include "engine/vision/size_factors.h"
#include "engine/vision/vision_sources.h"

namespace proofstone {
namespace {

TypedMethod<PhotoSizeInputs, PhotoSizeResult> build_photo_size() {
  MethodDescription about;
  about.id = "photo-size";
  about.title = "Size of the rock of a pile from photos";
  about.purpose =
      "The D15, D50 or D85 of a pile from that of the surface on photos, with a 90 % interval from "
      "the errors of sampling, scale and factor. On photos rock is partly hidden, so that it looks "
      "smaller than it is.";
  about.group = MethodGroup::evidence;
  about.sources = {rendered_piles("factors by view, and what scatter is left"),
                   surface_share_source()};
  about.cautions = {
      "The factors were found on rendered piles and never checked against rock that was weighed.",
      ("How large rock looks hangs on its form: 4 to 6 % from rock to rock in a layer, 7 % in a "
       "heap; part of the interval."),
      ("D15 is indicative: small stones hide, and in a heap its factor hangs on how far the sizes "
       "spread (0.70 to 0.87)."),
      "A photo shows the surface; fines sink out of sight.",
      "No factor leads to the largest stone: measure it with a tape."};
  TypedMethod<PhotoSizeInputs, PhotoSizeResult> method(std::move(about), &photo_size);
  method.required({"as_photographed", "D seen", "size on the photos, all photos together"},
                  &PhotoSizeInputs::as_photographed, unit::millimeter,
                  AllowedRange::positive_to(5000), LengthUse::rock);
  method.choice({"percent", "p", "percent of the mass that is smaller"}, &PhotoSizeInputs::percent,
                {{PhotoPercent::d15, "d15", "15 %, indicative"},
                 {PhotoPercent::d50, "d50", "50 %"},
                 {PhotoPercent::d85, "d85", "85 %"}});
  method.choice({"view", "", "how the camera looked at the face"}, &PhotoSizeInputs::view,
                {{PhotoView::straight_on, "straight-on", "square to the face, up to 30° off"},
                 {PhotoView::oblique, "oblique", "as somebody sees it who stands before it"}});
  method.choice({"lies", "", "how the rock lies"}, &PhotoSizeInputs::lies,
                {{RockLies::in_layer, "layer", "placed in a layer"},
                 {RockLies::in_heap, "heap", "poured in a heap"}});
  method.choice({"by", "", "how stones became sizes"}, &PhotoSizeInputs::by,
                {{PhotoReadingBy::outlines, "outlines",
                  "equal-area diameter, each stone by its visible area"},
                 {PhotoReadingBy::taps, "taps",
                  "√(long·short) of the stone under each node, mostly hidden ones left out"}});
  method.choice({"width", "", "how wide the photos are"}, &PhotoSizeInputs::width,
                {{PhotoWidth::wide, "wide", "9 D50 or more"},
                 {PhotoWidth::narrow, "narrow", "less, so that few stones are seen whole"}});
  method.required({"sampling_error", "e_n", "error of sampling, standard deviation of ln D"},
                  &PhotoSizeInputs::sampling_error, unit::number, AllowedRange::between(0, 1));
  method.defaulted({"scale_error", "e_s", "error of the scale, standard deviation"},
                   &PhotoSizeInputs::scale_error, unit::number, AllowedRange::between(0, 1));
  method.output({"size", "D", "size of the whole pile at the percent"}, &PhotoSizeResult::size,
                unit::millimeter, LengthUse::rock);
  method.output({"low", "D low", "lower end of the 90 % interval"}, &PhotoSizeResult::low,
                unit::millimeter, LengthUse::rock);
  method.output({"high", "D high", "upper end of the 90 % interval"}, &PhotoSizeResult::high,
                unit::millimeter, LengthUse::rock);
  return method;
}

double number_of(PhotoPercent percent) {
  switch (percent) {
    case PhotoPercent::d15:
      return 15;
    case PhotoPercent::d85:
      return 85;
    case PhotoPercent::d50:
      break;
  }
  return 50;
}

}  // namespace

Expected<PhotoSizeResult> photo_size(const PhotoSizeInputs& in, Steps& steps) {
  const auto factors = size_factors(
      {in.view, in.lies, in.by == PhotoReadingBy::taps, in.width == PhotoWidth::narrow},
      std::nullopt, nullptr);
  PhotoSize size;
  size.percent = number_of(in.percent);
  size.as_photographed = in.as_photographed;
  const auto factor = factors.at(size.percent);
  size.size = size.as_photographed / factor.ratio;
  size.sampling_error = in.sampling_error.number();
  size.scale_error = in.scale_error.number();
  size.factor_error = factor.error;
  factors.say(steps);
  steps.given("e_s", "error of the scale, standard deviation", measure(size.scale_error));
  say_photo_size(size, steps);
  return PhotoSizeResult{size.size, size.low(), size.high()};
}

const Method& photo_size_method() {
  static const auto method = build_photo_size();
  return method;
}

}  // namespace proofstone
