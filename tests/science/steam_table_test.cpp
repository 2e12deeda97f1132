// SPDX-License-Identifier: Apache-2.0
// Boiling water against the library iapws for Python (Debian's python3-iapws), which has the
// equations of IAPWS-IF97 by other hands.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <sstream>

#include "science/boiling.hpp"
#include "science/evaporation.hpp"
#include "support/planning.hpp"

namespace maslin::test {
namespace {

using namespace science;

TEST(SteamTable, BoilingPointsAndLatentHeatsAgree) {
  std::string arguments = MASLIN_SOURCE_DIR "/tests/science/steam_table.py";
  for (int height = -250; height <= 4000; height += 250) {
    arguments += fmt::format(" {:.9f}", pressure_at(Metre(height))->in_unit());
  }
  const std::string output = output_of("/usr/bin/python3", arguments);
  std::istringstream lines(output);
  int read = 0;
  for (double pressure = 0, degrees = 0, heat = 0; lines >> pressure >> degrees >> heat; ++read) {
    const auto boils = boiling_point(Kilopascal(pressure));
    ASSERT_TRUE(boils.ok());
    EXPECT_NEAR(boils->in_unit(), degrees, 1e-5) << pressure << " kPa";
    EXPECT_NEAR(vapour_pressure(Celsius(degrees))->in_unit(), pressure, 1e-5) << degrees << " °C";
    // Linear between three points.
    EXPECT_NEAR(latent_heat(Celsius(degrees))->in_unit(), heat, 0.5) << degrees << " °C";
  }
  EXPECT_EQ(read, 18) << output;
}

}  // namespace
}  // namespace maslin::test
