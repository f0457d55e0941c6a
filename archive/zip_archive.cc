#include "archive/zip_archive.h"

#include <fmt/format.h>
#include <sys/stat.h>
#include <zip.h>

#include <algorithm>
#include <array>
#include <memory>
#include <set>
#include <utility>

#include "engine/finding/quoted_text.h"

namespace proofstone {
namespace {

struct Discard {
  void operator()(zip_t* archive) const { zip_discard(archive); }
  void operator()(zip_file_t* file) const { zip_fclose(file); }
  void operator()(zip_source_t* source) const { zip_source_free(source); }
};
using Archive = std::unique_ptr<zip_t, Discard>;
using OpenFile = std::unique_ptr<zip_file_t, Discard>;
using Source = std::unique_ptr<zip_source_t, Discard>;

/// 1 January 1980, the first day that a ZIP can name.
constexpr zip_uint16_t first_date = (0 << 9) | (1 << 5) | 1;

Problem refused(const std::string& file, const std::string& code, const std::string& what,
                const std::string& where = {}, const std::string& allowed = {}) {
  return {code, what, file, where, allowed};
}

Problem too_large(const std::string& file) {
  return refused(
      file, "archive-too-large",
      "This archive unpacks to more than a site holds, and was not unpacked.", "",
      fmt::format("at most {} files, {} MB of document and tables, {} MB of photos",
                  most_packed_files, largest_packed_tables >> 20, largest_packed_photos >> 20));
}

Problem damaged(const std::string& file, const std::string& name) {
  return refused(file, "archive-damaged", "This part of the archive is damaged or cut off.", name,
                 "the archive as it was written; copy it anew");
}

/// A name that would lie outside of the folder in which it is unpacked, or that no folder can hold.
bool leads_out(std::string_view name) {
  if (name.empty() || name.front() == '/' || name.find('\\') != std::string_view::npos) return true;
  if (name.size() > 1 && name[1] == ':') return true;  // "C:…"
  if (std::any_of(name.begin(), name.end(),
                  [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; })) {
    return true;
  }
  for (std::size_t at = 0; at <= name.size();) {
    const auto end = std::min(name.find('/', at), name.size());
    if (name.substr(at, end - at) == "..") return true;
    at = end + 1;
  }
  return false;
}

bool is_plain_file(zip_t* archive, zip_uint64_t index) {
  zip_uint8_t system = 0;
  zip_uint32_t attributes = 0;
  if (zip_file_get_external_attributes(archive, index, 0, &system, &attributes) != 0) return false;
  if (system != ZIP_OPSYS_UNIX && system != ZIP_OPSYS_OS_X) return true;
  const auto mode = attributes >> 16;
  return (mode & S_IFMT) == 0 || S_ISREG(mode);
}

/// How much was unpacked so far, of tables and of photos.
struct Unpacked {
  std::uint64_t tables = 0;
  std::uint64_t photos = 0;

  /// Counts `bytes` more; false where the archive then holds too much.
  bool adds(std::uint64_t bytes, bool photo) {
    auto& sum = photo ? photos : tables;
    const auto most = photo ? largest_packed_photos : largest_packed_tables;
    if (bytes > most - sum) return false;
    sum += bytes;
    return true;
  }
};

/// What an archive says of one entry before anything of it is unpacked.
Problems problems_of_entry(zip_t* archive, const zip_stat_t& entry, const std::string& file,
                           const std::string& name) {
  if (leads_out(name)) {
    return {refused(
        file, "archive-leads-out",
        fmt::format("The entry {} of this archive leads out of its folder.", in_quotes(name)), "",
        "names without \"..\", without a drive and not beginning with \"/\"")};
  }
  if ((entry.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && entry.encryption_method != ZIP_EM_NONE) {
    return {refused(file, "archive-encrypted", "This archive is encrypted.", name,
                    "an archive without a password")};
  }
  if (!is_plain_file(archive, entry.index)) {
    return {refused(file, "archive-not-a-file", "This entry of the archive is no plain file.", name,
                    "files and folders; no links")};
  }
  return {};
}

/// The bytes of an entry; what its head says of its size is not believed.
Expected<std::string> unpacked(zip_t* archive, zip_uint64_t index, const std::string& file,
                               const std::string& name, bool photo, Unpacked& so_far) {
  const OpenFile open(zip_fopen_index(archive, index, 0));
  if (!open) {
    const auto* error = zip_get_error(archive);
    if (zip_error_code_zip(error) == ZIP_ER_COMPNOTSUPP) {
      return refused(file, "archive-unknown-packing",
                     "This entry is packed in a way not known here.", name,
                     "entries that are stored or deflated");
    }
    return damaged(file, name);
  }
  std::string bytes;
  std::array<char, 65536> part{};
  for (;;) {
    const auto count = zip_fread(open.get(), part.data(), part.size());
    if (count < 0) return damaged(file, name);
    if (count == 0) return bytes;
    if (!so_far.adds(static_cast<std::uint64_t>(count), photo)) return too_large(file);
    bytes.append(part.data(), static_cast<std::size_t>(count));
  }
}

}  // namespace

bool looks_like_zip(std::string_view bytes) {
  return bytes.starts_with("PK\x03\x04") || bytes.starts_with("PK\x05\x06");
}

std::string photo_hash_in(std::string_view name) {
  constexpr std::size_t hash_length = 64;
  constexpr std::size_t longest_ending = 5;
  constexpr std::string_view folder = "photos/";
  const auto slash = name.rfind('/');
  if (slash == std::string_view::npos) return {};
  const auto above = name.substr(0, slash + 1);
  if (above != folder && !above.ends_with("/photos/")) return {};
  const auto base = name.substr(slash + 1);
  if (base.size() < hash_length + 2 || base.size() > hash_length + 1 + longest_ending) return {};
  const auto hash = base.substr(0, hash_length);
  const auto ending = base.substr(hash_length + 1);
  const bool hexadecimal = hash.find_first_not_of("0123456789abcdef") == std::string_view::npos;
  const bool plain = std::all_of(ending.begin(), ending.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
  });
  return hexadecimal && base[hash_length] == '.' && plain ? std::string(hash) : std::string();
}

Expected<std::vector<PackedFile>> read_zip(std::string_view bytes, const std::string& file,
                                           PackedPhotos photos) {
  if (bytes.size() > largest_archive) return too_large(file);
  Source source(zip_source_buffer_create(bytes.data(), bytes.size(), 0, nullptr));
  if (!source) return refused(file, "not-readable", "There is no memory to read this archive.");
  // The library takes no bytes at all for an archive without files.
  const Archive archive(bytes.empty() ? nullptr
                                      : zip_open_from_source(source.get(), ZIP_RDONLY, nullptr));
  if (!archive) {
    return refused(
        file, "no-archive",
        looks_like_zip(bytes) ? "This archive is cut off or damaged." : "This is no ZIP file.", "",
        "a site packed as a ZIP, whole");
  }
  [[maybe_unused]] const auto* of_archive = source.release();  // the archive owns it now
  const auto number = zip_get_num_entries(archive.get(), 0);
  if (number < 0 || static_cast<std::uint64_t>(number) > most_packed_files) return too_large(file);

  std::vector<PackedFile> files;
  std::set<std::string> names;
  Unpacked so_far;
  for (zip_uint64_t i = 0; i < static_cast<zip_uint64_t>(number); ++i) {
    zip_stat_t entry;
    zip_stat_init(&entry);
    if (zip_stat_index(archive.get(), i, 0, &entry) != 0 || (entry.valid & ZIP_STAT_NAME) == 0) {
      return damaged(file, fmt::format("entry {}", i + 1));
    }
    entry.index = i;
    std::string name = entry.name;
    if (name.ends_with('/')) {
      if (leads_out(name)) return problems_of_entry(archive.get(), entry, file, name);
      continue;
    }
    if (auto problems = problems_of_entry(archive.get(), entry, file, name); !problems.empty()) {
      return problems;
    }
    if (!names.insert(name).second) {
      return refused(file, "archive-name-twice", "Two entries of this archive have one name.", name,
                     "one entry of each name");
    }
    const bool photo = !photo_hash_in(name).empty();
    if (photo && photos == PackedPhotos::named_only) {
      files.push_back({std::move(name), {}});
      continue;
    }
    auto content = unpacked(archive.get(), i, file, name, photo, so_far);
    if (!content) return content.problems();
    files.push_back({std::move(name), std::move(*content)});
  }
  return files;
}

Expected<std::string> write_zip(const std::vector<PackedFile>& files) {
  const auto not_packed = [] {
    return Problem{"not-packed", "The archive could not be put together.", "", "", ""};
  };
  Source source(zip_source_buffer_create(nullptr, 0, 0, nullptr));
  if (!source) return not_packed();
  Archive archive(zip_open_from_source(source.get(), ZIP_CREATE | ZIP_TRUNCATE, nullptr));
  if (!archive) return not_packed();
  zip_source_keep(source.get());  // still to be read once the archive is closed
  for (const auto& [name, bytes] : files) {
    zip_source_t* content = zip_source_buffer(archive.get(), bytes.data(), bytes.size(), 0);
    const auto index = zip_file_add(archive.get(), name.c_str(), content, ZIP_FL_ENC_UTF_8);
    if (index < 0) {
      zip_source_free(content);
      return not_packed();
    }
    const auto place = static_cast<zip_uint64_t>(index);
    const bool photo = !photo_hash_in(name).empty();
    if (zip_set_file_compression(archive.get(), place, photo ? ZIP_CM_STORE : ZIP_CM_DEFLATE, 6) !=
            0 ||
        zip_file_set_dostime(archive.get(), place, 0, first_date, 0) != 0) {
      return not_packed();
    }
  }
  if (zip_close(archive.get()) != 0) return not_packed();
  [[maybe_unused]] const auto* closed = archive.release();
  if (zip_source_open(source.get()) != 0) return not_packed();
  zip_stat_t whole;
  zip_stat_init(&whole);
  if (zip_source_stat(source.get(), &whole) != 0 || (whole.valid & ZIP_STAT_SIZE) == 0) {
    return not_packed();
  }
  std::string bytes(whole.size, '\0');
  const auto read = zip_source_read(source.get(), bytes.data(), bytes.size());
  zip_source_close(source.get());
  if (read < 0 || static_cast<std::size_t>(read) != bytes.size()) return not_packed();
  return bytes;
}

}  // namespace proofstone
