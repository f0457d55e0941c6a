#include "report/picture_legend.h"

#include <algorithm>

#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

constexpr double sample_width = 28;
constexpr double text_offset = sample_width + 8;
constexpr double column_gap = 24;
constexpr double entry_gap = 5;

}  // namespace

LegendEntry line_entry(const Paint& paint, std::string text) {
  return {[paint](SvgCanvas& to, PixelPoint centre) {
            to.line({centre.x - 14, centre.y}, {centre.x + 14, centre.y}, paint);
          },
          std::move(text)};
}

double draw_legend(SvgCanvas& canvas, const std::vector<LegendEntry>& entries, double left,
                   double right, double top) {
  double longest = 0;
  for (const auto& entry : entries) longest = std::max(longest, text_width(entry.text, font_size));
  const double wanted = text_offset + longest + column_gap;
  const auto columns =
      static_cast<std::size_t>(std::clamp((right - left + column_gap) / wanted, 1.0, 3.0));
  const double pitch = (right - left + column_gap) / static_cast<double>(columns);
  const double text_room = pitch - column_gap - text_offset;

  double y = top;
  for (std::size_t i = 0; i < entries.size(); i += columns) {
    std::size_t lines = 1;
    for (std::size_t k = i; k < std::min(i + columns, entries.size()); ++k) {
      const double x = left + pitch * static_cast<double>(k - i);
      entries[k].sample(canvas, {x + sample_width / 2, y + line_height / 2});
      const auto text = wrapped(entries[k].text, text_room, font_size);
      for (std::size_t n = 0; n < text.size(); ++n) {
        canvas.text({x + text_offset, y + line_height * static_cast<double>(n) + 13.5}, text[n],
                    {font_size, TextAnchor::start, Ink::ink, false, false, {}});
      }
      lines = std::max(lines, text.size());
    }
    y += line_height * static_cast<double>(lines) + entry_gap;
  }
  return y;
}

}  // namespace proofstone
