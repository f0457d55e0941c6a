#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/finding/source.h"
#include "engine/mix/filled_mix.h"

namespace proofstone {

/// What a filled layer is filled with.
enum class MixKind { soil_filled, void_filled };

/// "soil-filled", "void-filled".
std::string_view mix_kind_word(MixKind kind);

/// A recipe that circulates, as the catalog states it. One that is unverified is shown with its
/// dilation and never taken as good.
struct PublishedRecipe {
  std::string id;
  std::string name;
  MixKind kind = MixKind::soil_filled;
  std::optional<Length> rock_from;  ///< nominal D50 of the rock it is for
  std::optional<Length> rock_to;
  double rock_parts = 1;
  double soil_parts = 0;  ///< of soil found at the place
  std::vector<MixFill> fills;
  std::vector<double> fill_parts;
  bool unverified = false;
  Source source;
  std::vector<std::string> notes;

  /// Whether it is meant for rock of this size.
  bool serves(Length nominal_d50) const;
};

/// The recipes of catalog/mixes.json, in its order.
const std::vector<PublishedRecipe>& published_recipes();

/// The recipe called `id`; nullptr otherwise.
const PublishedRecipe* find_recipe(std::string_view id);

/// Reads a catalog of recipes (schema/mixes.schema.json).
Expected<std::vector<PublishedRecipe>> read_recipes(std::string_view json_text);

}  // namespace proofstone
