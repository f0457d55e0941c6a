#include "engine/json/utc_time.h"

#include <fmt/format.h>

#include <cstddef>

namespace proofstone {
namespace {

/// Whether `text` has a digit where `pattern` has "d" and the same characters elsewhere.
bool is_written_as(std::string_view text, std::string_view pattern) {
  if (text.size() != pattern.size()) return false;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    const bool digit = text[i] >= '0' && text[i] <= '9';
    if (pattern[i] == 'd' ? !digit : text[i] != pattern[i]) return false;
  }
  return true;
}

int two_digits(std::string_view text, std::size_t at) {
  return (text[at] - '0') * 10 + (text[at + 1] - '0');
}

struct Date {
  int year = 0;
  int month = 0;
  int day = 0;
};

Date date_of(std::string_view text) {
  return {two_digits(text, 0) * 100 + two_digits(text, 2), two_digits(text, 5),
          two_digits(text, 8)};
}

/// Of the calendar that RFC 3339 counts days by (Gregorian, ISO 8601).
int days_in(int year, int month) {
  constexpr int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
  return month == 2 && leap ? 29 : days[month - 1];
}

void go_to_next_day(Date& date) {
  if (++date.day <= days_in(date.year, date.month)) return;
  date.day = 1;
  if (++date.month <= 12) return;
  date.month = 1;
  ++date.year;
}

void go_to_day_before(Date& date) {
  if (--date.day >= 1) return;
  if (--date.month < 1) {
    date.month = 12;
    --date.year;
  }
  date.day = days_in(date.year, date.month);
}

}  // namespace

bool is_utc_time(std::string_view text) {
  if (!is_written_as(text, "dddd-dd-ddTdd:dd:ddZ")) return false;
  return two_digits(text, 5) >= 1 && two_digits(text, 5) <= 12 && two_digits(text, 8) >= 1 &&
         two_digits(text, 8) <= 31 && two_digits(text, 11) <= 23 && two_digits(text, 14) <= 59 &&
         two_digits(text, 17) <= 60;
}

bool is_day(std::string_view text) {
  if (!is_written_as(text, "dddd-dd-dd")) return false;
  const Date date = date_of(text);
  return date.month >= 1 && date.month <= 12 && date.day >= 1 &&
         date.day <= days_in(date.year, date.month);
}

std::optional<int> clock_offset(std::string_view text) {
  const bool ahead = is_written_as(text, "+dd:dd");
  if (!ahead && !is_written_as(text, "-dd:dd")) return std::nullopt;
  const int minutes = 60 * two_digits(text, 1) + two_digits(text, 4);
  if (two_digits(text, 4) > 59 || minutes > 14 * 60) return std::nullopt;
  return ahead ? minutes : -minutes;
}

std::string clock_time(std::string_view utc_time, int minutes_ahead) {
  constexpr int minutes_a_day = 24 * 60;
  Date date = date_of(utc_time);
  int minutes = 60 * two_digits(utc_time, 11) + two_digits(utc_time, 14) + minutes_ahead;
  for (; minutes < 0; minutes += minutes_a_day) go_to_day_before(date);
  for (; minutes >= minutes_a_day; minutes -= minutes_a_day) go_to_next_day(date);
  return fmt::format("{:04}-{:02}-{:02} {:02}:{:02}", date.year, date.month, date.day, minutes / 60,
                     minutes % 60);
}

}  // namespace proofstone
