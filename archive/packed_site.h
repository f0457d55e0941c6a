#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "archive/zip_archive.h"
#include "engine/finding/problem.h"
#include "formats/site_files.h"

namespace proofstone {

/// A site as one file holds it, and as a folder does: the document, the files that it names, and
/// photos under the hash of their bytes ("photos/<hash>.jpeg").
struct PackedSite {
  std::string document;
  std::vector<SuppliedFile> files;  ///< what the document names and was found, under those names
  std::vector<PackedFile> photos;
};

/// The site in a ZIP: the site.json nearest the top, and what stands beside it. Problems: those of
/// `read_zip`; no site.json, or several equally near; a document that is no JSON. A file that the
/// document names and the archive lacks is no problem here: the engine tells of it.
Expected<PackedSite> site_in_archive(std::string_view bytes, const std::string& file,
                                     PackedPhotos photos);

/// The ZIP of a site, laid out as the screens write it: site.json, photos, files by name. Unpacked,
/// it is a folder that the command line reads. Problem "not-packed".
Expected<std::string> archive_of(PackedSite site);

}  // namespace proofstone
