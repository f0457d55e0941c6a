#include "engine/site/example_document.h"

namespace proofstone {

ExampleDocument::ExampleDocument() {
  items = nlohmann::json::parse(R"({
    "name": "Test reach",
    "flow_cases": {
      "flood": {"name": "Design flood", "purpose": "design", "discharge": "4200 ft³/s"},
      "low": {"name": "Base flow", "purpose": "base", "discharge": "90 ft³/s"}},
    "sections": {"one": {"name": "Section 1", "energy_slope": "0.0031", "left_bank": "26 ft",
      "right_bank": "124 ft", "survey": {"points": [
        {"station": "0 ft", "elevation": "119.2 ft", "roughness": "0.06"},
        {"station": "26 ft", "elevation": "117 ft", "roughness": "0.045"},
        {"station": "50 ft", "elevation": "105 ft", "roughness": "0.036"},
        {"station": "58 ft", "elevation": "104.3 ft", "roughness": "0.036"},
        {"station": "94 ft", "elevation": "105.9 ft", "roughness": "0.036"},
        {"station": "124 ft", "elevation": "112.3 ft", "roughness": "0.07"},
        {"station": "240 ft", "elevation": "119.6 ft", "roughness": "0.07"}]}}},
    "sources": {"knob": {"name": "Knob", "specific_gravity_tests": ["2.61", "2.64"],
      "angularity": "angular"}},
    "zones": {"bank": {"name": "Outer bank", "section": "one", "place": "bank", "bank": "left",
      "bend": {"side": "outside", "radius": "380 ft"}, "class": "fhwa-3", "source": "knob",
      "layer_thickness": "24 in"}},
    "lots": {"first": {"name": "First lot", "source": "knob", "class": "fhwa-3",
      "zones": ["bank"]}},
    "looks": {"count": {"name": "Count", "kind": "stone count", "lot": "first", "picking": "grid",
      "stones": {"bins": [
        {"not_larger_than": "4 in", "stones": 3},
        {"larger_than": "4 in", "not_larger_than": "8 in", "stones": 22},
        {"larger_than": "8 in", "not_larger_than": "12 in", "stones": 40},
        {"larger_than": "12 in", "not_larger_than": "16 in", "stones": 25},
        {"larger_than": "16 in", "not_larger_than": "22 in", "stones": 10}]}}},
    "materials": {"coarse": {"name": "Coarse stock", "gradation": [
        {"size": "9 in", "smaller": "4 %"}, {"size": "18 in", "smaller": "60 %"},
        {"size": "24 in", "smaller": "100 %"}]}},
    "evidence": {"confidence": "95 %"}
  })");
}

nlohmann::json ExampleDocument::document() const {
  auto changes = nlohmann::json::array();
  for (const auto& [name, value] : items.items()) {
    const bool single = name == "name" || name == "note" || name == "evidence" ||
                        name == "ordering" || name == "prices" || name == "requirements" ||
                        name == "placing_tolerances";
    if (single || !value.is_object()) {
      changes.push_back({{"set", "/" + name}, {"to", value}});
      continue;
    }
    for (const auto& [id, item] : value.items()) {
      changes.push_back({{"set", "/" + name + "/" + id}, {"to", item}});
    }
  }
  return {{"proofstone", "site"},
          {"format", 1},
          {"revisions",
           {{{"id", "r1"},
             {"after", nlohmann::json::array()},
             {"time", "2026-05-04T15:10:00Z"},
             {"author", "A. Tester"},
             {"changes", changes}}}}};
}

}  // namespace proofstone
