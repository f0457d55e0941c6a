#include "engine/json/utc_time.h"

#include <gtest/gtest.h>

namespace proofstone {
namespace {

TEST(ClockTime, CrossesMidnightMonthAndLeapDay) {
  EXPECT_EQ(clock_time("2026-05-04T15:10:00Z", 0), "2026-05-04 15:10");
  EXPECT_EQ(clock_time("2026-05-01T03:10:59Z", -360), "2026-04-30 21:10");
  EXPECT_EQ(clock_time("2027-12-31T23:30:00Z", 60), "2028-01-01 00:30");
  EXPECT_EQ(clock_time("2028-03-01T00:00:00Z", -1), "2028-02-29 23:59");
  EXPECT_EQ(clock_time("2026-02-28T20:00:00Z", 330), "2026-03-01 01:30");
}

TEST(ClockTime, OffsetsAreReadStrictly) {
  EXPECT_EQ(clock_offset("+00:00"), 0);
  EXPECT_EQ(clock_offset("-06:00"), -360);
  EXPECT_EQ(clock_offset("+05:45"), 345);
  for (const char* text :
       {"", "6", "-6:00", "+06:60", "+15:00", "06:00", "+06:00 ", "Z", "+aa:00"}) {
    EXPECT_FALSE(clock_offset(text)) << text;
  }
}

TEST(Day, IsOfTheCalendar) {
  EXPECT_TRUE(is_day("2028-02-29"));
  for (const char* text :
       {"2026-02-29", "2026-13-01", "2026-00-10", "2026-1-1", "", "2026-05-2x"}) {
    EXPECT_FALSE(is_day(text)) << text;
  }
}

}  // namespace
}  // namespace proofstone
