# SPDX-License-Identifier: Apache-2.0
"""Citrus fruit, and fruit of warm countries."""

from .form import (FDA, FDA_MEMORY, IFCT, NO_PH, TRACE_ACIDS, ingredient)

# ---- Citrus -------------------------------------------------------------------------------------

ingredient(
    "citrus", "lemon", "citrus, pectin-rich fruit",
    "lemons, fresh lemon, fresh lemons, citron, citrons, Zitrone, Zitronen",
    "lemon", pH=["Lemon juice"], acid=("citric acid", "4", "6.01"), piece="09150:fruit (2-1/8",
    sources=["citric acid, low end: USDA SR28 carbohydrate less sugars and fibre"],
    notes=["The flesh without peel; the pH is that of the juice. Its strength differs from fruit "
           "to fruit: it is no acid donor."])

ingredient(
    "citrus", "fresh lemon juice", "lemon juice, produce",
    "jus de citron, Zitronensaft, zumo de limón",
    "lemon-juice", pH=["Lemon juice"], acid=("citric acid", "3.49", "4.08"),
    density="lemon-juice:cup|fl oz", piece="09152:lemon yields",
    sources=[IFCT, "citric acid, high end: USDA SR28 carbohydrate less sugars and fibre"],
    notes=["A piece is what one lemon yields. Its strength differs from fruit to fruit: it is no "
           "acid donor."])

ingredient(
    "citrus", "orange", "citrus, pectin-middling fruit", "oranges, sweet orange, sweet oranges, Orangen, naranja",
    "orange", pH=[("3.69", "4.34", FDA_MEMORY)], acid=("citric acid", "1.05", "1.48"),
    sources=[IFCT],
    piece="09200:fruit", notes=["The flesh without peel. Acids counted as citric."])

ingredient(
    "citrus", "lime", "citrus", "limes, fresh lime, fresh limes, citron vert, citrons verts, "
    "Limette, Limetten, lima", "lime", pH=[("2", "2.8", FDA)],
    acid=("citric acid", "4.55", "6.05"), piece="09159:fruit",
    sources=["citric acid, high end: USDA SR28 carbohydrate less sugars and fibre"],
    notes=["The flesh without peel. Its strength differs from fruit to fruit: it is no acid "
           "donor."])

ingredient(
    "citrus", "fresh lime juice", "citrus juice, produce",
    "jus de citron vert, Limettensaft, zumo de lima", "lime-juice",
    pH=["Lime juice"], acid=("citric acid", "4.55", "6.33"), density="lime-juice:cup",
    piece="09160:lime yields",
    sources=["citric acid: Ciqual 2020 13067, lime flesh",
             "citric acid, high end: USDA SR28 carbohydrate less sugars and fibre"],
    notes=["A piece is what one lime yields. Its strength differs from fruit to fruit: it is no "
           "acid donor."])

ingredient(
    "citrus", "orange juice", "citrus juice, produce",
    "fresh orange juice, jus d'orange, Orangensaft, zumo de naranja", "orange-juice",
    pH=[("3.3", "4.19", FDA_MEMORY)], density="orange-juice:cup", piece="09206:fruit yields",
    acid=("citric acid", "1", "1.8"),
    parts_from="citric acid: as orange; high end by difference from USDA SR28",
    notes=["A piece is what one orange yields."])

ingredient(
    "citrus", "whole orange", "citrus", "whole oranges, unpeeled orange, unpeeled oranges",
    "orange-with-peel", pH=[("3.69", "4.34", FDA_MEMORY + ", the flesh")], piece="09205:fruit",
    parts=[("sugars", "7", "10", "g")],
    parts_from="sugars: from memory, within the carbohydrate of USDA SR28 less fibre",
    notes=["With its peel, seeds out. No acids are at hand."])

ingredient(
    "citrus", "bitter orange", "citrus",
    "bitter oranges, Seville orange, Seville oranges, sour orange, sour oranges, orange amère, "
    "oranges amères, Bitterorange, Bitterorangen, Pomeranze, Pomeranzen, naranja amarga",
    "bitter-orange", pH=[("2.4", "3", "from memory")],
    acid=("citric acid", "2", "4"), parts=[("sugars", "2", "5", "g")],
    parts_from="sugars and citric acid: from memory, within what Ciqual's row leaves",
    edible=("90", "97", "with its peel, pips out, from memory"),
    notes=["Ciqual's row is pulp alone, and from one island. Its peel is drier and has more fibre: "
           "what goes into marmalade is both."])

ingredient(
    "citrus", "grapefruit", "citrus, pectin-middling fruit",
    "grapefruits, pink grapefruit, pink grapefruits, pamplemousse, pamplemousses, toronja, pomelo",
    "grapefruit", pH=[("3", "3.75", FDA)], acid=("citric acid", "1.1", "1.1"),
    piece="09112:fruit (3-3/4",
    notes=["The flesh without peel. Ciqual's acids are counted as citric."])

ingredient(
    "citrus", "mandarin", "citrus",
    "mandarins, mandarin orange, mandarin oranges, tangerine, tangerines, clementine, clementines, "
    "satsuma, satsumas, mandarine, mandarines, Mandarinen, Klementine, Klementinen, mandarina",
    "mandarin", pH=[("3.32", "4.48", FDA_MEMORY + ", tangerine")],
    acid=("citric acid", "0.72", "0.72"), piece="09218:medium",
    notes=["The flesh without peel. Ciqual's acids are counted as citric."])

ingredient(
    "citrus", "kumquat", "citrus", "kumquats, naranja enana", "kumquat",
    pH=[("3.64", "4.25", FDA_MEMORY)], piece="09149:fruit without refuse",
    notes=["Eaten with its peel. No acids are at hand."])

ingredient(
    "citrus", "lemon peel", "citrus peel",
    "lemon peels, lemon zest, zeste de citron, Zitronenschale, piel de limón", "lemon-peel",
    density="lemon-peel:tsp|tbsp", notes=["A spoon of it is grated. " + NO_PH])

ingredient(
    "citrus", "orange peel", "citrus peel",
    "orange peels, orange zest, zeste d'orange, Orangenschale, piel de naranja", "orange-peel",
    density="orange-peel:tsp|tbsp", notes=["A spoon of it is grated. " + NO_PH])

# ---- Fruit of warm countries --------------------------------------------------------------------

ingredient(
    "southern_fruit", "fig", "fruit, pectin-poor fruit",
    "figs, fresh fig, fresh figs, figue, figues, Feige, Feigen, higo, higos", "fig",
    pH=[("5.05", "5.98", FDA + ", Calimyrna")], piece="09089:medium",
    notes=["A fruit, and low acid by its pH."])

ingredient(
    "southern_fruit", "mango", "tropical fruit",
    "mangoes, mangos, ripe mango, ripe mangoes, ripe mangos, mangue, mangues, reife Mango",
    "mango-ripe", pH=["Mangoes, ripe"], acid=("citric acid", "0.44", "0.53"), sources=[IFCT],
    piece="09176:fruit without refuse",
    notes=["Acids counted as citric; Ciqual's 3.13 g are not believed. Ripe, it is low acid by its "
           "pH."])

ingredient(
    "southern_fruit", "green mango", "tropical fruit",
    "green mangoes, green mangos, unripe mango, unripe mangoes, raw mango, raw mangoes, mangue "
    "verte, mangues vertes, grüne Mango", "mango-green", pH=["Mangoes, green"],
    edible=("71", "71", "as ripe mango, USDA SR28 NDB 09176, refuse"),
    notes=["No acids are at hand, though it is sharp. Its pH reaches above the law's line: it "
           "counts as low acid."])

ingredient(
    "southern_fruit", "pineapple", "tropical fruit",
    "pineapples, ananas frais, frische Ananas, piña, piñas", "pineapple",
    pH=[("3.2", "4", FDA_MEMORY)], acid=("citric acid", "0.71", "0.78"), sources=[IFCT],
    piece="09266:fruit", notes=["Acids counted as citric, the main one."])

ingredient(
    "southern_fruit", "papaya", "tropical fruit",
    "papayas, pawpaw, pawpaws, papaye, papayes", "papaya", pH=[("5.2", "6", FDA_MEMORY)],
    piece="09226:fruit, small", keep=["sucrose"], notes=["Low acid by its pH."])

ingredient(
    "southern_fruit", "guava", "tropical fruit", "guavas, goyave, goyaves, Guaven, guayaba",
    "guava", piece="09139:fruit, without refuse", notes=[NO_PH])

ingredient(
    "southern_fruit", "banana", "tropical fruit",
    "bananas, banane, bananes, Bananen, plátano", "banana", pH=[("4.5", "5.2", FDA)],
    piece="09040:medium", notes=["Low acid by its pH."])

ingredient(
    "southern_fruit", "kiwi fruit", "soft fruit", "kiwi fruits, kiwi, kiwis, kiwifruit", "kiwi",
    pH=[("3.1", "4", "from memory")], piece="09148:fruit")

ingredient(
    "southern_fruit", "melon", "fruit",
    "melons, cantaloupe, cantaloupes, musk melon, musk melons, Charentais melon, Charentais "
    "melons, Melone, Melonen, Zuckermelone, Zuckermelonen, melón", "melon",
    pH=[("6.13", "6.58", FDA + ", cantaloupe")], without=["Ciqual 2020 13026"],
    piece="09181:melon, medium",
    notes=["Ciqual's row does not add up and is left out. A fruit, and low acid by its pH."])

ingredient(
    "southern_fruit", "honeydew melon", "fruit",
    "honeydew melons, honeydew, honeydews, Honigmelone, Honigmelonen", "melon",
    without=["Ciqual 2020 13026"], pH=[("6", "6.67", FDA)],
    notes=["No table at hand has it: the rows are of cantaloupe. A fruit, and low acid by its pH."])

ingredient(
    "southern_fruit", "watermelon", "fruit",
    "watermelons, water melon, water melons, pastèque, pastèques, Wassermelone, Wassermelonen, "
    "sandía", "watermelon", pH=[("5.18", "5.6", FDA_MEMORY)],
    notes=[TRACE_ACIDS, "The red flesh; the rind is another thing and in no table at hand. Low "
           "acid by its pH."], acids_from_table=False)

ingredient(
    "southern_fruit", "persimmon", "fruit",
    "persimmons, kaki, kakis, Sharon fruit, Sharon fruits, caqui", "persimmon",
    pH=[("4.42", "4.7", FDA_MEMORY)], acids_from_table=False, piece="09263:fruit",
    notes=["Ciqual's acids (0.031 g) are not believed; no acids are given. Its pH reaches above "
           "the law's line: it counts as low acid."])

ingredient(
    "southern_fruit", "pomegranate", "fruit",
    "pomegranates, pomegranate seed, pomegranate seeds, grenade, grenades, Granatapfel, "
    "Granatäpfel, granada", "pomegranate", pH=["Pomegranate"], piece="09286:pomegranate",
    notes=["The seeds with their flesh."])

ingredient(
    "southern_fruit", "jujube", "fruit", "jujubes, ber, Chinese date, Chinese dates", "jujube-ber",
    parts=[("sugars", "12", "20.23", "g")],
    parts_from="sugars: low end from memory, high end the carbohydrate of USDA SR28",
    notes=["Weights without stones. " + NO_PH])

ingredient(
    "southern_fruit", "tamarind", "fresh spice, seasoning",
    "tamarinds, tamarind pulp, tamarin, Tamarinde, tamarindo", "tamarind-pulp",
    pH=[("3", "3", FDA_MEMORY)], acid=("tartaric acid", "8", "18.6"),
    parts_from="tartaric acid: from memory; high end by difference from USDA SR28",
    notes=["The pulp of ripe pods, seeds out. Pressed blocks and jars of paste are other "
           "strengths: the label says. Not a fruit that fills a slot for fruit."])
