// What the desk asks to compare and to design: rows beside one another, blends, proportions.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "report/example_request.h"

namespace proofstone {
namespace {

using nlohmann::json;

TEST(DesignerRequests, ASubstitutionOpensToWhatItWasReadFrom) {
  const auto answer =
      ask_example({{"ask", "substitution"}, {"zone", "outer-bank"}, {"specific_gravity", "2.45"}});
  ASSERT_TRUE(answer.contains("substitution")) << answer.dump();
  const auto& study = answer["substitution"];
  std::size_t opened = 0;
  for (const auto& row : study["rows"]) {
    EXPECT_EQ(row["cells"].size(), study["columns"].size());
    if (row["what"] != "Stone asked for") continue;
    for (const auto& cell : row["cells"]) opened += cell["finding"]["steps"].empty() ? 0 : 1;
  }
  EXPECT_EQ(opened, study["columns"].size());
}

TEST(DesignerRequests, SubmittalsStandBesideWhatIsRequired) {
  const auto answer = ask_example({{"ask", "submittals"}, {"source", "granite-knob"}});
  ASSERT_TRUE(answer.contains("submittals")) << answer.dump();
  EXPECT_EQ(answer["submittals"]["columns"][0], "Required");
  EXPECT_EQ(answer["submittals"]["findings"][0]["topic"], "submittal");
  EXPECT_EQ(ask_example({{"ask", "submittals"}, {"source", "no<such>"}})["problems"][0]["where"],
            "/source");
}

/// A stock that is finer than what the example has on offer.
json revision_with_fine_stock() {
  return {{"id", "trial"},
          {"time", "2026-06-30T12:00:00Z"},
          {"author", "trial"},
          {"note", "trial"},
          {"changes", json::array({{{"set", "/materials/fine-stock"},
                                    {"to",
                                     {{"name", "Fine stock"},
                                      {"gradation",
                                       {{{"size", "4 in"}, {"smaller", "0 %"}},
                                        {{"size", "8 in"}, {"smaller", "40 %"}},
                                        {{"size", "12 in"}, {"smaller", "90 %"}},
                                        {{"size", "14 in"}, {"smaller", "100 %"}}}}}}}})}};
}

TEST(DesignerRequests, ABlendShowsItsCurveAndCanBeKeptAsAMaterial) {
  auto document = json::parse(example_file("site.json"));
  document["revisions"].push_back(revision_with_fine_stock());
  const auto answer = ask_example({{"ask", "blend"},
                                   {"document", document},
                                   {"class", "fhwa-3"},
                                   {"materials", {"coarse-stock", "fine-stock"}},
                                   {"pictures", {{"width", 390}}}});
  ASSERT_TRUE(answer.contains("blend")) << answer.dump();
  ASSERT_FALSE(answer["blend"]["blends"].empty()) << answer.dump();
  const auto& first = answer["blend"]["blends"][0];
  EXPECT_NE(first["picture"]["svg"].get<std::string>().find("The blend"), std::string::npos);
  // What is kept of it reads back.
  document["revisions"].push_back(
      {{"id", "kept"},
       {"time", "2026-06-30T13:00:00Z"},
       {"author", "trial"},
       {"note", "trial"},
       {"changes", json::array({{{"set", "/materials/blend"}, {"to", first["material"]}}})}});
  const auto read = ask_example({{"ask", "validate"}, {"document", document}});
  EXPECT_TRUE(read["problems"].empty()) << read.dump();
}

TEST(DesignerRequests, ProportionsNeedAZoneWithAMix) {
  const auto answer = ask_example({{"ask", "mix"}, {"zone", "no<such>"}});
  ASSERT_TRUE(answer.contains("problems"));
  EXPECT_EQ(answer["problems"][0]["where"], "/zone");
}

}  // namespace
}  // namespace proofstone
