#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/finding/problem.h"

namespace proofstone {

/// A file as it is packed in an archive: its name with the folders above it, "/" between them.
struct PackedFile {
  std::string name;
  std::string bytes;
};

/// The limits within which an archive is taken for a site; larger ones are refused before they are
/// unpacked. The screens keep the same ones (web/src/site_archive.ts).
inline constexpr std::uint64_t most_packed_files = 2000;
/// Of the document and its tables together, unpacked.
inline constexpr std::uint64_t largest_packed_tables = std::uint64_t{64} << 20;
/// Of the photos together, unpacked.
inline constexpr std::uint64_t largest_packed_photos = std::uint64_t{256} << 20;
/// Of the archive itself.
inline constexpr std::uint64_t largest_archive = largest_packed_tables + largest_packed_photos;

/// Whether the photos of an archive are unpacked with it. Their names are read in any case.
enum class PackedPhotos { named_only, unpacked };

/// Whether bytes begin as a ZIP file does.
bool looks_like_zip(std::string_view bytes);

/// The SHA-256 that the name of a packed photo states ("photos/<hash>.jpeg" in any folder); empty
/// for any other file. Nothing is said of the bytes.
std::string photo_hash_in(std::string_view name);

/// Reads the files of a ZIP, whose bytes are `bytes`; folders are left out. Problems, with `file`
/// as their file and the packed name as their place: no ZIP or one that breaks off; an entry that
/// is damaged, encrypted, no plain file, packed in an unknown way, named twice, or named so that it
/// leads out of the folder; more than the limits above, whatever the archive says of itself.
Expected<std::vector<PackedFile>> read_zip(std::string_view bytes, const std::string& file,
                                           PackedPhotos photos);

/// Packs files into a ZIP. The same files in the same order give the same bytes: no times are told.
/// Photos are stored as they are, because they are compressed already. Problem "not-packed".
Expected<std::string> write_zip(const std::vector<PackedFile>& files);

}  // namespace proofstone
