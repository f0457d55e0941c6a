#pragma once

#include "engine/finding/problem.h"
#include "engine/vision/photo.h"

namespace proofstone {

/// "photo 2": how problems name a photo of a set, from its place in the list.
std::string photo_name(std::size_t index);

/// Something drawn on a photo, by the numbers that tell it from others.
struct DrawnThing {
  std::string where;
  std::vector<double> numbers;
};

/// A Problem for each thing that was drawn before, number by number.
void report_repeated(std::vector<DrawnThing> drawn, Problems& problems);

/// A Problem for each photo that repeats another: the same file, or the same size and drawing.
Problems problems_of_repeated_photos(const PhotoSet& set);

}  // namespace proofstone
