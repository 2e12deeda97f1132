# SPDX-License-Identifier: Apache-2.0
"""Onions and their kin, and roots."""

from .form import (
    FDA, FDA_MEMORY, IFCT, NO_PH, OTHER_LIST, SUGAR_COLUMNS, TRACE_ACIDS, drop_all, ingredient)

# ---- Onions -------------------------------------------------------------------------------------

ingredient(
    "onions", "onion", "onion family",
    "onions, red onion, red onions, brown onion, brown onions, yellow onion, yellow onions, white "
    "onion, white onions, oignon, oignons, Zwiebel, Zwiebeln, cebolla, cebollas",
    "onion, onion-red",
    pH=["Onions", ("5.32", "5.85", FDA_MEMORY)],
    drop=drop_all("Ciqual 2020 20239", SUGAR_COLUMNS + ["starch_g"]),
    acid=("malic acid", "0.12", "0.21"), piece="11282:medium",
    notes=["The sugars of Ciqual 20239 are left out, far below all others. Acids are Ciqual's "
           "totals counted as malic, the main one. IFCT 2017 has 0.59 g, three times the rest: "
           "left out."])

ingredient(
    "onions", "garlic", "onion family, fresh spice",
    "garlic clove, garlic cloves, ail, Knoblauch, ajo", "garlic",
    pH=[("5.8", "5.8", FDA_MEMORY)],
    acid=("organic acids", "0.73", "0.73"), piece="11215:clove", density="garlic:tsp",
    leave=["starch"],
    notes=["A piece is one clove, not the head. Most of its carbohydrate is fructan; the 13 g of "
           "starch in CoFID are left out."])

ingredient(
    "onions", "shallot", "onion family", "shallots, échalote, échalotes, Schalotte, Schalotten",
    "shallot", without=["CoFID 2015 13-342"], acid=("malic acid", "0.2", "0.2"),
    notes=["CoFID's row is left out: 92.8 g of water against 80 and 82. Ciqual's acids are counted "
           "as malic, as in onion. " + NO_PH])

ingredient(
    "onions", "leek", "onion family", "leeks, poireau, poireaux, Lauch, Porree, puerro", "leek",
    pH=["Leeks"], piece="11246:leek", notes=[TRACE_ACIDS])

ingredient(
    "onions", "spring onion", "onion family",
    "spring onions, scallion, scallions, green onion, green onions, Frühlingszwiebel",
    "spring-onion",
    notes=[NO_PH])

ingredient(
    "onions", "sweet onion", "onion family", "sweet onions, mild onion, mild onions", "onion-sweet",
    pH=[("5.32", "5.85", FDA_MEMORY + ", other onions")], piece="11294:onion")

ingredient(
    "onions", "pickling onion", "onion family",
    "pickling onions, pearl onion, pearl onions, silverskin onion, silverskin onions, button "
    "onion, button onions, Perlzwiebel, Perlzwiebeln, petit oignon, petits oignons",
    "onion, onion-red",
    pH=["Onions", ("5.32", "5.85", FDA_MEMORY)],
    drop=drop_all("Ciqual 2020 20239", SUGAR_COLUMNS + ["starch_g"]),
    acid=("malic acid", "0.12", "0.21"), piece=("10", "25", "from memory"),
    edible=("75", "88", "peeled, from memory"),
    notes=["Composition of onion. Small ones lose more in peeling: weigh. Acids are Ciqual's "
           "totals counted as malic."])

# ---- Roots --------------------------------------------------------------------------------------

ingredient(
    "roots", "carrot", "root, jam fruit", "carrots, carotte, carottes, Möhre, Möhren, Karotte, zanahoria",
    "carrot", pH=["Carrots"], acids_from_table=False, piece="11124:medium",
    notes=["Ciqual's acids (0.014 g) are not believed; no acids are given."])

ingredient(
    "roots", "beetroot", "root",
    "beetroots, beet, beets, betterave, betteraves, Rote Bete, remolacha", "beetroot", pH=["Beets"],
    piece="11080:beet", notes=["Edible: bought with part of the tops. " + TRACE_ACIDS])

ingredient(
    "roots", "parsnip", "root", "parsnips, panais, Pastinake, Pastinaken, chirivía", "parsnip",
    pH=[("5.3", "5.7", FDA_MEMORY)], notes=[TRACE_ACIDS])

ingredient(
    "roots", "turnip", "root", "turnips, navet, navets, weiße Rübe, nabo", "turnip",
    pH=[("5.29", "5.9", FDA_MEMORY)], piece="11564:medium", notes=[TRACE_ACIDS])

ingredient(
    "roots", "swede", "root", "swedes, rutabaga, rutabagas, Steckrübe, Steckrüben, colinabo",
    "swede",
    pH=[("6.3", "6.3", FDA_MEMORY)], piece="11435:medium", notes=[TRACE_ACIDS])

ingredient(
    "roots", "celeriac", "root", "celeriacs, celery root, céleri-rave, Knollensellerie, apionabo",
    "celeriac", pH=[("5.71", "5.85", FDA_MEMORY)], allergen="celery")

ingredient(
    "roots", "radish", "root", "radishes, radis, Radieschen, rábano", "radish",
    pH=[("5.85", "6.05", FDA_MEMORY)], acids_from_table=False, piece="11429:medium",
    notes=["Ciqual's acids (0.01 g) are not believed; no acids are given."])

ingredient(
    "roots", "daikon", "root",
    "daikons, mooli, moolis, white radish, white radishes, Rettich, Rettiche", "daikon",
    pH=[("5.52", "5.69", FDA_MEMORY + ", white radish")], piece="11430:radish")

ingredient(
    "roots", "Jerusalem artichoke", "root",
    "Jerusalem artichokes, sunchoke, sunchokes, topinambour, topinambours, Topinamburen, tupinambo",
    "jerusalem-artichoke", pH=[("5.93", "6", FDA + ", cooked")],
    notes=["Most of its carbohydrate is inulin, which is neither starch nor sugar here."])

ingredient(
    "roots", "sweet potato", "root, jam fruit",
    "sweet potatoes, kumara, kumaras, patate douce, patates douces, Süßkartoffel, Süßkartoffeln, "
    "batata, boniato", "sweet-potato", pH=[("5.3", "5.6", OTHER_LIST)],
    piece="11507:sweetpotato")

ingredient(
    "roots", "potato", "root",
    "potatoes, pomme de terre, pommes de terre, Kartoffel, Kartoffeln, patata, patatas",
    pH=[("5.4", "5.9", FDA)], edible=("75", "90", "peeled, from memory"),
    parts=[("water", "79.3", "79.3", "g"), ("protein", "2", "2.1", "g"), ("fat", "0.1", "0.1", "g"),
           ("fibre", "2.1", "2.2", "g"), ("starch", "15.3", "15.4", "g"), ("sugars", "0.8", "0.8",
           "g"), ("ash", "1.1", "1.1", "g"), ("sodium", "6", "6", "mg"), ("potassium", "421", "425",
           "mg")],
    parts_from="USDA SR28 NDB 11352, from memory",
    raw=("unpleasant", "green ones hold solanine, and boiling leaves it there (from memory)"),
    notes=["Throw green or sprouting ones away."])

ingredient(
    "roots", "horseradish", "fresh spice",
    "horseradish root, horseradish roots, raifort, Meerrettich, Kren, rábano picante",
    "horseradish-root",
    pH=["Horseradish, ground"], edible=("70", "75", "peeled, from memory"),
    notes=["Not a root that fills a slot for roots: a little is enough."])
