# SPDX-License-Identifier: Apache-2.0
"""Boiling point and latent heat of water by the iapws library, a line for each pressure in kPa."""
import sys

from iapws import IAPWS97

for argument in sys.argv[1:]:
    pressure = float(argument) / 1000
    water = IAPWS97(P=pressure, x=0)
    steam = IAPWS97(P=pressure, x=1)
    print(f"{argument} {water.T - 273.15:.6f} {steam.h - water.h:.3f}")
