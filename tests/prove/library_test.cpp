// SPDX-License-Identifier: Apache-2.0
// What the proof finds of every framework of the library. One that does not hold is listed here
// with its reason.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <map>
#include <string>

#include "language/taste.hpp"
#include "prove/admissible.hpp"
#include "prove/proof.hpp"
#include "report/proof.hpp"

namespace maslin::test {
namespace {

// Name and why it does not hold.
const std::map<std::string, std::string>& exceptions() {
  static const std::map<std::string, std::string> all = {};
  return all;
}

TEST(LibraryProof, EveryFrameworkHoldsOrIsListedWithItsReason) {
  const World world;
  std::size_t listed = 0;
  for (std::size_t i = 0; i < world.program().frameworks.size(); ++i) {
    const language::Framework& framework = world.program().frameworks[i];
    const prove::Proof proof = prove::prove(world.program(), framework);
    fmt::print("{}", report::proof_text(world.sources(), world.program(), framework,
                                        {language::FrameworkId(i), proof}));
    for (const language::Variant& variant : framework.variants) {
      const auto tasted = with_taste(framework, variant);
      EXPECT_EQ(prove::prove(world.program(), tasted).verdict, proof.verdict)
          << framework.name << ", made to the taste " << variant.name;
    }
    const auto exception = exceptions().find(framework.name);
    const bool is_listed = exception != exceptions().end();
    listed += is_listed ? 1 : 0;
    if (is_listed) {
      EXPECT_NE(proof.verdict, prove::Verdict::holds)
          << framework.name << " holds: list it no more";
      fmt::print("  {}\n", exception->second);
    } else {
      EXPECT_EQ(proof.verdict, prove::Verdict::holds) << framework.name << ": " << proof.reason;
    }
  }
  EXPECT_EQ(listed, exceptions().size()) << "a framework is listed that is not there";
}

}  // namespace
}  // namespace maslin::test
