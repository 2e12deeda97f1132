# SPDX-License-Identifier: Apache-2.0
"""What the tables of data/ do not say about an ingredient: its names, its classes, the rows it is
drawn from, its pH, allergens and hazards. Read by tools/draw_ingredients.py. The entries stand in
tools/ingredients/, one file for things that are alike; the order in a file is that of the library.

  keys      keys of data/composition.csv; all their rows are used
  without   rows left out whole, and `drop` (row, column) single values; the notes say why
  keep      components where no value is a stray, because varieties really differ that much
  leave     components not to list
  acid      (component, low, high): acids by kind, which the tables do not give
  acids_from_table  list Ciqual's total as "organic acids"; its zeros are never taken
  parts     (component, low, high, unit) set by hand; parts_from says from where
  pH        items of data/ph_of_foods.csv, or (low, high, origin)
  density   "key:pattern of measures" in data/household_weights.csv, or (low, high, origin)
  piece     "NDB number:measure" there, or (low, high, origin)
  salted    the sodium is that of added salt: list it as salt, and as ash what is left
  rest      what the grams are that no part names, where the usual words would be wrong
  raw       (hazard and what to do, why), for example ("unsafe, boil at least 10 min", "…")
  edible    (low, high, origin) where the refuse of SR28 does not serve
"""

from ingredients import (  # noqa: F401  (reading them fills ENTRIES)
    onions_roots, squashes_brassicas, vegetables, orchard, berries, southern, dried_sweet,
    sour_salt, spices, herbs_nuts)
from ingredients.form import ENTRIES, PH_SOURCES, TOPICS  # noqa: F401
