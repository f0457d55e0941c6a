// Distributions, intervals and tests against the GNU Scientific Library, at random. It is linked by
// the tests alone; nothing of it is part of the programs.
#include <gsl/gsl_cdf.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>

#include "engine/acceptance/layer_survey.h"
#include "engine/acceptance/percent_within_limits.h"
#include "engine/acceptance/single_plan.h"
#include "engine/evidence/confidence.h"

namespace proofstone {
namespace {

/// From `low` to below `end`, evenly: of its own accord the generator begins with the lowest ones,
/// and of all ranges at once.
int whole_between(int low, int end) {
  return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(low, end));
}

/// Between `low` and `high`, in a million steps.
double between(double low, double high) {
  return low + (high - low) * whole_between(0, 1000001) / 1e6;
}

/// To nine digits, about what continued fractions of a thousand stones keep, and where a chance is
/// nearly nothing to a trillionth of all.
void assert_same(double ours, double theirs) {
  RC_LOG() << "ours " << ours << ", GSL " << theirs;
  RC_ASSERT(std::abs(ours - theirs) <= 1e-12 + 1e-9 * std::abs(theirs));
}

TEST(AgainstGsl, BinomialSums) {
  EXPECT_TRUE(rc::check([] {
    const auto stones = static_cast<unsigned>(whole_between(1, 2000));
    const auto smaller = static_cast<unsigned>(whole_between(0, 2000)) % (stones + 1);
    const double percent = between(0.1, 99.9);
    assert_same(chance_of_at_most(smaller, stones, percent),
                gsl_cdf_binomial_P(smaller, percent / 100, stones));
    const double at_least =
        smaller == 0 ? 1 : gsl_cdf_binomial_Q(smaller - 1, percent / 100, stones);
    assert_same(chance_of_at_least(smaller, stones, percent), at_least);
    const SinglePlan plan{static_cast<int>(stones), static_cast<int>(smaller)};
    assert_same(chance_of_acceptance(plan, percent / 100),
                gsl_cdf_binomial_P(smaller, percent / 100, stones));
  }));
}

// A number of stones that is not whole: the beta form.
TEST(AgainstGsl, ExactLimitsOfAShare) {
  EXPECT_TRUE(rc::check([] {
    const double stones = between(3, 1500);
    const double percent = between(1, 99);
    const double confidence = between(0.5, 0.999);
    const double smaller = stones * percent / 100;
    // With less than one stone on a side the limit is so near the end that a double does not hold
    // enough digits of what is left.
    RC_PRE(smaller >= 1 && stones - smaller >= 1);
    const double tail = (1 - confidence) / 2;
    const auto limits = percent_smaller_interval(percent, stones, confidence);
    // Forwards: the library's own inverse does not converge everywhere.
    assert_same(gsl_cdf_beta_P(limits.low / 100, smaller, stones - smaller + 1), tail);
    assert_same(gsl_cdf_beta_Q(limits.high / 100, smaller + 1, stones - smaller), tail);
  }));
}

TEST(AgainstGsl, JeffreysLimitsOfAShare) {
  EXPECT_TRUE(rc::check([] {
    const double stones = between(3, 1500);
    const double percent = between(1, 99);
    const double confidence = between(0.5, 0.999);
    const double smaller = stones * percent / 100;
    const double tail = (1 - confidence) / 2;
    const auto limits = jeffreys_interval(percent, stones, confidence);
    assert_same(gsl_cdf_beta_P(limits.low / 100, smaller + 0.5, stones - smaller + 0.5), tail);
    assert_same(gsl_cdf_beta_Q(limits.high / 100, smaller + 0.5, stones - smaller + 0.5), tail);
  }));
}

TEST(AgainstGsl, StudentsQuantile) {
  EXPECT_TRUE(rc::check([] {
    const double tail = between(1e-4, 0.49);
    const double degrees = between(1, 200);
    assert_same(gsl_cdf_tdist_Q(student_quantile_above(tail, degrees), degrees), tail);
  }));
}

TEST(AgainstGsl, NormalAndChiSquare) {
  EXPECT_TRUE(rc::check([] {
    const double probability = between(1e-6, 1 - 1e-6);
    assert_same(normal_quantile(probability), gsl_cdf_ugaussian_Pinv(probability));
    const double degrees = between(0.5, 300);
    const double statistic = between(1e-3, 600);
    assert_same(chi_square_tail(statistic, degrees), gsl_cdf_chisq_Q(statistic, degrees));
  }));
}

// Student's distribution, by the number of points for which its interval is narrow enough.
TEST(AgainstGsl, PointsForAMean) {
  EXPECT_TRUE(rc::check([] {
    const double half_widths = between(0.2, 10);  // a deviation holds so many of them
    const double tail = between(0.005, 0.25);
    const auto points = points_for_mean(half_widths, 1, tail);
    const auto enough = [&](int n) {
      return gsl_cdf_tdist_Q(std::sqrt(n) / half_widths, n - 1) <= tail;
    };
    RC_ASSERT(points.has_value());
    RC_ASSERT(enough(*points));
    RC_ASSERT(*points == 2 || !enough(*points - 1));
  }));
}

// The share within limits is a symmetric beta distribution of the quality index.
TEST(AgainstGsl, PercentWithinLimits) {
  EXPECT_TRUE(rc::check([] {
    const auto values = static_cast<double>(whole_between(3, 200));
    const double index = between(-3, 4);
    const double x = 0.5 - index * std::sqrt(values) / (2 * (values - 1));
    const double outside = x <= 0   ? 0
                           : x >= 1 ? 1
                                    : gsl_cdf_beta_P(x, values / 2 - 1, values / 2 - 1);
    assert_same(share_within(index, values), 1 - outside);
  }));
}

}  // namespace
}  // namespace proofstone
