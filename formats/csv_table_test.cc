#include "formats/csv_table.h"

#include <gtest/gtest.h>

#include <string>

#include "formats/file_text.h"

namespace proofstone {
namespace {

using Cells = std::vector<std::string>;

CsvTable table_of(std::string_view text) {
  const auto table = read_csv_table(text, "t.csv");
  if (!table) {
    ADD_FAILURE() << table.problems().front().sentence();
    return {};
  }
  return *table;
}

Problem problem_of(std::string_view text) {
  const auto table = read_csv_table(text, "t.csv");
  if (table) {
    ADD_FAILURE() << "was read: " << text;
    return {};
  }
  EXPECT_EQ(table.problems().front().file, "t.csv");
  return table.problems().front();
}

TEST(CsvTable, ReadsHeaderRowsAndUnits) {
  const auto table = table_of("Station (ft), Elevation  above datum (US survey ft),n\n0,1.5,.03\n");
  ASSERT_EQ(table.columns.size(), 3U);
  EXPECT_EQ(table.columns[0].name, "station");
  EXPECT_EQ(table.columns[0].unit_text, "ft");
  EXPECT_EQ(table.columns[1].name, "elevation above datum");
  EXPECT_EQ(table.columns[1].unit_text, "US survey ft");
  EXPECT_EQ(table.columns[2].name, "n");
  EXPECT_EQ(table.columns[2].unit_text, "");
  ASSERT_EQ(table.rows.size(), 1U);
  EXPECT_EQ(table.rows[0].cells, (Cells{"0", "1.5", ".03"}));
}

TEST(CsvTable, TakesTheSeparatorOfTheHeader) {
  EXPECT_EQ(table_of("a;b\n1;2\n").separator, ';');
  EXPECT_EQ(table_of("a;b\n1;2\n").rows[0].cells, (Cells{"1", "2"}));
  EXPECT_EQ(table_of("a\tb\n1\t2\n").rows[0].cells, (Cells{"1", "2"}));
  EXPECT_EQ(table_of("a\tb\n\t2\n").rows[0].cells, (Cells{"", "2"}));
  EXPECT_EQ(table_of("a\n1\n").rows[0].cells, (Cells{"1"}));
  EXPECT_EQ(table_of("\"a;x\",b\n1,2\n").columns[0].name, "a;x");
}

TEST(CsvTable, CountsLinesWithEveryLineEnd) {
  for (const std::string end : {"\n", "\r\n", "\r"}) {
    std::string text;
    for (const char* line : {"# surveyed by tape", "", "a,b", "1,2", "   ", "3,4"})
      text += line + end;
    const auto table = table_of(text);
    EXPECT_EQ(table.header_line, 3);
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(table.rows[0].line, 4);
    EXPECT_EQ(table.rows[1].line, 6);
  }
}

TEST(CsvTable, LastLineNeedsNoEnd) { EXPECT_EQ(table_of("a,b\n1,2").rows.size(), 1U); }

TEST(CsvTable, QuotedCellsHoldSeparatorsQuotesAndLines) {
  const auto table = table_of("a,b\n \"x, \"\"y\"\"\" ,\"two\r\nlines\"\n1,2\n");
  ASSERT_EQ(table.rows.size(), 2U);
  EXPECT_EQ(table.rows[0].cells, (Cells{"x, \"y\"", "two\r\nlines"}));
  EXPECT_EQ(table.rows[1].line, 4);
}

TEST(CsvTable, DropsSpacesAndByteOrderMark) {
  const auto table = table_of("\xEF\xBB\xBF a , b \n 1 ,\t2 \t\n");
  EXPECT_EQ(table.columns[0].name, "a");
  EXPECT_EQ(table.rows[0].cells, (Cells{"1", "2"}));
}

TEST(CsvTable, SpacesAroundTabsAreNotCells) {
  EXPECT_EQ(table_of("a\tb\n 1 \t 2 \n").rows[0].cells, (Cells{"1", "2"}));
}

TEST(CsvTable, RefusesTwoKindsOfSeparator) {
  EXPECT_EQ(problem_of("a,b;c\n1,2\n").code, "ambiguous-separator");
  EXPECT_EQ(problem_of("a\tb;c\n1\t2\n").code, "ambiguous-separator");
}

TEST(CsvTable, NamesADecimalCommaThatMakesTwoCells) {
  const auto problem = problem_of("station,elevation\n0,101,5\n");
  EXPECT_EQ(problem.code, "decimal-comma");
  EXPECT_EQ(problem.where, "row 2, station");
  EXPECT_EQ(problem.allowed, "write 12.5, not 12,5");
}

TEST(CsvTable, RefusesRowsOfAnotherLength) {
  EXPECT_EQ(problem_of("a,b\n1\n").code, "cell-count");
  EXPECT_EQ(problem_of("a,b\n1,x,y\n").code, "cell-count");
  EXPECT_EQ(problem_of("a,b\n1;2\n").code, "cell-count");
  EXPECT_EQ(problem_of("a;b\n1;2;3\n").code, "cell-count");
  EXPECT_EQ(problem_of("a,b\n1,2\n# later\n").code, "comment-below-header");
}

TEST(CsvTable, RefusesBadHeadings) {
  EXPECT_EQ(problem_of("a,A\n1,2\n").code, "duplicate-column");
  EXPECT_EQ(problem_of("a (ft),a (m)\n1,2\n").code, "duplicate-column");
  EXPECT_EQ(problem_of("a,\n1,2\n").code, "empty-heading");
  EXPECT_EQ(problem_of(std::string(101, 'a') + "\n1\n").code, "heading-too-long");
  EXPECT_EQ(problem_of(std::string(200, ',') + "\n1\n").code, "too-many-columns");
}

TEST(CsvTable, RefusesBadQuotes) {
  const auto open = problem_of("a,b\n1,2\n\"3,4\n5,6\n");
  EXPECT_EQ(open.code, "open-quote");
  EXPECT_EQ(open.where, "row 3");
  EXPECT_EQ(problem_of("a,b\n12\",2\n").code, "stray-quote");
  EXPECT_EQ(problem_of("a,b\n\"1\"2,3\n").code, "stray-quote");
  EXPECT_EQ(problem_of("\"a,b\n").code, "open-quote");
}

TEST(CsvTable, RefusesTablesWithoutContent) {
  EXPECT_EQ(problem_of("").code, "empty-file");
  EXPECT_EQ(problem_of("\xEF\xBB\xBF").code, "no-header");
  EXPECT_EQ(problem_of(" \n\r\n# only a remark\n").code, "no-header");
  EXPECT_EQ(problem_of("a,b\n\n").code, "no-rows");
}

TEST(CsvTable, RefusesWhatIsNotText) {
  EXPECT_EQ(problem_of("\xFF\xFE"
                       "a")
                .code,
            "wrong-encoding");
  EXPECT_EQ(problem_of("\xFE\xFF"
                       "a")
                .code,
            "wrong-encoding");
  EXPECT_EQ(problem_of(std::string("a\0,\0b\0\n\0", 8)).code, "wrong-encoding");
  EXPECT_EQ(problem_of(std::string("\0a\0,\0b\0\n", 8)).code, "wrong-encoding");
  EXPECT_EQ(problem_of(std::string("a,b\n1,\0\n", 8)).code, "not-text");
  EXPECT_EQ(problem_of("PK\x03\x04 sheet").code, "not-text");
  const auto control = problem_of("a,b\r\n1,\x01\r\n");
  EXPECT_EQ(control.code, "not-text");
  EXPECT_EQ(control.where, "row 2");
  const auto latin = problem_of("a,b\n1,2\nM\xFCller,3\n");
  EXPECT_EQ(latin.code, "wrong-encoding");
  EXPECT_EQ(latin.where, "row 3");
}

TEST(CsvTable, RefusesTooMuch) {
  std::string rows = "a\n";
  for (int i = 0; i <= most_table_rows; ++i) rows += "1\n";
  EXPECT_EQ(problem_of(rows).code, "too-many-rows");
  EXPECT_EQ(problem_of(rows).where, "row 100002");
  rows.resize(rows.size() - 2);
  EXPECT_EQ(table_of(rows).rows.size(), static_cast<std::size_t>(most_table_rows));

  const std::string huge(largest_table_file + 1, 'a');
  EXPECT_EQ(problem_of(huge).code, "too-large");
  const auto gigabyte = table_file_too_large("t.csv", 1U << 30U);
  EXPECT_EQ(gigabyte.what, "The file holds 1024.0 MB, too much for a table.");
}

TEST(CsvTable, TellsAtMostTwentyProblemsAndHowManyMore) {
  std::string text = "a,b\n";
  for (int i = 0; i < 30; ++i) text += "1\n";
  const auto table = read_csv_table(text, "t.csv");
  ASSERT_FALSE(table);
  ASSERT_EQ(table.problems().size(), 21U);
  EXPECT_EQ(table.problems().back().what, "10 more problems of this file are left out.");
}

}  // namespace
}  // namespace proofstone
