#include "archive/zip_archive.h"

#include <gtest/gtest.h>
#include <zip.h>

#include <memory>

namespace proofstone {
namespace {

const std::string hash(64, 'a');

/// A ZIP made by the library itself, of entries that `write_zip` would never make.
class RawZip {
 public:
  RawZip()
      : source_(zip_source_buffer_create(nullptr, 0, 0, nullptr)),
        archive_(zip_open_from_source(source_, ZIP_CREATE | ZIP_TRUNCATE, nullptr)) {
    zip_source_keep(source_);
  }
  ~RawZip() { zip_source_free(source_); }
  RawZip(const RawZip&) = delete;
  RawZip& operator=(const RawZip&) = delete;

  zip_uint64_t add(const std::string& name, const std::string& bytes) {
    texts_.push_back(std::make_unique<std::string>(bytes));
    const auto& text = *texts_.back();
    return static_cast<zip_uint64_t>(
        zip_file_add(archive_, name.c_str(),
                     zip_source_buffer(archive_, text.data(), text.size(), 0), ZIP_FL_ENC_UTF_8));
  }
  zip_t* archive() { return archive_; }

  std::string bytes() {
    EXPECT_EQ(zip_close(archive_), 0);
    zip_stat_t stat;
    zip_stat_init(&stat);
    zip_source_open(source_);
    zip_source_stat(source_, &stat);
    std::string all(stat.size, '\0');
    zip_source_read(source_, all.data(), all.size());
    zip_source_close(source_);
    return all;
  }

 private:
  zip_source_t* source_;
  zip_t* archive_;
  std::vector<std::unique_ptr<std::string>> texts_;
};

Problem refusal(std::string_view bytes) {
  const auto files = read_zip(bytes, "site.zip", PackedPhotos::unpacked);
  if (files) return {"read", "", "", "", ""};
  EXPECT_EQ(files.problems().front().file, "site.zip");
  EXPECT_FALSE(files.problems().front().what.empty());
  return files.problems().front();
}

/// Every place of `text` in `bytes` overwritten with `other`, which is as long.
std::string replaced(std::string bytes, const std::string& text, const std::string& other) {
  for (auto at = bytes.find(text); at != std::string::npos; at = bytes.find(text, at)) {
    bytes.replace(at, text.size(), other);
  }
  return bytes;
}

TEST(ZipArchive, ComesBackAsItWentOut) {
  const std::vector<PackedFile> files = {{"site.json", "{}\n"},
                                         {"photos/" + hash + ".jpeg", std::string("\xFF\xD8\0", 3)},
                                         {"tables/bank-säule.csv", "a,b\n1,2\n"},
                                         {"empty.csv", ""}};
  const auto packed = write_zip(files);
  ASSERT_TRUE(packed);
  EXPECT_EQ(*packed, *write_zip(files)) << "the same files give the same bytes";
  const auto back = read_zip(*packed, "site.zip", PackedPhotos::unpacked);
  ASSERT_TRUE(back) << back.problems().front().sentence();
  ASSERT_EQ(back->size(), files.size());
  for (std::size_t i = 0; i < files.size(); ++i) {
    EXPECT_EQ((*back)[i].name, files[i].name);
    EXPECT_EQ((*back)[i].bytes, files[i].bytes);
  }
}

TEST(ZipArchive, LeavesPhotosPackedWhereOnlyTheirNamesAreWanted) {
  const auto packed = write_zip({{"site.json", "{}"}, {"photos/" + hash + ".jpeg", "not read"}});
  const auto back = read_zip(*packed, "site.zip", PackedPhotos::named_only);
  ASSERT_TRUE(back);
  EXPECT_EQ((*back)[1].bytes, "");
}

TEST(ZipArchive, RefusesWhatIsCutOffOrNoZip) {
  const auto packed = write_zip({{"site.json", std::string(500, 'x')}, {"a.csv", "a"}});
  for (std::size_t size = 0; size < packed->size(); ++size) {
    EXPECT_EQ(refusal(std::string_view(*packed).substr(0, size)).code, "no-archive") << size;
  }
  EXPECT_EQ(refusal("{\"proofstone\": \"site\"}").what, "This is no ZIP file.");
  EXPECT_EQ(refusal(std::string_view(*packed).substr(0, 60)).what,
            "This archive is cut off or damaged.");
}

TEST(ZipArchive, RefusesDamagedEntries) {
  std::string text;
  for (int i = 0; i < 2000; ++i) text += std::to_string(i * 7919);
  auto packed = *write_zip({{"site.json", text}});
  packed[100] = static_cast<char>(packed[100] ^ 0x55);
  const auto problem = refusal(packed);
  EXPECT_EQ(problem.code, "archive-damaged");
  EXPECT_EQ(problem.where, "site.json");
}

TEST(ZipArchive, RefusesNamesThatLeadOut) {
  for (const auto* name : {"../site.json", "a/../../site.json", "/etc/site.json", "a\\site.json",
                           "C:site.json", "a/..", "../", "/a/", "a\nb.csv"}) {
    RawZip zip;
    zip.add("plain.csv", "a");
    if (std::string_view(name).ends_with('/')) {
      zip_dir_add(zip.archive(), name, ZIP_FL_ENC_UTF_8);
    } else {
      zip.add(name, "{}");
    }
    EXPECT_EQ(refusal(zip.bytes()).code, "archive-leads-out") << name;
  }
  for (const auto* name : {"a..b.csv", "..a", "a/...", "a/b/site.json"}) {
    RawZip zip;
    zip.add(name, "{}");
    EXPECT_EQ(refusal(zip.bytes()).code, "read") << name;
  }
}

TEST(ZipArchive, RefusesTwoEntriesOfOneName) {
  RawZip zip;
  zip.add("site.json", "{}");
  zip.add("site.jsom", "[]");
  const auto problem = refusal(replaced(zip.bytes(), "site.jsom", "site.json"));
  EXPECT_EQ(problem.code, "archive-name-twice");
  EXPECT_EQ(problem.where, "site.json");
}

TEST(ZipArchive, RefusesEncryptedEntries) {
  RawZip zip;
  const auto index = zip.add("site.json", "{}");
  zip_file_set_encryption(zip.archive(), index, ZIP_EM_TRAD_PKWARE, "secret");
  EXPECT_EQ(refusal(zip.bytes()).code, "archive-encrypted");
}

TEST(ZipArchive, RefusesLinks) {
  RawZip zip;
  const auto index = zip.add("site.json", "/etc/passwd");
  zip_file_set_external_attributes(zip.archive(), index, 0, ZIP_OPSYS_UNIX, 0120777U << 16);
  EXPECT_EQ(refusal(zip.bytes()).code, "archive-not-a-file");
}

TEST(ZipArchive, RefusesWhatSwells) {
  RawZip tables;
  tables.add("a.csv", std::string(largest_packed_tables + 1, '0'));
  const auto packed = tables.bytes();
  EXPECT_LT(packed.size(), std::size_t{200000});
  EXPECT_EQ(refusal(packed).code, "archive-too-large");

  RawZip many;
  for (std::uint64_t i = 0; i <= most_packed_files; ++i) many.add(std::to_string(i), "");
  EXPECT_EQ(refusal(many.bytes()).code, "archive-too-large");
}

TEST(ZipArchive, DoesNotBelieveWhatAnEntrySaysOfItsSize) {
  RawZip zip;
  zip.add("a.csv", std::string(largest_packed_tables + 1, '0'));
  const auto packed = zip.bytes();
  const std::string said("\x01\x00\x00\x04", 4);  // 64 MB and a byte, as sizes are written
  ASSERT_NE(packed.find(said), std::string::npos);
  EXPECT_EQ(refusal(replaced(packed, said, std::string("\x10\x00\x00\x00", 4))).code,
            "archive-too-large");
}

TEST(ZipArchive, TellsPhotosByTheirNames) {
  EXPECT_EQ(photo_hash_in("photos/" + hash + ".jpeg"), hash);
  EXPECT_EQ(photo_hash_in("site/photos/" + hash + ".png"), hash);
  const std::vector<std::string> others = {hash + ".jpeg",
                                           "photos/" + hash,
                                           "photos/" + hash + ".jpeg.exe",
                                           "photos/x.jpeg",
                                           "myphotos/" + hash + ".jpeg",
                                           ""};
  for (const auto& name : others) {
    EXPECT_EQ(photo_hash_in(name), "") << name;
  }
}

}  // namespace
}  // namespace proofstone
