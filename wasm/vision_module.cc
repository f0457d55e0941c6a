// What finds stones on photos, as a browser sees it: a module of its own, loaded once a photo is
// measured.
#include <emscripten/bind.h>

#include <optional>
#include <string>

#include "photography/camera_notes.h"
#include "report/outline_answers.h"
#include "report/photo_questions.h"

namespace {

using emscripten::val;

std::optional<proofstone::OutlineNetwork>& network() {
  static std::optional<proofstone::OutlineNetwork> read;
  return read;
}

/// Takes the file of weights; what is wrong with it in a sentence, or nothing.
std::string take_weights(const std::string& bytes) {
  auto read = proofstone::OutlineNetwork::read(bytes);
  if (!read) return read.problems().front().sentence();
  network() = std::move(*read);
  return {};
}

/// A picture of red, green, blue and alpha, upright.
proofstone::PhotoPixels pixels_of(const val& rgba, int width, int height) {
  proofstone::PhotoPixels photo{width, height, {}};
  const auto bytes = emscripten::convertJSArrayToNumberVector<std::uint8_t>(rgba);
  photo.rgb.reserve(bytes.size() / 4 * 3);
  for (std::size_t i = 0; i + 3 < bytes.size(); i += 4) {
    photo.rgb.insert(photo.rgb.end(), {bytes[i], bytes[i + 1], bytes[i + 2]});
  }
  return photo;
}

/// The stones on a picture; `hear` gets the share that is done.
std::string outline(const val& rgba, int width, int height, const std::string& where,
                    const val& hear) {
  return proofstone::outlined_answer(pixels_of(rgba, width, height), *network(), where,
                                     [&hear](double share) { hear(share); });
}

/// What tells the scale of a picture.
std::string marks(const val& rgba, int width, int height, const std::string& where) {
  return proofstone::marks_answer(pixels_of(rgba, width, height), where);
}

/// The focal length in millimetres that Exif notes state, 0 where they state none.
double focal_length(const std::string& exif) {
  return proofstone::read_camera_notes(exif).focal_length.value_or(0);
}

std::string edit(const std::string& text) { return proofstone::answer_outline_edit(text); }

/// Cautions of the scale, or the nodes of a check.
std::string question(const std::string& text) { return proofstone::answer_photo_question(text); }

}  // namespace

EMSCRIPTEN_BINDINGS(proofstone_vision) {
  emscripten::function("takeWeights", &take_weights);
  emscripten::function("outline", &outline);
  emscripten::function("marks", &marks);
  emscripten::function("question", &question);
  emscripten::function("focalLength", &focal_length);
  emscripten::function("edit", &edit);
}
