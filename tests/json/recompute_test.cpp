// SPDX-License-Identifier: Apache-2.0
// A second way from the text to the linear programme, in another language, finds the same numbers.
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>

#include "json/run_program.hpp"

namespace maslin::json_test {
namespace {

TEST(Recompute, EveryRowFromTheTextsAgain) {
  const Folder folder;
  const std::string python = "/usr/bin/python3";
  ASSERT_EQ(folder.run(python, {"--version"}).exit, 0)
      << python << " is missing (Debian: python3): the rows were not worked out again";
  const std::string source = MASLIN_SOURCE_DIR;
  const char* full = std::getenv("MASLIN_FULL");
  const std::string count = full != nullptr ? "3000" : "200";
  const Ran ran = folder.run(python, {"-B", source + "/tests/json/recompute.py", MASLIN_PROGRAM,
                                      source + "/stdlib", folder.path().string(), count});
  EXPECT_EQ(ran.exit, 0) << ran.out << ran.err;
  RecordProperty("compared", ran.out);
}

}  // namespace
}  // namespace maslin::json_test
