# SPDX-License-Identifier: Apache-2.0
"""Berries, currants, grapes, rhubarb."""

from .form import (AHEA, BLYTH, FDA, FDA_MEMORY, IFCT, NO_PH, OTHER_LIST, ingredient)

# ---- Soft fruit ---------------------------------------------------------------------------------

ingredient(
    "soft_fruit", "raspberry", "soft fruit, pectin-poor fruit",
    "raspberries, framboise, framboises, Himbeere, Himbeeren, frambuesa", "raspberry",
    pH=[("3.22", "3.95", FDA_MEMORY)], acid=("citric acid", "1.38", "1.9"), sources=[BLYTH],
    piece="09302:raspberries", notes=["Acids counted as citric, the main one."])

ingredient(
    "soft_fruit", "strawberry", "soft fruit, pectin-poor fruit",
    "strawberries, fraise, fraises, Erdbeere, Erdbeeren, fresa, fresas", "strawberry",
    pH=[("3", "3.9", FDA_MEMORY)], acid=("citric acid", "0.85", "0.93"), sources=[BLYTH],
    piece="09316:medium", notes=["Acids counted as citric, the main one."])

ingredient(
    "soft_fruit", "blackberry", "soft fruit, hedgerow berry, pectin-middling fruit",
    "blackberries, bramble, brambles, mûre, mûres, Brombeere, Brombeeren, zarzamora", "blackberry",
    pH=["Blackberries"], acid=("organic acids", "0.15", "1.19"), sources=[BLYTH],
    notes=["Acids: Ciqual has 0.15 g, the old list 1.19 g. Nothing says which is right."])

ingredient(
    "soft_fruit", "blackcurrant", "soft fruit, pectin-rich fruit",
    "blackcurrants, black currant, black currants, cassis, schwarze Johannisbeere, grosella negra",
    "blackcurrant", pH=[("2.6", "3.1", OTHER_LIST)], acid=("citric acid", "2.63", "2.63"),
    notes=["Ciqual's acids are counted as citric, the main one."])

ingredient(
    "soft_fruit", "redcurrant", "soft fruit, pectin-rich fruit",
    "redcurrants, red currant, red currants, groseille, groseilles, rote Johannisbeere, grosella "
    "roja",
    "redcurrant", pH=[("2.9", "2.9", FDA_MEMORY)], acid=("citric acid", "2.15", "2.15"),
    sources=[BLYTH], notes=["Acids counted as citric; Ciqual's 6.3 g are not believed."])

ingredient(
    "soft_fruit", "gooseberry", "soft fruit, pectin-rich fruit",
    "gooseberries, groseille à maquereau, Stachelbeere, Stachelbeeren, grosella espinosa",
    "gooseberry",
    pH=[("2.8", "3.1", FDA_MEMORY), ("3", "3", AHEA)], acid=("organic acids", "1.4", "1.42"),
    sources=[BLYTH], notes=["Acids are citric and malic, in what proportion is not known."])

ingredient(
    "soft_fruit", "blueberry", "soft fruit, pectin-poor fruit",
    "blueberries, myrtille, myrtilles, Heidelbeere, Heidelbeeren, arándano", "blueberry",
    pH=["Blueberries"], acid=("organic acids", "1.37", "1.37"))

ingredient(
    "soft_fruit", "elderberry", "soft fruit, hedgerow berry, pectin-middling fruit",
    "elderberries, baie de sureau, baies de sureau, Holunderbeere, Holunderbeeren, baya de saúco",
    "elderberry",
    raw=("unsafe, boil at least 10 min",
         "raw juice pressed with leaves made people ill (CDC 1984)"),
    notes=["Edible: the berries alone. Strip the stems, cook the berries. The minutes "
           "are from memory. "
           + NO_PH])

ingredient(
    "soft_fruit", "rhubarb", "fruit, pectin-poor fruit",
    "rhubarbs, rhubarbe, Rhabarber, ruibarbo", "rhubarb",
    pH=["Rhubarb"], acid=("malic acid", "1.9", "1.9"), piece="09307:stalk",
    notes=["Stalks only: the leaves are poisonous. Ciqual's acids are counted as malic; some of "
           "them are oxalic."])

ingredient(
    "soft_fruit", "loganberry", "soft fruit, pectin-rich fruit",
    "loganberries, Loganbeere, Loganbeeren", "loganberry", pH=["Loganberries"],
    notes=["No acids are at hand."])

ingredient(
    "soft_fruit", "white currant", "soft fruit, pectin-rich fruit",
    "white currants, whitecurrant, whitecurrants, groseille blanche, groseilles blanches, weiße "
    "Johannisbeere, weiße Johannisbeeren", "whitecurrant", pH=[("2.9", "3.4", "from memory, as its red form")],
    acid=("citric acid", "2.15", "2.15"), sources=[BLYTH],
    notes=["Acids of currants, counted as citric."])

ingredient(
    "soft_fruit", "cranberry", "soft fruit, pectin-rich fruit",
    "cranberries, canneberge, canneberges, Cranberrys, arándano rojo", "cranberry",
    pH=[("2.3", "2.52", FDA_MEMORY + ", juice")],
    notes=["No acids are at hand: its sharpness stands in the pH alone."])

ingredient(
    "soft_fruit", "mulberry", "soft fruit",
    "mulberries, black mulberry, black mulberries, mûre du mûrier, Maulbeere, Maulbeeren",
    "mulberry", acid=("organic acids", "1.86", "1.86"), sources=[BLYTH], piece="09190:fruit",
    notes=[NO_PH])

ingredient(
    "soft_fruit", "grape", "soft fruit",
    "grapes, white grape, white grapes, green grape, green grapes, seedless grape, seedless "
    "grapes, Traube, Trauben, Weintraube, Weintrauben, uva, uvas", "grape",
    pH=["Grapes, seedless", ("2.8", "3", FDA + ", Concord")],
    acid=("organic acids", "0.6", "0.79"), sources=[IFCT, BLYTH], piece="09132:grapes",
    notes=["Acids are tartaric and malic, about half each."])

ingredient(
    "soft_fruit", "black grape", "soft fruit",
    "black grapes, red grape, red grapes, blue grape, blue grapes, blaue Traube, blaue Trauben",
    "grape-red", pH=["Grapes, seedless", ("2.8", "3", FDA + ", Concord")],
    acid=("organic acids", "0.6", "0.79"), sources=[IFCT, BLYTH],
    edible=("94", "96", "with or without pips, from memory"),
    notes=["Acids of grapes in general, tartaric and malic, about half each."])

ingredient(
    "soft_fruit", "rosehip", "hedgerow berry",
    "rosehips, rose hip, rose hips, cynorrhodon, cynorrhodons, Hagebutte, Hagebutten, escaramujo",
    parts=[("water", "58.7", "58.7", "g"), ("protein", "1.6", "1.6", "g"), ("fat", "0.3", "0.4",
           "g"), ("fibre", "24.1", "24.1", "g"), ("sugars", "2.5", "14", "g"), ("ash", "1.2", "1.2",
           "g"), ("sodium", "4", "4", "mg"), ("potassium", "429", "429", "mg")],
    parts_from="USDA SR28 NDB 35203, from memory; sugars, high end: from memory",
    edible=("50", "65", "seeds and hairs out, from memory"),
    raw=("unpleasant", "the hairs around the seeds irritate the throat: strain them off"),
    notes=[NO_PH])

ingredient(
    "soft_fruit", "rowan berry", "hedgerow berry",
    "rowan berries, rowanberry, rowanberries, mountain ash berry, mountain ash berries, baie de "
    "sorbier, baies de sorbier, Vogelbeere, Vogelbeeren, Ebereschenbeere, Ebereschenbeeren",
    parts=[("water", "70", "80", "g"), ("protein", "1", "1.6", "g"), ("fibre", "3", "7", "g"),
           ("sugars", "7", "12", "g"), ("malic acid", "1.5", "3", "g"), ("ash", "0.7", "1.1", "g")],
    parts_from="from memory", edible=("85", "95", "off the stalks, from memory"),
    raw=("unsafe, boil at least 10 min",
         "raw ones upset the stomach: parasorbic acid (from memory)"),
    notes=["The minutes are from memory too. Sorbitol is among what is not named. " + NO_PH])
