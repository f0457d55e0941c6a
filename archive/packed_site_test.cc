#include "archive/packed_site.h"

#include <gtest/gtest.h>

#include "archive/joined_sites.h"

namespace proofstone {
namespace {

const std::string photo_name = "photos/" + std::string(64, 'b') + ".jpeg";

std::string document_with(const std::string& more = {}) {
  return R"({"proofstone": "site", "format": 1, "revisions": [
    {"id": "r1", "time": "2026-05-04T15:10:00Z", "author": "A", "note": "Begun",
     "changes": [{"set": "/sections/s/survey", "to": {"file": "s.csv"}}]})" +
         more + "]}";
}

std::string named(const std::string& id, const std::string& name) {
  return R"(, {"id": ")" + id +
         R"(", "after": ["r1"], "time": "2026-05-05T15:10:00Z", "author": "B", "note": "Named",
     "changes": [{"set": "/name", "to": ")" +
         name + R"("}]})";
}

Expected<PackedSite> read(const std::vector<PackedFile>& files) {
  return site_in_archive(*write_zip(files), "site.zip", PackedPhotos::unpacked);
}

std::string code_of(const Expected<PackedSite>& site) {
  return site ? "read" : site.problems().front().code;
}

TEST(PackedSite, IsFoundInItsFolder) {
  for (const auto* folder : {"", "creek/", "work/creek/"}) {
    const std::string above = folder;
    const auto site = read({{above + "s.csv", "1,2"},
                            {above + "notes.txt", "not named"},
                            {"elsewhere/deep/er/site.json", "[]"},
                            {above + "site.json", document_with()},
                            {above + photo_name, "photo"}});
    ASSERT_TRUE(site) << site.problems().front().sentence();
    EXPECT_EQ(site->document, document_with());
    ASSERT_EQ(site->files.size(), 1U);
    EXPECT_EQ(site->files[0].name, "s.csv");
    EXPECT_EQ(site->files[0].text, "1,2");
    ASSERT_EQ(site->photos.size(), 1U);
    EXPECT_EQ(site->photos[0].name, photo_name);
  }
}

TEST(PackedSite, IsRefusedWhereThereIsNoneOrSeveral) {
  EXPECT_EQ(code_of(read({{"notes.txt", "nothing"}})), "no-site");
  EXPECT_EQ(code_of(read({{"a/site.json", "{}"}, {"b/site.json", "{}"}})), "several-sites");
  const auto broken = read({{"creek/site.json", "{\"proofstone\": "}});
  ASSERT_FALSE(broken);
  EXPECT_EQ(broken.problems().front().file, "site.zip/creek/site.json");
}

TEST(PackedSite, ComesBackAsItWentOut) {
  const PackedSite site{document_with(), {{"s.csv", "1,2"}}, {{photo_name, "photo"}}};
  const auto packed = archive_of(site);
  ASSERT_TRUE(packed);
  const auto back = site_in_archive(*packed, "site.zip", PackedPhotos::unpacked);
  ASSERT_TRUE(back);
  EXPECT_EQ(back->document, site.document);
  EXPECT_EQ(back->files[0].text, "1,2");
  EXPECT_EQ(back->photos[0].bytes, "photo");
}

Expected<JoinedSites> joined(PackedSite one, PackedSite other) {
  return joined_sites(std::move(one), std::move(other), "one.zip", "other.zip");
}

TEST(JoinedSites, HoldEverythingOfBoth) {
  const auto both =
      joined({document_with(named("mine", "One")), {{"s.csv", "1,2"}}, {{photo_name, "photo"}}},
             {document_with(named("yours", "Other") + named("later", "Third")),
              {{"s.csv", "1,2"}, {"t.csv", "3"}},
              {}});
  ASSERT_TRUE(both) << both.problems().front().sentence();
  EXPECT_EQ(both->only_in_one, 1U);
  EXPECT_EQ(both->only_in_other, 2U);
  EXPECT_EQ(both->site.files.size(), 2U);
  EXPECT_EQ(both->site.photos.size(), 1U);
  for (const auto* id : {"r1", "mine", "yours", "later"}) {
    EXPECT_NE(both->site.document.find("\"id\": \"" + std::string(id) + "\""), std::string::npos);
  }
  const auto again = joined(both->site, {document_with(named("mine", "One")), {}, {}});
  ASSERT_TRUE(again);
  EXPECT_EQ(again->site.document, both->site.document) << "what is known adds nothing";
}

TEST(JoinedSites, AreTheSameWithAndWithoutPositions) {
  const std::string look = R"(, {"id": "r2", "after": ["r1"], "time": "2026-05-05T15:10:00Z",
    "author": "B", "note": "Seen", "changes": [{"set": "/loads/a", "to": {"lot": "l")";
  const auto full = document_with(look + R"(, "position": {"latitude": "1°", "longitude": "2°"}}},
    {"remove": "/loads/b/position"}]})");
  const auto bare = document_with(look + "}}]}");
  const auto both = joined({full, {}, {}}, {bare, {}, {}});
  ASSERT_TRUE(both) << both.problems().front().sentence();
  EXPECT_NE(both->site.document.find("latitude"), std::string::npos);
  const auto stripped = joined({bare, {}, {}}, {full, {}, {}});
  ASSERT_TRUE(stripped);
  EXPECT_EQ(stripped->site.document.find("latitude"), std::string::npos);
}

TEST(JoinedSites, AreRefusedWhereTheyDiffer) {
  const auto code = [](const Expected<JoinedSites>& both) {
    return both ? "joined" : both.problems().front().code;
  };
  const PackedSite site{document_with(named("r2", "One")), {{"s.csv", "1,2"}}, {{photo_name, "a"}}};
  auto other = site;
  other.document = document_with(named("r2", "Other"));
  EXPECT_EQ(code(joined(site, other)), "reads-otherwise");
  other = site;
  other.files[0].text = "1,3";
  EXPECT_EQ(code(joined(site, other)), "reads-otherwise");
  other = site;
  other.photos[0].bytes = "b";
  EXPECT_EQ(code(joined(site, other)), "reads-otherwise");
  other.document.replace(other.document.find("Begun"), 5, "Other");
  EXPECT_EQ(code(joined(site, other)), "other-site");
  other.document = "[]";
  EXPECT_NE(code(joined(site, other)), "joined");
}

}  // namespace
}  // namespace proofstone
