# SPDX-License-Identifier: Apache-2.0
"""Acids, salts, liquids and what seasons."""

from .form import (FDA_MEMORY, IFCT, ingredient)

# ---- Acids --------------------------------------------------------------------------------------

BOTTLE = "Drawn for 5 g of acetic acid in 100 ml. What the bottle says counts, not this."

ingredient(
    "acids", "cider vinegar", "vinegar",
    "apple cider vinegar, vinaigre de cidre, Apfelessig, vinagre de manzana", "vinegar-cider",
    pH=[("2.4", "3.4", FDA_MEMORY)], allergen="not stated", acids_from_table=False,
    acid=("acetic acid", "4.92", "4.97"), density="vinegar-cider:tsp|tbsp|cup",
    sources=["acetic acid: 5 g per 100 ml and the density"],
    notes=[BOTTLE, "Sulphites: the label says."])

ingredient(
    "acids", "bottled lemon juice", "lemon juice, acid", "bottled lemon", "lemon-juice",
    pH=["Lemon juice"], allergen="not stated", acid=("citric acid", "3.49", "4.08"),
    density="lemon-juice:cup|fl oz",
    sources=[IFCT, "citric acid, high end: USDA SR28 carbohydrate less sugars and fibre"],
    notes=["Composition of raw juice. An old list has about 6 g of citric acid: left out. Less is "
           "the unfavourable figure here. Many bottles are sulphited: the label says."])

ingredient(
    "acids", "malt vinegar", "vinegar", "brown malt vinegar, vinaigre de malt, Malzessig", "",
    pH=[("2.4", "3.4", FDA_MEMORY)], allergen="barley",
    parts=[("water", "94", "95", "g"), ("sugars", "0", "0.5", "g"), ("acetic acid", "4.92",
    "4.98", "g")],
    parts_from="acetic acid: 5 g per 100 ml and the density; the rest: from memory",
    density=("1.005", "1.015", "from memory"), notes=[BOTTLE])

ingredient(
    "acids", "wine vinegar", "vinegar",
    "red wine vinegar, white wine vinegar, vinaigre de vin, Weinessig, vinagre de vino",
    "vinegar-red-wine", without=["Ciqual 2020 11220"],
    pH=[("2.4", "3.4", FDA_MEMORY)], allergen="not stated", acid=("acetic acid", "4.92", "4.97"),
    density="vinegar-red-wine:tsp|tbsp|cup",
    sources=["acetic acid: 5 g per 100 ml and the density"],
    notes=[BOTTLE, "Ciqual's row is a stronger vinegar (6.6 g) and is left out. Sulphites: the "
           "label says."])

ingredient(
    "acids", "distilled vinegar", "vinegar",
    "distilled vinegars, white vinegar, distilled malt vinegar, spirit vinegar, vinaigre blanc, "
    "Branntweinessig", "vinegar-distilled", without=["Ciqual 2020 11018"],
    pH=[("2.4", "3.4", FDA_MEMORY)], allergen="not stated", acid=("acetic acid", "4.92", "4.98"),
    density="vinegar-distilled:tsp|tbsp|cup",
    sources=["acetic acid: 5 g per 100 ml and the density"],
    notes=[BOTTLE, "Ciqual's row is a stronger vinegar (5.9 g) and is left out. Made from barley "
           "malt or from other spirit: the label says."])

ingredient(
    "acids", "balsamic vinegar", "vinegar",
    "balsamic vinegars, balsamic, vinaigre balsamique, Balsamessig, vinagre balsámico",
    "vinegar-balsamic", pH=[("2.4", "3.4", FDA_MEMORY + ", vinegar")], allergen="not stated",
    acids_from_table=False, acid=("acetic acid", "4.62", "4.66"),
    density="vinegar-balsamic:tsp|tbsp|cup",
    sources=["acetic acid: 5 g per 100 ml and the density"],
    notes=[BOTTLE, "Most bottles have 6 g in 100 ml. Ciqual's 5.2 g of acids are left out. "
           "Sulphites: the label says."])

ingredient(
    "acids", "rice vinegar", "vinegar",
    "rice vinegars, rice wine vinegar, vinaigre de riz, Reisessig, vinagre de arroz",
    pH=[("2.4", "3.4", FDA_MEMORY + ", vinegar")], allergen="not stated",
    parts=[("water", "93", "95", "g"), ("sugars", "0", "0.9", "g"), ("acetic acid", "4.92", "4.98",
           "g"), ("ash", "0", "0.3", "g")],
    parts_from="acetic acid: 5 g per 100 ml and the density; the rest: from memory",
    density=("1.005", "1.015", "from memory"),
    notes=[BOTTLE, "Many bottles have 4 to 4.5 g in 100 ml. Seasoned kinds hold sugar and salt "
           "that are not in these figures."])

ingredient(
    "acids", "sherry vinegar", "vinegar",
    "sherry vinegars, vinaigre de Xérès, Sherryessig, vinagre de Jerez",
    pH=[("2.4", "3.4", FDA_MEMORY + ", vinegar")], allergen="not stated",
    parts=[("water", "92", "94", "g"), ("sugars", "0", "0.9", "g"), ("acetic acid", "4.9", "4.98",
           "g"), ("ash", "0.1", "0.5", "g"), ("alcohol", "0", "1", "g")],
    parts_from="acetic acid: 5 g per 100 ml and the density; the rest: from memory",
    density=("1.005", "1.02", "from memory"),
    notes=[BOTTLE, "Most bottles have 7 g in 100 ml. Sulphites: the label says."])

ingredient(
    "acids", "vinegar essence", "acid, liquid",
    "vinegar essences, acetic essence, essence of vinegar, Essigessenz",
    allergen="none", pH=[("1.9", "2.3", "from memory")],
    parts=[("water", "75.6", "75.9", "g"), ("acetic acid", "24.1", "24.4", "g")],
    parts_from="acetic acid: 25 g per 100 ml and the density; water: the rest",
    density=("1.027", "1.035", "from memory"),
    notes=["Drawn for 25 g of acetic acid in 100 ml. What the bottle says counts, not this.",
           "It burns eyes, skin and throat. Always the essence into the water; 1 litre and 4 of "
           "water make a vinegar of 5 g. Never into the pan as it is."])

ingredient(
    "acids", "bottled lime juice", "citrus juice, acid", "bottled lime", "lime-juice",
    pH=["Lime juice"], allergen="not stated", acid=("citric acid", "4.55", "6.33"),
    density="lime-juice:cup",
    sources=["citric acid: Ciqual 2020 13067, lime flesh",
             "citric acid, high end: USDA SR28 carbohydrate less sugars and fibre"],
    notes=["Composition of raw juice. Less is the unfavourable figure here. Sweetened cordial is "
           "another thing. Many bottles are sulphited: the label says."])

ingredient(
    "acids", "citric acid", "acid",
    "citric acid powder, lemon salt, acide citrique, Zitronensäure, Citronensäure, ácido cítrico",
    pH=[("2.1", "2.3", "1 g in 100 ml of water, computed from its dissociation")],
    parts=[("water", "0", "8.6", "g"), ("citric acid", "91.4", "100", "g")],
    parts_from="from none of water to the one molecule of the monohydrate: molar masses",
    density=("0.75", "1", "from memory"),
    notes=["Dry crystals, with or without a molecule of water: the packet says."])

# ---- Salt and water -----------------------------------------------------------------------------

ingredient(
    "seasonings", "salt", "any salt",
    "table salt, fine salt, cooking salt, pickling salt, canning salt, sel, Salz, sal", "salt",
    leave=["ash", "potassium", "sodium"], parts=[("salt", "99.8", "99.97", "g")],
    density="salt:tsp|tbsp|cup",
    notes=["Fine table salt. Flake and coarse salt weigh down to half as much a spoon: weigh them. "
           "Some is iodised or holds what keeps it loose, which clouds a brine."])

ingredient(
    "seasonings", "water", "liquid", "tap water, eau, Wasser, agua", "water",
    leave=["ash"], parts=[("water", "99.9", "100", "g")],
    density=("0.997", "1.001", "USDA SR28 NDB 14411, weight of a US fl oz and a litre"),
    notes=["Tap water; its salts differ from place to place."])

ingredient(
    "seasonings", "sea salt", "any salt",
    "sea salts, coarse salt, flake salt, flaky salt, kosher salt, rock salt, sel marin, gros sel, "
    "Meersalz, grobes Salz, sal marina, sal gorda", "salt-sea",
    leave=["ash", "potassium", "sodium"], parts=[("salt", "94.6", "96.2", "g")],
    parts_from="salt: sodium of Ciqual 2020 11082 as sodium chloride, up to all but the water",
    density=("0.6", "1.25", "from memory"),
    notes=["A spoon of flakes weighs half of one of grains: weigh it."])

ingredient(
    "seasonings", "grey sea salt", "any salt",
    "grey sea salts, grey salt, sel gris, graues Meersalz, sal gris", "salt-sea-grey",
    leave=["ash", "potassium", "sodium"], parts=[("salt", "81.8", "86.2", "g")],
    parts_from="salt: the sodium of Ciqual 2020 11083 as sodium chloride, up to its ash",
    density=("0.8", "1.2", "from memory"),
    notes=["Damp and unwashed: about a seventh less salt by weight than table salt."],
    rest="other salts, and water bound in them")

ingredient(
    "seasonings", "soy sauce", "seasoning, liquid",
    "soy sauces, soya sauce, shoyu, sauce soja, Sojasauce, Sojasoße, salsa de soja", "soy-sauce",
    pH=[("4.4", "5.4", FDA_MEMORY)], allergen="soya, wheat", compound=True,
    density="soy-sauce:tsp|tbsp|cup",
    salted=True, leave=["starch"],
    notes=["The kind of soya and wheat."])

ingredient(
    "seasonings", "prepared mustard", "seasoning",
    "made mustard, Dijon mustard, yellow mustard sauce, moutarde, Senf, mostaza",
    "mustard-prepared",
    pH=[("3.55", "6", FDA_MEMORY)], allergen="mustard", compound=True, density="mustard-prepared:(tsp|cup).*",
    salted=True, acids_from_table=False, acid=("acetic acid", "0", "1.82"),
    parts_from="acetic acid: from none up to Ciqual's acids, counted as vinegar",
    notes=["Mild and sharp kinds together, so the ranges are wide. Its vinegar flavours and is not "
           "counted on: no bottle states it. Sulphites: the label says."])

ingredient(
    "seasonings", "red wine", "liquid",
    "red wines, vin rouge, Rotwein, vino tinto", "wine-red", allergen="not stated",
    density=("0.99", "1", "USDA SR28 NDB 14096, weight of a US fl oz"),
    notes=["Sulphites: almost always. No pH is at hand."])

ingredient(
    "seasonings", "beer", "liquid", "beers, lager, bière, Bier, cerveza", "beer",
    allergen="barley", density=("1", "1.01", "USDA SR28 NDB 14003, weight of a US fl oz"),
    notes=["Some are brewed with wheat too."], rest="dextrins")

ingredient(
    "seasonings", "spirit", "liquid",
    "spirits, brandy, rum, whisky, whiskey, gin, vodka, eau-de-vie", "spirit-80-proof",
    allergen="not stated", density=("0.935", "0.945", "USDA SR28 NDB 14037, weight of a US fl oz"),
    notes=["Of 40 % by volume. Keep it from the flame: its vapour burns."])

ingredient(
    "seasonings", "vanilla extract", "seasoning",
    "vanilla extracts, extrait de vanille, Vanilleextrakt, extracto de vainilla", "vanilla-extract",
    density="vanilla-extract:tsp|tbsp|cup")

ingredient(
    "seasonings", "olive oil", "oil, liquid",
    "olive oils, huile d'olive, Olivenöl, aceite de oliva", "olive-oil",
    density="olive-oil:tsp|cup")

ingredient(
    "seasonings", "sesame oil", "oil, liquid",
    "sesame oils, huile de sésame, Sesamöl, aceite de sésamo", "sesame-oil",
    allergen="sesame", density="sesame-oil:tsp|cup")

ingredient(
    "seasonings", "mustard oil", "oil, liquid",
    "mustard oils, huile de moutarde, Senföl, aceite de mostaza", "mustard-oil",
    allergen="mustard", density="mustard-oil:tsp|cup")
