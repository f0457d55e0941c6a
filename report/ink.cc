#include "report/ink.h"

namespace proofstone {

std::string_view ink_value(Ink ink) {
  switch (ink) {
    case Ink::none:
      return "none";
    case Ink::ink:
      return "var(--ink, #23272a)";
    case Ink::muted:
      return "var(--muted, #575d61)";
    case Ink::line:
      return "var(--line, #d5d0c7)";
    case Ink::paper:
      return "var(--paper, #fdfcfa)";
    case Ink::stone_1:
      return "var(--stone-1, #e9e5de)";
    case Ink::stone_2:
      return "var(--stone-2, #c6c0b5)";
    case Ink::stone_3:
      return "var(--stone-3, #857f75)";
    case Ink::river:
      return "var(--river, #1d5c87)";
    case Ink::ochre:
      return "var(--ochre, #8a5700)";
  }
  return "none";
}

// Contrast (WCAG 2.2) against paper: ink, muted, river and ochre at least 5:1, stone-3 at least
// 3:1.
std::string_view light_inks() {
  return "--ink: #23272a; --muted: #575d61; --line: #d5d0c7; --paper: #fdfcfa; "
         "--stone-1: #e9e5de; --stone-2: #c6c0b5; --stone-3: #857f75; "
         "--river: #1d5c87; --ochre: #8a5700;";
}

std::string_view dark_inks() {
  return "--ink: #e8e5df; --muted: #a8adb0; --line: #363b3e; --paper: #15181a; "
         "--stone-1: #262b2e; --stone-2: #4a5053; --stone-3: #8f8d86; "
         "--river: #82bbe2; --ochre: #e2ad52;";
}

}  // namespace proofstone
