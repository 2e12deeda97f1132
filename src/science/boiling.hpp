// SPDX-License-Identifier: Apache-2.0
// At what temperature water, syrup and jam boil.
#pragma once

#include "science/mixture.hpp"

namespace maslin::science {

// Pressure of the standard atmosphere, ISO 2533; -500 to 9000 m. Weather moves it by some 3 %,
// which is 1 °C at the boil.
Computed<Kilopascal> pressure_at(Metre altitude);

// Saturation of water, IAPWS-IF97 region 4; 0.6113 to 22 064 kPa, 0.01 to 373.946 °C.
Computed<Celsius> boiling_point(Kilopascal pressure);
Computed<Kilopascal> vapour_pressure(Celsius temperature);
Computed<Celsius> boiling_point_at(Metre altitude);

// Water activity of a solution of sucrose, kg of sucrose per kg of solution 0 to 0.8, 0 to 120 °C.
// Starzak & Peacock, Activité de l'eau dans des solutions de saccharose (constants as published,
// form from memory).
Computed<WaterActivity> sucrose_activity(Share sucrose, Celsius temperature);

// How much hotter than water a solution of sugars boils: the temperature at which its vapour has
// the pressure of the air. `inverted` is the share of the sugars that is glucose and fructose in
// equal parts, by Norrish's constants for 25 °C; sucrose as above. `solids` 0 to 0.75, pressure 50
// to 110 kPa. Rises with solids and with what is inverted. Against Lowe and Cruess & McNair within
// 0.3 °C to 60 % and 0.6 °C at 65 to 68 %; the old 6.5 °C for 70 % is not borne out.
Computed<TemperatureDifference> boiling_rise(Share solids, Share inverted, Kilopascal pressure);

// How much of the sucrose boiling with fruit acids inverts before the set: none to three tenths
// (common practice, no source).
inline constexpr Range<Share> inverted_at_the_set{Share(0), Share(0.3)};

// The temperature at which jam at this height has reached these soluble solids, from nothing
// inverted to three tenths.
Computed<Range<Celsius>> setting_point(Metre altitude, Share soluble_solids);

}  // namespace maslin::science
