#include "engine/finding/json_pointer.h"

#include <gtest/gtest.h>

namespace proofstone {
namespace {

TEST(JsonPointer, EscapesWhatWouldEndAStep) {
  EXPECT_EQ(pointer_step("velocity"), "velocity");
  EXPECT_EQ(pointer_step("a/b~c"), "a~1b~0c");
  EXPECT_EQ(pointer_step(""), "");
}

}  // namespace
}  // namespace proofstone
