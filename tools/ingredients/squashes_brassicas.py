# SPDX-License-Identifier: Apache-2.0
"""Squashes, cucumbers and cabbages."""

from .form import (BITTER, FDA, FDA_MEMORY, IFCT, NO_PH, TRACE_ACIDS, ingredient)

# ---- Squashes -----------------------------------------------------------------------------------

ingredient(
    "squashes", "butternut squash", "winter squash",
    "butternut squashes, butternut, butternuts, courge butternut, Butternusskürbis",
    "squash-butternut",
    pH=[("5.18", "6.49", FDA_MEMORY + ", cooked acorn and Hubbard squash")],
    notes=["Seeds and rind are a third of some fruits: weigh. " + BITTER])

ingredient(
    "squashes", "pumpkin", "winter squash", "pumpkins, citrouille, potiron, Kürbis, calabaza",
    "pumpkin", pH=["Pumpkin", ("4.9", "5.5", FDA)], notes=[BITTER])

ingredient(
    "squashes", "marrow", "summer squash", "marrows, vegetable marrow, vegetable marrows", "marrow",
    edible=("65", "70", "peeled and seeded, from memory"), acids_from_table=False,
    notes=["SR28 11641 is summer squash of all kinds. " + NO_PH + " " + BITTER])

ingredient(
    "squashes", "courgette", "summer squash", "courgettes, zucchini, zucchinis, calabacín",
    "courgette", pH=[("5.69", "6.1", FDA_MEMORY + ", cooked")], piece="11477:medium",
    notes=[TRACE_ACIDS, BITTER])

ingredient(
    "squashes", "cucumber", "gourd family, jam fruit",
    "cucumbers, concombre, concombres, Gurke, Gurken, pepino",
    "cucumber, cucumber-peeled", pH=["Cucumbers"], acid=("organic acids", "0.19", "0.26"),
    sources=[IFCT], piece="11205:cucumber",
    notes=["Edible: the low end peeled, the high end with its peel. " + BITTER])

# Kinds of winter squash that no table at hand has: rows of the two that it has.
KIN = "Composition of butternut squash and pumpkin, as no table at hand has it."


def winter_squash(name, also, edible, pH, note=""):
    ingredient("squashes", name, "winter squash", also, "squash-butternut, pumpkin", pH=pH,
               edible=(*edible, "from memory"), notes=[(KIN + " " + note).strip(), BITTER])


winter_squash("acorn squash", "acorn squashes", ("70", "76"),
              [("5.18", "6.49", FDA_MEMORY + ", cooked")])
winter_squash("Hubbard squash", "Hubbard squashes", ("60", "70"),
              [("6", "6.2", FDA_MEMORY + ", cooked")])
winter_squash("kabocha", "kabochas, kabocha squash, kabocha squashes, buttercup squash, buttercup "
              "squashes", ("70", "80"), None, NO_PH)
winter_squash("red kuri squash", "red kuri squashes, onion squash, onion squashes, potimarron, "
              "potimarrons, Hokkaidokürbis, Hokkaidokürbisse", ("75", "90"), None,
              "Its skin cooks soft and may stay on. " + NO_PH)
winter_squash("blue squash", "blue squashes, grey squash, grey squashes, Crown Prince squash",
              ("65", "80"), None, NO_PH)

ingredient(
    "squashes", "spaghetti squash", "winter squash",
    "spaghetti squashes, vegetable spaghetti, courge spaghetti, Spaghettikürbis",
    parts=[("water", "91.6", "91.6", "g"), ("protein", "0.6", "0.7", "g"), ("fat", "0.5", "0.6",
           "g"), ("fibre", "1.5", "1.5", "g"), ("sugars", "2.7", "2.8", "g"), ("ash", "0.3", "0.4",
           "g"), ("sodium", "17", "17", "mg"), ("potassium", "108", "108", "mg")],
    parts_from="USDA SR28 NDB 11492, from memory", edible=("65", "75", "from memory"),
    notes=[NO_PH, BITTER])

ingredient(
    "squashes", "pattypan squash", "summer squash",
    "pattypan squashes, pattypan, pattypans, scallop squash, scallop squashes, "
    "pâtisson, pâtissons, Patissonkürbis", "marrow",
    pH=[("5.52", "5.8", FDA_MEMORY + ", white squash, cooked")], acids_from_table=False,
    edible=("95", "95", "USDA SR28 NDB 11641, refuse"),
    notes=["Composition of marrow and of summer squash of all kinds.", BITTER])

ingredient(
    "squashes", "yellow squash", "summer squash",
    "yellow squashes, yellow courgette, yellow courgettes, crookneck squash, crookneck squashes, "
    "straightneck squash, straightneck squashes", "marrow",
    pH=[("5.79", "6", FDA_MEMORY + ", cooked")], acids_from_table=False, piece="11641:medium",
    edible=("95", "95", "USDA SR28 NDB 11641, refuse"),
    notes=["Composition of marrow and of summer squash of all kinds.", BITTER])

ingredient(
    "squashes", "bottle gourd", "summer squash",
    "bottle gourds, calabash, calabashes, dudhi, doodhi, lauki, Flaschenkürbis",
    "bottle-gourd", piece="11218:gourd", notes=[NO_PH, BITTER])

ingredient(
    "squashes", "wax gourd", "summer squash",
    "wax gourds, ash gourd, ash gourds, winter melon, winter melons, petha, Wachskürbis",
    "ash-gourd", notes=["The sodium of the table (111 mg) and its potassium (6 mg) look exchanged. "
                        + NO_PH, BITTER])

ingredient(
    "squashes", "ridge gourd", "summer squash",
    "ridge gourds, sponge gourd, sponge gourds, luffa, luffas, turai, torai", "ridge-gourd",
    piece="11220:gourd", notes=[NO_PH, BITTER])

ingredient(
    "squashes", "bitter gourd", "fruit vegetable",
    "bitter gourds, bitter melon, bitter melons, karela, karelas, balsam pear, balsam pears",
    "bitter-gourd", piece="11024:balsam-pear",
    notes=["Bitter by kind; a squash or cucumber that is bitter goes on the heap. " + NO_PH])

ingredient(
    "squashes", "gherkin", "gourd family, jam fruit",
    "gherkins, pickling cucumber, pickling cucumbers, cornichon, cornichons, Einlegegurke, "
    "Einlegegurken, Essiggurke, Essiggurken, pepinillo, pepinillos", "gherkin", pH=["Cucumbers"],
    piece=("15", "60", "from memory"),
    edible=("97", "97", "as cucumber with its peel, USDA SR28 NDB 11205, refuse"),
    notes=["The raw fruit, not one from a jar. The pH is that of cucumbers. Cut off the blossom "
           "end.", BITTER])

# ---- Brassicas ----------------------------------------------------------------------------------

ingredient(
    "brassicas", "cabbage", "brassica",
    "cabbages, white cabbage, white cabbages, green cabbage, chou, Weißkohl, Kohl, repollo",
    "cabbage, cabbage-white", pH=["Cabbage"], acid=("citric acid", "0.18", "0.44"), sources=[IFCT],
    piece="11109:head, medium", notes=["Acids counted as citric, the main one."])

ingredient(
    "brassicas", "red cabbage", "brassica", "red cabbages, chou rouge, Rotkohl, lombarda",
    "cabbage-red", pH=[("5.6", "6", FDA_MEMORY)], acid=("citric acid", "0.25", "0.25"),
    piece="11112:head, medium", notes=["Ciqual's acids are counted as citric, as in white "
    "cabbage."])

ingredient(
    "brassicas", "cauliflower", "brassica",
    "cauliflowers, chou-fleur, Blumenkohl, coliflor", "cauliflower", pH=["Cauliflower"],
    piece="11135:head medium")

ingredient(
    "brassicas", "broccoli", "brassica", "calabrese, brocoli, Brokkoli, brécol", "broccoli",
    pH=[("6.3", "6.85", FDA)])

ingredient(
    "brassicas", "Brussels sprout", "brassica",
    "Brussels sprouts, sprouts, chou de Bruxelles, Rosenkohl", "brussels-sprouts",
    pH=[("6", "6.3", FDA)])

ingredient(
    "brassicas", "kohlrabi", "brassica", "kohlrabis, chou-rave", "kohlrabi", notes=[NO_PH])

ingredient(
    "brassicas", "Savoy cabbage", "brassica",
    "Savoy cabbages, Savoy, Savoys, Wirsing, chou de Milan, col de Milán", "cabbage",
    without=["Ciqual 2020 20116"], pH=[("6.3", "6.3", FDA_MEMORY)],
    notes=["No table at hand has it by itself: the rows are of green cabbage."])

ingredient(
    "brassicas", "Chinese cabbage", "brassica, leaf",
    "Chinese cabbages, napa cabbage, napa cabbages, Chinese leaf, Chinese leaves, wombok, chou "
    "chinois, Chinakohl, col china", "cabbage-napa", notes=[NO_PH])

ingredient(
    "brassicas", "pak choi", "brassica, leaf", "pak choy, pok choi, bok choy, bok choi",
    "cabbage-napa", without=["USDA SR28 NDB 11119", "CoFID 2015 13-187"],
    edible=("88", "88", "from memory"),
    notes=["The row is of this and of Chinese cabbage together.", NO_PH])

ingredient(
    "brassicas", "kale", "brassica, leaf",
    "kales, curly kale, borecole, cavolo nero, black kale, Grünkohl, col rizada",
    pH=[("6.36", "6.8", FDA_MEMORY + ", cooked")], edible=("60", "72", "from memory"),
    parts=[("water", "84", "84.1", "g"), ("protein", "4.2", "4.3", "g"), ("fat", "0.9", "1", "g"),
           ("fibre", "3.6", "3.6", "g"), ("sugars", "2.2", "2.3", "g"), ("ash", "2", "2", "g"),
           ("sodium", "38", "38", "mg"), ("potassium", "491", "491", "mg")],
    parts_from="USDA SR28 NDB 11233, from memory")
