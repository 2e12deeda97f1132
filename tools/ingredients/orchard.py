# SPDX-License-Identifier: Apache-2.0
"""Pome fruit and stone fruit."""

from .form import (AHEA, BLYTH, FDA, FDA_MEMORY, IFCT, KERNELS, NO_PH, TRACE_ACIDS, ingredient)

# ---- Orchard fruit ------------------------------------------------------------------------------

ingredient(
    "orchard_fruit", "apple", "pome fruit, pectin-middling fruit",
    "apples, eating apple, eating apples, dessert apple, pomme, pommes, Apfel, Äpfel, manzana",
    "apple, apple-peeled", pH=["Apple, eating"],
    acid=("malic acid", "0.42", "0.84"), piece="09003:medium", sources=[IFCT, BLYTH],
    notes=["Edible: the low end peeled and cored, the high end cored only. Acids counted as malic; "
           "0.032 g (Ciqual 13122) is left out, a tenth of the rest."])

ingredient(
    "orchard_fruit", "pear", "pome fruit, pectin-poor fruit",
    "pears, poire, poires, Birne, Birnen, pera, peras", "pear", pH=[("3.5", "4.6", FDA_MEMORY + ", Bartlett")],
    acid=("malic acid", "0.2", "0.2"), sources=[BLYTH], piece="09252:medium",
    notes=["Acids counted as malic. Its pH reaches above the law's line: it counts as low acid."])

ingredient(
    "orchard_fruit", "cooking apple", "pome fruit, pectin-rich fruit",
    "cooking apples, cooker, cookers, Kochapfel, Kochäpfel", "apple-cooking-peeled",
    pH=["Apple sauce"], acid=("malic acid", "0.84", "1.4"),
    parts_from="malic acid, high end: from memory", sources=[BLYTH],
    edible=("77", "77", "as peeled apple, USDA SR28 NDB 09004, refuse"),
    notes=["The pH is that of apple sauce in the list."])

ingredient(
    "orchard_fruit", "quince", "pome fruit, pectin-rich fruit",
    "quinces, coing, coings, Quitte, Quitten, membrillo",
    "quince", pH=[("3.12", "3.4", FDA_MEMORY + ", stewed")], acid=("malic acid", "0.7", "1.1"),
    parts_from="malic acid: from memory", raw=("unpleasant",), piece="09296:fruit without refuse")

ingredient(
    "orchard_fruit", "plum", "stone fruit, pectin-rich fruit",
    "plums, red plum, red plums, Victoria plum, Victoria plums, Pflaume, Pflaumen, ciruela, "
    "ciruelas",
    "plum, plum-victoria", pH=[("2.8", "4.6", AHEA + ", all plums")],
    acid=("malic acid", "0.85", "1.27"), sources=[BLYTH], piece="09279:fruit",
    notes=[KERNELS, "Acids counted as malic. Some plums reach above the law's line: it counts as "
           "low acid."])

ingredient(
    "orchard_fruit", "damson", "stone fruit, pectin-rich fruit",
    "damsons, quetsche, quetsches, Zwetschge, Zwetschgen",
    "damson", pH=[("2.9", "3.1", FDA_MEMORY)],
    edible=("90", "90", "stoned, from memory"), notes=[KERNELS, "No acids are at hand."])

ingredient(
    "orchard_fruit", "greengage", "stone fruit, pectin-rich fruit",
    "greengages, reine-claude, Reneklode, Renekloden",
    "greengage", pH=[("3.6", "4.3", FDA_MEMORY)], acids_from_table=False,
    edible=("94", "94", "as plum, USDA SR28 NDB 09279, refuse"),
    notes=[KERNELS, "Ciqual's acids (0.0058 g) are not believed; no acids are given."])

ingredient(
    "orchard_fruit", "apricot", "stone fruit, pectin-poor fruit",
    "apricots, abricot, abricots, Aprikose, Aprikosen, Marille, albaricoque", "apricot",
    pH=["Apricots"], acid=("organic acids", "0.47", "1.16"), sources=[BLYTH], piece="09021:apricot",
    notes=[KERNELS, "Its pH reaches above the law's line: it counts as low acid."])

ingredient(
    "orchard_fruit", "peach", "stone fruit, pectin-poor fruit",
    "peaches, pêche, pêches, Pfirsich, Pfirsiche, melocotón",
    "peach", pH=[("3.3", "4.05", FDA_MEMORY)], acid=("malic acid", "0.92", "0.92"), sources=[BLYTH],
    piece="09236:medium", notes=[KERNELS, "Edible: stoned, with its skin. Acids counted as malic."])

ingredient(
    "orchard_fruit", "cherry", "stone fruit",
    "cherries, sweet cherry, sweet cherries, cerise, cerises, Kirsche, Kirschen, cereza, cerezas",
    "cherry-sweet", pH=["Cherries (California)", ("3.8", "3.83", FDA + ", Royal Ann")],
    without=["Ciqual 2020 13008"], acid=("malic acid", "0.91", "0.91"), sources=[BLYTH],
    piece="09070:cherry",
    notes=[KERNELS, "Ciqual's row does not add up and is left out. Acids counted as malic. Its pH "
           "reaches above the law's line: it counts as low acid."])

ingredient(
    "orchard_fruit", "sour cherry", "stone fruit, pectin-middling fruit",
    "sour cherries, morello, morellos, morello cherry, morello cherries, griotte, griottes, "
    "Sauerkirsche, Sauerkirschen, guinda", "cherry-sour",
    pH=[("3.25", "3.82", FDA_MEMORY + ", red cherries in water")],
    notes=[KERNELS, "No acids are at hand."])

ingredient(
    "orchard_fruit", "green apple", "pome fruit",
    "green apples, Granny Smith, Granny Smiths, pomme verte, pommes "
    "vertes, grüner Apfel, grüne Äpfel", "apple-green", pH=["Apple, eating"],
    acid=("malic acid", "0.42", "0.84"), sources=[IFCT, BLYTH], piece="09502:medium",
    notes=["Acids of apples in general, counted as malic; 0.037 g (Ciqual 13121) is left out."])

ingredient(
    "orchard_fruit", "crab apple", "pome fruit, pectin-rich fruit",
    "crab apples, crabapple, crabapples, wild apple, wild apples, Holzapfel, Holzäpfel, Zierapfel, "
    "Zieräpfel, pomme sauvage, pommes sauvages", "crabapple",
    pH=[("2.9", "3.4", "from memory")], acid=("malic acid", "0.8", "1.5"),
    parts=[("sugars", "9", "15", "g"), ("fibre", "2", "5", "g")],
    parts_from="sugars, fibre, malic acid: from memory, within the rest of USDA SR28",
    raw=("unpleasant",))

ingredient(
    "orchard_fruit", "loquat", "pome fruit",
    "loquats, Japanese medlar, Japanese medlars, nèfle du Japon, nèfles du Japon, níspero, "
    "nísperos", "medlar-loquat", pH=[("5.1", "5.1", FDA_MEMORY)], piece="09174:medium",
    notes=["Not a medlar, whatever its other name. The seeds are not for eating."])

ingredient(
    "orchard_fruit", "Asian pear", "pome fruit", "Asian pears, nashi, nashis, nashi pear, nashi "
    "pears, Nashibirne, Nashibirnen",
    pH=[("4.7", "4.7", "University of Idaho extension, list of pH")],
    parts=[("water", "88.2", "88.3", "g"), ("protein", "0.5", "0.5", "g"), ("fat", "0.2", "0.3",
           "g"), ("fibre", "3.6", "3.6", "g"), ("sugars", "7", "7.1", "g"), ("ash", "0.4", "0.4",
           "g"), ("potassium", "121", "121", "mg")],
    parts_from="USDA SR28 NDB 09340, from memory", edible=("90", "91", "from memory"),
    notes=["A pear by name, and low acid by its pH."])

ingredient(
    "orchard_fruit", "mirabelle", "stone fruit",
    "mirabelles, mirabelle plum, mirabelle plums, Mirabellen", "mirabelle",
    pH=[("2.8", "4.6", AHEA + ", all plums")], edible=("90", "95", "stoned, from memory"),
    notes=[KERNELS, TRACE_ACIDS, "Some plums reach above the law's line: it counts as low acid."])

ingredient(
    "orchard_fruit", "cherry plum", "stone fruit",
    "cherry plums, myrobalan, myrobalans, prune-cerise, prunes-cerises, Kirschpflaume, "
    "Kirschpflaumen", "plum", pH=[("2.8", "4.6", AHEA + ", all plums")],
    acid=("malic acid", "0.85", "1.27"), sources=[BLYTH],
    edible=("80", "90", "stoned, from memory"), piece=("8", "20", "from memory"),
    notes=[KERNELS, "Composition of plum. Acids counted as malic. Some plums reach above the law's "
           "line: it counts as low acid."])

ingredient(
    "orchard_fruit", "nectarine", "stone fruit",
    "nectarines, brugnon, brugnons, Nektarine, Nektarinen, nectarina", "nectarine",
    pH=[("3.92", "4.18", FDA_MEMORY)], piece="09191:medium",
    notes=[KERNELS, "No acids are at hand."])

ingredient(
    "orchard_fruit", "sloe", "stone fruit, hedgerow berry",
    "sloes, blackthorn, prunelle, prunelles, Schlehe, Schlehen, endrina, endrinas",
    parts=[("water", "68", "78", "g"), ("protein", "0.7", "1.2", "g"), ("fibre", "4", "9", "g"),
           ("sugars", "6", "11", "g"), ("malic acid", "1", "2.5", "g"), ("ash", "0.8", "1.5", "g"),
           ("potassium", "300", "450", "mg")],
    parts_from="from memory", edible=("70", "80", "stoned, from memory"),
    piece=("1.5", "3", "from memory"), raw=("unpleasant",),
    notes=[KERNELS, "Sour to the tongue, but " + NO_PH[0].lower() + NO_PH[1:]])
