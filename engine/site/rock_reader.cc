#include "engine/site/rock_reader.h"

#include "engine/site/filter_reader.h"
#include "engine/site/mix_reader.h"

namespace proofstone {

RockSource read_source(FieldReader& reader, const std::string& id) {
  RockSource source;
  source.id = id;
  source.name = reader.required_text("name");
  source.specific_gravity_tests =
      reader.optional_quantities<Dimensionless>("specific_gravity_tests");
  const auto stated = reader.optional_quantity<Dimensionless>("specific_gravity");
  if (!source.specific_gravity_tests.empty()) {
    double sum = 0;
    for (const auto& test : source.specific_gravity_tests) sum += test.number();
    const auto count = static_cast<double>(source.specific_gravity_tests.size());
    source.rock.specific_gravity = Dimensionless::number(sum / count);
  } else if (stated) {
    source.rock.specific_gravity = *stated;
  } else {
    reader.report("missing-field", "The specific gravity of the rock is missing.",
                  "specific_gravity", "specific_gravity, or specific_gravity_tests");
  }
  const auto plausible = [](double value) { return value >= 1.8 && value <= 3.6; };
  bool all_plausible = plausible(source.rock.specific_gravity.number());
  for (const auto& test : source.specific_gravity_tests) {
    all_plausible = all_plausible && plausible(test.number());
  }
  if (!all_plausible) {
    reader.report(
        "implausible", "No rock has this specific gravity.",
        source.specific_gravity_tests.empty() ? "specific_gravity" : "specific_gravity_tests",
        "1.8 to 3.6 (protection rock lies between about 2.2 and 3.2)");
  }
  source.rock.angularity = reader.choice<Angularity>(
      "angularity", {{"angular", Angularity::angular}, {"rounded", Angularity::rounded}},
      std::nullopt);
  source.rock.angle_of_repose = reader.optional_quantity<Angle>("angle_of_repose");
  if (source.rock.angle_of_repose && (source.rock.angle_of_repose->degrees() < 25 ||
                                      source.rock.angle_of_repose->degrees() > 50)) {
    reader.report("implausible", "No loose rock rests at this angle.", "angle_of_repose",
                  "25° to 50°");
  }
  return source;
}

std::optional<Material> read_material(FieldReader& reader, const std::string& id,
                                      Problems& problems) {
  const auto name = reader.required_text("name");
  auto gradation = read_gradation(reader, GradationBasis{}, problems);
  auto state = read_material_state(reader, problems);
  if (!gradation) return std::nullopt;
  return Material{id, name, std::move(*gradation), state};
}

}  // namespace proofstone
