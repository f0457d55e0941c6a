// What every table reader must refuse by name, whatever it reads.
#include <gtest/gtest.h>

#include <functional>
#include <string>

#include "formats/file_text.h"
#include "formats/section_csv.h"
#include "formats/stone_count_csv.h"
#include "formats/weighed_sample_csv.h"

namespace proofstone {
namespace {

/// A reader with a table that it accepts, and that table's first number in a column with a unit.
struct Reader {
  std::string name;
  std::string good;
  std::string number;  ///< its first occurrence in `good` is meant
  std::string place;   ///< of that number
  std::function<Problems(std::string_view)> problems_of;
};

template <class Table>
std::function<Problems(std::string_view)> problems_from(
    Expected<Table> (*read)(std::string_view, const std::string&)) {
  return [read](std::string_view text) {
    const auto table = read(text, "t.csv");
    return table ? Problems{} : table.problems();
  };
}

std::vector<Reader> readers() {
  return {
      {"section",
       "station (ft),elevation (ft),roughness n\n"
       "0,101.25,0.035\n10,95,0.035\n10,93,0.03\n30,92.5,0.03\n40,101,0.035\n",
       "101.25", "row 2, elevation", problems_from(read_section_csv)},
      {"stones", "stone,intermediate axis (in)\n1,11.25\n2,7\n3,9.5\n4,14\n", "11.25",
       "row 2, intermediate axis", problems_from(read_stone_count_csv)},
      {"bins", "larger than (in),not larger than (in),stones\n,3,4\n3,6.125,17\n6.125,9,5\n",
       "6.125", "row 3, not larger than", problems_from(read_stone_count_csv)},
      {"weighed",
       "larger than (in),not larger than (in),mass (lb),stones\n,6,310.25,41\n6,9,820,30\n",
       "310.25", "row 2, mass", problems_from(read_weighed_sample_csv)},
  };
}

std::string with(const Reader& reader, const std::string& cell) {
  std::string text = reader.good;
  const auto at = text.find(reader.number);
  return text.replace(at, reader.number.size(), cell);
}

/// The first problem of a text; fails the test when there is none.
Problem first_problem(const Reader& reader, const std::string& text) {
  const auto problems = reader.problems_of(text);
  if (problems.empty()) {
    ADD_FAILURE() << reader.name << " accepted " << text;
    return {};
  }
  EXPECT_EQ(problems.front().file, "t.csv") << reader.name;
  EXPECT_FALSE(problems.front().what.empty());
  return problems.front();
}

TEST(EveryTableReader, AcceptsItsOwnTableAndItsByteOrderMark) {
  for (const auto& reader : readers()) {
    EXPECT_TRUE(reader.problems_of(reader.good).empty()) << reader.name;
    EXPECT_TRUE(reader.problems_of("\xEF\xBB\xBF" + reader.good).empty()) << reader.name;
    std::string semicolons = reader.good;
    for (char& c : semicolons) c = c == ',' ? ';' : c;
    EXPECT_TRUE(reader.problems_of(semicolons).empty()) << reader.name;
  }
}

TEST(EveryTableReader, RefusesWholeFilesByName) {
  for (const auto& reader : readers()) {
    EXPECT_EQ(first_problem(reader, "").code, "empty-file");
    EXPECT_EQ(first_problem(reader, std::string("\x7F"
                                                "ELF\0\0\0\x02",
                                                8))
                  .code,
              "not-text");
    EXPECT_EQ(first_problem(reader, "\xFF\xFEs\x01").code, "wrong-encoding");
    EXPECT_EQ(first_problem(reader, std::string(largest_table_file + 1, '1')).code, "too-large");
    EXPECT_EQ(first_problem(reader, "1,2,3\n4,5,6\n").code, "unknown-column");
    EXPECT_EQ(first_problem(reader, reader.good.substr(0, reader.good.find('\n'))).code, "no-rows");
  }
}

TEST(EveryTableReader, RefusesASeparatorThatIsNotOneOfOurs) {
  for (const auto& reader : readers()) {
    std::string bars = reader.good;
    for (char& c : bars) c = c == ',' ? '|' : c;
    const auto code = first_problem(reader, bars).code;
    EXPECT_TRUE(code == "wrong-separator" || code == "unknown-column") << reader.name << code;
  }
}

TEST(EveryTableReader, RefusesATruncatedTable) {
  for (const auto& reader : readers()) {
    const auto cut = reader.good.substr(0, reader.good.rfind(','));
    const auto problem = first_problem(reader, cut);
    EXPECT_EQ(problem.code, "cell-count") << reader.name;
    EXPECT_EQ(problem.where.substr(0, 4), "row ");
  }
}

TEST(EveryTableReader, RefusesCellsByNameRowAndField) {
  struct Case {
    std::string cell;
    std::string code;
  };
  const std::vector<Case> cases{
      {"\"12,5\"", "decimal-comma"}, {"\"1,250\"", "decimal-comma"}, {"12 in", "unit-mixed-in"},
      {"12ft", "unit-mixed-in"},     {"5 3", "unit-mixed-in"},       {"12½", "unit-mixed-in"},
      {"NaN", "not-a-number"},       {"nan", "not-a-number"},        {"inf", "not-a-number"},
      {"-Infinity", "not-a-number"}, {"0x1F", "not-a-number"},       {"1e999", "not-a-number"},
      {"1.2.3", "not-a-number"},     {"--4", "not-a-number"},        {"twelve", "not-a-number"},
      {"1e", "not-a-number"},        {".", "not-a-number"},          {"<script>", "not-a-number"},
  };
  for (const auto& reader : readers()) {
    for (const auto& [cell, code] : cases) {
      const auto problem = first_problem(reader, with(reader, cell));
      EXPECT_EQ(problem.code, code) << reader.name << ' ' << cell;
      EXPECT_EQ(problem.where, reader.place) << reader.name << ' ' << cell;
    }
    EXPECT_EQ(first_problem(reader, with(reader, "")).code, "missing-value") << reader.name;
  }
}

TEST(EveryTableReader, SaysWhatADecimalCommaShouldBe) {
  for (const auto& reader : readers()) {
    std::string semicolons = with(reader, "§");
    for (char& c : semicolons) c = c == ',' ? ';' : c;
    semicolons.replace(semicolons.find("§"), std::string("§").size(), "12,5");
    const auto problem = first_problem(reader, semicolons);
    EXPECT_EQ(problem.code, "decimal-comma") << reader.name;
    EXPECT_EQ(problem.where, reader.place);
    EXPECT_NE(problem.allowed.find("12.5, not 12,5"), std::string::npos);
  }
}

TEST(EveryTableReader, RefusesAHeadingWithoutItsUnitOrWithAnother) {
  for (const auto& reader : readers()) {
    std::string bare = reader.good;
    const auto open = bare.find(" (");
    const auto close = bare.find(')');
    EXPECT_EQ(first_problem(reader, bare.erase(open, close - open + 1)).code, "missing-unit");
    std::string wrong = reader.good;
    EXPECT_EQ(first_problem(reader, wrong.replace(open + 2, close - open - 2, "lb/ft²")).code,
              "unknown-unit");
  }
}

TEST(EveryTableReader, RefusesAMissingAndADoubleColumn) {
  for (const auto& reader : readers()) {
    const std::string header = reader.good.substr(0, reader.good.find('\n'));
    EXPECT_EQ(first_problem(reader, header + "," + header + "\n").code, "duplicate-column");
  }
  const auto problem = first_problem(readers()[0], "station (ft),elevation (ft)\n0,1\n");
  EXPECT_EQ(problem.code, "missing-column");
  EXPECT_EQ(problem.allowed, "roughness n");
}

TEST(StoneReaders, RefuseNegativeAndZeroSizes) {
  for (const auto& reader : readers()) {
    if (reader.name == "section") continue;
    const auto problem = first_problem(reader, with(reader, "-4"));
    EXPECT_TRUE(problem.code == "not-positive" || problem.code == "negative") << reader.name;
    EXPECT_EQ(problem.where, reader.place);
    const auto zero = first_problem(reader, with(reader, "0"));
    EXPECT_TRUE(zero.code == "not-positive" || zero.code == "mass-without-stones") << reader.name;
  }
}

}  // namespace
}  // namespace proofstone
