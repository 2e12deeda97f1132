# SPDX-License-Identifier: Apache-2.0
"""Fresh herbs, nuts, and what thickens."""

from .form import (FDA_MEMORY, NO_PH, ingredient)

# ---- Fresh herbs --------------------------------------------------------------------------------

ingredient(
    "herbs", "fresh dill", "fresh herb",
    "dill, dill weed, dill sprig, dill sprigs, dill frond, dill fronds, aneth, frischer Dill, "
    "eneldo", "dill-fresh", piece="02045:sprigs", notes=["A piece is one sprig. " + NO_PH])

ingredient(
    "herbs", "coriander leaf", "fresh herb",
    "coriander leaves, fresh coriander, cilantro, feuille de coriandre, feuilles de coriandre, "
    "Koriandergrün", "coriander-leaf", notes=[NO_PH])

ingredient(
    "herbs", "fresh mint", "fresh herb",
    "mint, mint leaf, mint leaves, spearmint, menthe, Minze, hierbabuena", "mint",
    density="mint:tbsp", piece="02065:leaves", drop=[("Ciqual 2020 11027", "sugars_total_g")],
    notes=["A piece is one leaf. Ciqual counts all carbohydrate as sugars: left out. " + NO_PH])

ingredient(
    "herbs", "fresh parsley", "fresh herb",
    "parsley, parsley sprig, parsley sprigs, persil, Petersilie, perejil", "parsley",
    pH=[("5.7", "6", FDA_MEMORY)], piece="11297:sprigs", notes=["A piece is one sprig."])

ingredient(
    "herbs", "fresh basil", "fresh herb",
    "basil, basil leaf, basil leaves, basilic, Basilikum, albahaca", "basil",
    piece="02044:leaves", notes=["A piece is one leaf. " + NO_PH])

ingredient(
    "herbs", "vine leaf", "fresh herb",
    "vine leaves, grape leaf, grape leaves, feuille de vigne, feuilles de vigne, Weinblatt, "
    "Weinblätter", "grape-leaf", piece="11974:leaf", notes=[NO_PH])

ingredient(
    "herbs", "lemongrass", "fresh spice",
    "lemon grass, citronnelle, Zitronengras", "lemongrass", density="lemongrass:tbsp",
    parts=[("sugars", "0", "25.31", "g")], parts_from="sugars: none up to the carbohydrate of USDA "
    "SR28", notes=[NO_PH])

# ---- Nuts and oily seeds ------------------------------------------------------------------------

ingredient(
    "nuts", "almond", "nut",
    "almonds, flaked almond, flaked almonds, ground almonds, blanched almonds, amande, amandes, "
    "Mandel, Mandeln, almendra, almendras", "almond", allergen="almond",
    density="almond:cup whole kernels", notes=["Sweet almonds, blanched. Bitter ones hold cyanide "
    "and are not for eating (from memory). A spoon of it is whole kernels."])

ingredient(
    "nuts", "walnut", "nut",
    "walnuts, noix de Grenoble, Walnuss, Walnüsse, nuez", "walnut", allergen="walnut",
    density="walnut:cup, chopped",
    notes=["Ripe kernels; green ones for pickling are in no table. A spoon "
           "of it is chopped. " + NO_PH])

ingredient(
    "nuts", "hazelnut", "nut",
    "hazelnuts, filbert, filberts, cobnut, cobnuts, noisette, noisettes, Haselnuss, Haselnüsse, "
    "avellana", "hazelnut", allergen="hazelnut", density="hazelnut:cup, chopped",
    piece="12120:nuts", notes=["A spoon of it is chopped. " + NO_PH])

ingredient(
    "nuts", "cashew nut", "nut",
    "cashew nuts, cashew, cashews, noix de cajou, Cashewkern, Cashewkerne, anacardo", "cashew",
    allergen="cashew nut", notes=[NO_PH])

ingredient(
    "nuts", "pistachio nut", "nut",
    "pistachio nuts, pistachio, pistachios, pistache, pistaches, Pistazie, Pistazien, pistacho",
    "pistachio", allergen="pistachio nut", density="pistachio:cup", piece="12151:kernel",
    notes=[NO_PH])

ingredient(
    "nuts", "peanut", "nut",
    "peanuts, groundnut, groundnuts, cacahuète, cacahuètes, Erdnuss, Erdnüsse, cacahuete",
    "peanut", allergen="peanut", density="peanut:cup", notes=["Not by kin a nut. " + NO_PH])

ingredient(
    "nuts", "coconut", "nut",
    "coconuts, fresh coconut, noix de coco, Kokosnuss, Kokosnüsse, coco", "coconut-fresh",
    pH=[("5.5", "7.8", FDA_MEMORY)], piece="12104:medium",
    notes=["The white flesh. A piece is what one yields."])

ingredient(
    "nuts", "desiccated coconut", "nut",
    "dried coconut, shredded coconut, noix de coco râpée, Kokosraspel, coco rallado",
    "coconut-dried", density=("0.3", "0.4", "from memory"),
    notes=["Unsweetened. Some is sulphited: the label says. " + NO_PH], allergen="not stated")

ingredient(
    "nuts", "sesame seed", "seed spice",
    "sesame seeds, sesame, sésame, graine de sésame, graines de sésame, Sesam, sésamo",
    "sesame-seed", allergen="sesame", density="sesame-seed:tbsp|cup")

ingredient(
    "nuts", "sunflower seed", "nut",
    "sunflower seeds, sunflower kernel, sunflower kernels, graine de tournesol, graines de "
    "tournesol, Sonnenblumenkern, Sonnenblumenkerne, pipa de girasol", "sunflower-seed",
    density="sunflower-seed:cup", leave=["starch"],
    notes=["Hulled, though the edible share is that of seeds in their hulls. " + NO_PH])

# ---- Thickeners ---------------------------------------------------------------------------------

ingredient(
    "thickeners", "flour", "thickener",
    "plain flour, wheat flour, all-purpose flour, white flour, farine de blé, Weizenmehl, harina "
    "de trigo",
    "wheat-flour", allergen="wheat", density="wheat-flour:cup", starch_by_difference=True,
    notes=["Starch: the carbohydrate by difference, less fibre and sugars."])

ingredient(
    "thickeners", "cornflour", "thickener",
    "cornstarch, corn starch, maize starch, amidon de maïs, Maisstärke, maicena", "cornstarch",
    density="cornstarch:cup", starch_by_difference=True,
    notes=["Starch: the carbohydrate by difference, less fibre and sugars."])

ingredient(
    "thickeners", "pectin powder", "thickener",
    "dry pectin, powdered pectin, pectine en poudre, Pektinpulver, pectina", "pectin-dry",
    allergen="not stated", compound=True,
    notes=["The mixture sold for jam, without sugar. Kinds set in different ways: the packet "
           "says."])

ingredient(
    "thickeners", "liquid pectin", "thickener",
    "liquid pectins, pectine liquide, flüssiges Pektin, pectina líquida", "pectin-liquid",
    allergen="not stated", compound=True, density=("1", "1.03", "from memory"))

ingredient(
    "thickeners", "gelatine", "thickener",
    "gelatin, gelatines, gelatine powder, gélatine, gelatina", "gelatine", allergen="not stated",
    density=("0.45", "0.6", "from memory"),
    notes=["Of pig, ox or fish: the packet says. Boiling weakens it."])

ingredient(
    "thickeners", "agar", "thickener",
    "agar-agar, agar powder, kanten", "agar-dried", density=("0.4", "0.6", "from memory"),
    drop=[("CoFID 2015 13-146", "sugars_total_g")],
    notes=["CoFID counts its carbohydrate as none and is not followed there."])
