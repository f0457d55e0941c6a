#include "photography/camera_notes.h"

#include <cstdint>

namespace proofstone {
namespace {

constexpr std::uint32_t orientation_tag = 274;
constexpr std::uint32_t further_notes_tag = 34665;
constexpr std::uint32_t focal_length_tag = 41989;
constexpr std::uint32_t short_type = 3;
constexpr std::size_t entry_bytes = 12;

/// Numbers at places of the notes; 0 where the notes end before.
class NoteBytes {
 public:
  explicit NoteBytes(std::string_view bytes)
      : bytes_(bytes), big_first_(bytes.substr(0, 2) == "MM") {}

  bool are_notes() const {
    return (big_first_ || bytes_.substr(0, 2) == "II") && number(2, 2) == 42;
  }
  std::uint32_t number(std::size_t at, std::size_t size) const {
    if (at > bytes_.size() || size > bytes_.size() - at) return 0;
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < size; ++i) {
      const std::size_t place = big_first_ ? at + i : at + size - 1 - i;
      value = value << 8 | static_cast<unsigned char>(bytes_[place]);
    }
    return value;
  }

 private:
  std::string_view bytes_;
  bool big_first_;
};

/// Calls with the tag, the type and the place of the value of each entry of a directory.
template <class Visit>
void visit_entries(const NoteBytes& notes, std::size_t directory, Visit visit) {
  const std::uint32_t entries = notes.number(directory, 2);
  for (std::uint32_t i = 0; i < entries && i < 500; ++i) {
    const std::size_t at = directory + 2 + i * entry_bytes;
    visit(notes.number(at, 2), notes.number(at + 2, 2), at + 8);
  }
}

}  // namespace

CameraNotes read_camera_notes(std::string_view bytes) {
  CameraNotes found;
  const NoteBytes notes(bytes);
  if (!notes.are_notes()) return found;
  std::size_t further = 0;
  visit_entries(notes, notes.number(4, 4),
                [&](std::uint32_t tag, std::uint32_t type, std::size_t at) {
                  const std::uint32_t value = notes.number(at, 2);
                  if (tag == orientation_tag && type == short_type && value >= 1 && value <= 8) {
                    found.orientation = static_cast<int>(value);
                  }
                  if (tag == further_notes_tag) further = notes.number(at, 4);
                });
  if (further == 0) return found;
  visit_entries(notes, further, [&](std::uint32_t tag, std::uint32_t type, std::size_t at) {
    const std::uint32_t value = notes.number(at, 2);
    // Telephones have 13 to 120 mm; 0 means that the camera does not know.
    if (tag == focal_length_tag && type == short_type && value >= 8 && value <= 1000) {
      found.focal_length = value;
    }
  });
  return found;
}

}  // namespace proofstone
