#include "engine/evidence/same_rock.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/evidence/size_text.h"
#include "engine/evidence/stones_needed.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

constexpr double least_expected = 5;

Source chi_square_source() {
  return {"NIST/SEMATECH e-Handbook of Statistical Methods", "§7.4.5, χ² test of a table of counts",
          SourceStanding::published};
}

std::vector<double> column_sums(const std::vector<std::vector<double>>& rows) {
  std::vector<double> sums(rows.front().size(), 0);
  for (const auto& row : rows) {
    for (std::size_t j = 0; j < row.size(); ++j) sums[j] += row[j];
  }
  return sums;
}

double sum_of(const std::vector<double>& values) {
  double sum = 0;
  for (const double value : values) sum += value;
  return sum;
}

Problems problems_of_rows(const std::vector<std::vector<double>>& rows) {
  Problems problems;
  if (rows.size() < 2) {
    problems.push_back(
        {"too-few-rows", "A comparison needs two rows of counts.", "", "", "two rows or more"});
  }
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto where = fmt::format("row {}", i + 1);
    if (rows[i].size() != rows.front().size()) {
      problems.push_back({"rows-differ", "It has another number of classes than row 1.", "", where,
                          fmt::format("{} classes", rows.front().size())});
    }
    for (std::size_t j = 0; j < rows[i].size(); ++j) {
      if (std::isfinite(rows[i][j]) && rows[i][j] >= 0) continue;
      problems.push_back({"negative-count", "A count is not a number of 0 or more.", "",
                          fmt::format("{}, class {}", where, j + 1), "0 or more"});
    }
  }
  if (!problems.empty()) return problems;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (!(sum_of(rows[i]) > 0)) {
      problems.push_back({"empty-row", "It has no stones.", "", fmt::format("row {}", i + 1),
                          "at least one stone"});
    }
  }
  return problems;
}

/// Joins neighbouring classes, from the small end, until each column expects at least five stones
/// in every row. `edges` lie between the classes.
void join_small_classes(std::vector<std::vector<double>>& rows, std::vector<Length>& edges) {
  double total = 0;
  double fewest = sum_of(rows.front());
  for (const auto& row : rows) {
    const double row_sum = sum_of(row);
    total += row_sum;
    fewest = std::min(fewest, row_sum);
  }
  const auto join_with_next = [&](std::size_t j) {
    for (auto& row : rows) {
      row[j] += row[j + 1];
      row.erase(row.begin() + static_cast<std::ptrdiff_t>(j) + 1);
    }
    edges.erase(edges.begin() + static_cast<std::ptrdiff_t>(j));
  };
  std::size_t j = 0;
  while (j < rows.front().size() && rows.front().size() > 1) {
    if (column_sums(rows)[j] * fewest / total >= least_expected) {
      ++j;
    } else if (j + 1 < rows.front().size()) {
      join_with_next(j);
    } else {
      join_with_next(--j);
    }
  }
}

/// The sizes at which 15, 30, 50, 70 and 85 % of all looks together are smaller.
std::vector<Length> class_edges(const Gradation& together) {
  std::vector<Length> edges;
  for (const double percent : {15.0, 30.0, 50.0, 70.0, 85.0}) {
    const auto size = together.size_at(percent);
    if (size && (edges.empty() || *size > edges.back())) edges.push_back(*size);
  }
  return edges;
}

/// Counts as of so many effective stones as stand behind the shares at the edges on the mean (of
/// their variances, as Rao & Scott 1981 divide by the mean design effect [memory]), no more than
/// behind the whole curve: where few heavy stones tell the coarse end, looks at one rock would else
/// be found different too often.
std::vector<double> stones_between(const MeasuredGradation& look,
                                   const std::vector<Length>& edges) {
  double of_one = 0;
  for (const Length edge : edges) {
    of_one += 1 / std::min(look.effective_stones, look.effective_stones_at(edge));
  }
  const double stones = static_cast<double>(edges.size()) / of_one;
  std::vector<double> counts;
  double below = 0;
  for (const Length edge : edges) {
    const double percent = look.curve.percent_smaller(edge);
    counts.push_back(stones * (percent - below) / 100);
    below = percent;
  }
  counts.push_back(stones * (100 - below) / 100);
  return counts;
}

struct TableInputs {
  std::vector<Dimensionless> counts;
  Dimensionless rows;
};

struct TableResult {
  Dimensionless chi_square;
  Dimensionless degrees_of_freedom;
  Dimensionless chance;
};

Expected<TableResult> test_table(const TableInputs& in, Steps& steps) {
  const auto rows = static_cast<std::size_t>(in.rows.number());
  if (static_cast<double>(rows) < in.rows.number() || in.counts.size() % rows != 0) {
    return Problem{
        "rows-differ",
        fmt::format("{} counts do not fill {:g} rows.", in.counts.size(), in.rows.number()), "",
        "/counts", "the same number of classes in every row"};
  }
  const std::size_t classes = in.counts.size() / rows;
  std::vector<std::vector<double>> table(rows);
  for (std::size_t i = 0; i < in.counts.size(); ++i) {
    table[i / classes].push_back(in.counts[i].number());
  }
  auto test = chi_square_of_rows(table);
  if (!test) return test.problems();
  steps.computed("χ²", "distance of the rows from common proportions",
                 "Σ (O − E)²/E, E = row sum · column sum / total", measure(test->statistic),
                 chi_square_source().sentence());
  steps.computed("df", "degrees of freedom", "(rows − 1)·(classes − 1)",
                 measure(test->degrees_of_freedom));
  steps.computed("p", "chance of such a distance when all rows share their proportions",
                 "P(χ² of df > χ²)", measure(test->chance));
  return TableResult{Dimensionless::number(test->statistic),
                     Dimensionless::number(test->degrees_of_freedom),
                     Dimensionless::number(test->chance)};
}

TypedMethod<TableInputs, TableResult> build_same_rock() {
  MethodDescription about;
  about.id = "same-rock";
  about.title = "χ² comparison of counts";
  about.purpose =
      "Whether two or more counts of stones in the same size classes can come from one and the "
      "same "
      "rock. Asked before the looks at a lot are put together.";
  about.group = MethodGroup::evidence;
  about.sources = {chi_square_source()};
  about.cautions = {
      "Not to differ is no proof of sameness: with few stones only large differences show.",
      "The order of the sizes is not used; a steady shift of all sizes is seen less well."};
  TypedMethod<TableInputs, TableResult> method(std::move(about), &test_table);
  method.required_list({"counts", "O", "stones in each class, row after row"}, &TableInputs::counts,
                       unit::number, AllowedRange::between(0, 1e6));
  method.required({"rows", "r", "number of rows, one for each look"}, &TableInputs::rows,
                  unit::number, AllowedRange::between(2, 1000));
  method.output({"chi_square", "χ²", "distance of the rows from common proportions"},
                &TableResult::chi_square, unit::number);
  method.output({"degrees_of_freedom", "df", "degrees of freedom"},
                &TableResult::degrees_of_freedom, unit::number);
  method.output({"chance", "p", "chance of such a distance when all rows are the same rock"},
                &TableResult::chance, unit::number);
  return method;
}

}  // namespace

Expected<ChiSquare> chi_square_of_rows(const std::vector<std::vector<double>>& rows) {
  if (auto problems = problems_of_rows(rows); !problems.empty()) return problems;
  const auto columns = column_sums(rows);
  const double total = sum_of(columns);
  ChiSquare test;
  double filled = 0;
  for (std::size_t j = 0; j < columns.size(); ++j) {
    if (!(columns[j] > 0)) continue;
    filled += 1;
    for (const auto& row : rows) {
      const double expected = sum_of(row) * columns[j] / total;
      test.statistic += (row[j] - expected) * (row[j] - expected) / expected;
    }
  }
  if (filled < 2) {
    return Problem{"too-few-classes", "Only one class holds stones.", "", "",
                   "at least two classes with stones"};
  }
  test.degrees_of_freedom = (static_cast<double>(rows.size()) - 1) * (filled - 1);
  test.chance = chi_square_tail(test.statistic, test.degrees_of_freedom);
  return test;
}

Expected<SameRock> same_rock(const std::vector<MeasuredGradation>& looks, double confidence) {
  if (auto problem = problem_of_confidence(confidence)) return *problem;
  if (looks.size() < 2) {
    return Problem{"too-few-looks", "A comparison needs two looks.", "", "", "two looks or more"};
  }
  const auto together = pooled(looks);
  if (!together) return together.problems();

  SameRock same;
  same.class_edges = class_edges(together->curve);
  std::vector<std::vector<double>> rows;
  rows.reserve(looks.size());
  for (const auto& look : looks) rows.push_back(stones_between(look, same.class_edges));
  join_small_classes(rows, same.class_edges);
  if (same.class_edges.empty()) {
    return Problem{"too-few-stones", "The looks have too few stones to be compared.", "", "",
                   "at least five expected stones in each of two classes of every look"};
  }
  auto test = chi_square_of_rows(rows);
  if (!test) return test.problems();
  same.test = *test;
  same.differ = test->chance <= 1 - confidence;

  for (const Length edge : same.class_edges) {
    same.steps.given_rock("D", "size between two compared classes", edge);
  }
  for (std::size_t i = 0; i < looks.size(); ++i) {
    same.steps.given(fmt::format("ne{}", i + 1), fmt::format("effective stones of look {}", i + 1),
                     measure(looks[i].effective_stones));
  }
  same.steps.computed("χ²", "distance of the looks from common shares",
                      "Σ (O − E)²/E, O = ne · share in the class", measure(test->statistic),
                      chi_square_source().sentence());
  same.steps.computed("df", "degrees of freedom", "(looks − 1)·(classes − 1)",
                      measure(test->degrees_of_freedom));
  same.steps.computed("p", "chance of such a distance when all looks are at the same rock",
                      "P(χ² of df > χ²)", measure(test->chance));
  return same;
}

const Method& same_rock_method() {
  static const auto method = build_same_rock();
  return method;
}

}  // namespace proofstone
