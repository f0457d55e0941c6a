#pragma once

#include <algorithm>
#include <iterator>

namespace proofstone {

/// Sorts and keeps the order of equals, by insertion: for short lists. (std::stable_sort of one of
/// the libraries we build with rests on what that library itself deprecates.)
template <class Iterator, class Before>
void sort_in_order(Iterator begin, Iterator end, Before before) {
  for (auto next = begin; next != end; ++next) {
    std::rotate(std::upper_bound(begin, next, *next, before), next, std::next(next));
  }
}

}  // namespace proofstone
