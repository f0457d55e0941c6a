#include "report/handbook.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "engine/method/registry.h"

namespace proofstone {
namespace {

std::string committed(const std::string& name) {
  std::ifstream stream(std::string(PROOFSTONE_SOURCE_FOLDER "/docs/") + name, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

/// Every check case is computed for it: once serves all tests.
const std::vector<HandbookPage>& pages_of_handbook() {
  static const auto pages = handbook();
  return pages;
}

TEST(Handbook, StandsInDocsAsTheCodeMakesIt) {
  for (const auto& page : pages_of_handbook()) {
    EXPECT_EQ(committed(page.file_name), page.text)
        << "docs/" << page.file_name << " is behind: build/native/proofstone handbook docs";
  }
}

TEST(Handbook, HasAPageForEveryMethodWithItsCases) {
  const auto& pages = pages_of_handbook();
  for (const auto* method : all_methods()) {
    bool found = false;
    for (const auto& page : pages) {
      if (page.file_name != method->description().id + ".md") continue;
      found = true;
      EXPECT_NE(page.text.find("## Published cases"), std::string::npos) << page.file_name;
      EXPECT_EQ(page.text.find("**missed**"), std::string::npos) << page.file_name;
    }
    EXPECT_TRUE(found) << method->description().id;
  }
}

}  // namespace
}  // namespace proofstone
