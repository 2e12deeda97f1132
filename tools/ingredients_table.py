# SPDX-License-Identifier: Apache-2.0
"""What the tables of data/ do not say about an ingredient: its names, its classes, the rows it is
drawn from, its pH, allergens and hazards. Read by tools/draw_ingredients.py.

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
  raw       (hazard, why)
  edible    (low, high, origin) where the refuse of SR28 does not serve
"""

FDA = "FDA list of pH, 2003"
FDA_MEMORY = FDA + ", from memory"
BAD_BUG = "FDA Bad Bug Book, list of pH"
AHEA = "AHEA 1993"
OTHER_LIST = "a published list of pH"
IFCT = "IFCT 2017 (acids)"
BLYTH = "Blyth, free acid of fruits (acids)"

PH_SOURCES = {"FDA/CFSAN list": FDA, "FDA Bad Bug Book list": BAD_BUG}

TOPICS = {
    "onions": "Onions and their kin.",
    "roots": "Roots.",
    "squashes": "Squashes, pumpkin, courgette and cucumber.",
    "brassicas": "Cabbages and their kin.",
    "vegetables": "Beans, peppers, tomatoes and other vegetables.",
    "orchard_fruit": "Pome fruit and stone fruit.",
    "soft_fruit": "Berries, currants, rhubarb.",
    "citrus": "Citrus fruit.",
    "dried_fruit": "Dried fruit.",
    "sweeteners": "Sugars and honey.",
    "acids": "Vinegars and bottled lemon juice.",
    "seasonings": "Salt and water.",
    "spices": "Spices, dry, and fresh ginger.",
    "thickeners": "Flours.",
}

ENTRIES = []


def ingredient(topic, name, classes, also="", keys="", pH=None, allergen="none", **more):
    entry = {
        "topic": topic, "name": name, "classes": split(classes), "also": split(also),
        "keys": split(keys), "pH": pH, "allergen": allergen, "without": [], "drop": [], "keep": [],
        "leave": [], "acid": None, "acids_from_table": True, "parts": [], "parts_from": None,
        "edible": None, "density": None, "piece": None, "raw": [], "notes": [], "sources": [],
        "starch_by_difference": False,
    }
    unknown = set(more) - set(entry)
    assert not unknown, (name, unknown)
    entry.update(more)
    ENTRIES.append(entry)


def split(text):
    return [part.strip() for part in text.split(",") if part.strip()]


SUGAR_COLUMNS = ["sugars_total_g", "glucose_g", "fructose_g", "sucrose_g", "maltose_g"]


def drop_all(row, columns):
    return [(row, column) for column in columns]


# Texts used more than once.
BITTER = "Throw away any that tastes bitter: cooking does not remove what makes it so."
SULPHITES = "Many packs are sulphited and many are not: the label says."
KERNELS = "Weights are without stones. The kernels are not for eating."
NO_PH = "No published pH is at hand, so it counts as low acid."
TRACE_ACIDS = "Ciqual's trace of acids is not believed; no acids are given."

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

# ---- Roots --------------------------------------------------------------------------------------

ingredient(
    "roots", "carrot", "root", "carrots, carotte, carottes, Möhre, Möhren, Karotte, zanahoria",
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
    "squashes", "cucumber", "fruit vegetable",
    "cucumbers, concombre, concombres, Gurke, Gurken, pepino",
    "cucumber, cucumber-peeled", pH=["Cucumbers"], acid=("organic acids", "0.19", "0.26"),
    sources=[IFCT], piece="11205:cucumber",
    notes=["Edible: the low end peeled, the high end with its peel. " + BITTER])

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

# ---- Vegetables ---------------------------------------------------------------------------------

BEAN_RAW = ("unsafe", "raw pods and beans hold lectins (from memory): cook them until tender")

ingredient(
    "vegetables", "green bean", "pod",
    "green beans, French bean, French beans, string bean, string beans, haricot vert, haricots "
    "verts, grüne Bohne, grüne Bohnen, judía verde", "green-bean", pH=["Beans, string"],
    raw=BEAN_RAW)

ingredient(
    "vegetables", "runner bean", "pod", "runner beans, Feuerbohne, Feuerbohnen", "runner-bean",
    edible=("88", "88", "as green bean, USDA SR28 NDB 11052, refuse"), raw=BEAN_RAW, notes=[NO_PH])

ingredient(
    "vegetables", "sweet pepper", "fruit vegetable",
    "sweet peppers, bell pepper, bell peppers, red pepper, red peppers, green pepper, green "
    "peppers, yellow pepper, yellow peppers, capsicum, capsicums, poivron, poivrons, "
    "Gemüsepaprika, pimiento",
    "pepper-green, pepper-red, pepper-yellow", pH=["Peppers", ("4.65", "5.93", OTHER_LIST)],
    without=["USDA SR28 NDB 11951"], acid=("malic acid", "0.27", "0.45"), sources=[IFCT],
    piece="11333:medium",
    notes=["Green, red and yellow together. Acids counted as malic, the main one. Ciqual 20168 has "
           "1.1 g, three times the rest: left out."])

ingredient(
    "vegetables", "chilli", "fruit vegetable, fresh spice",
    "chillies, chili, chilies, fresh chilli, fresh chillies, chilli pepper, chilli peppers, hot "
    "pepper, hot peppers, frische Chilischote, guindilla", "chilli-red, chilli-green",
    piece="11819:pepper",
    notes=["A piece is a large one. Heat differs by kind a thousandfold: no figure is "
           "given. " + NO_PH])

ingredient(
    "vegetables", "tomato", "fruit vegetable",
    "tomatoes, red tomato, red tomatoes, ripe tomato, ripe tomatoes, tomate, tomates, Tomaten",
    "tomato-red", pH=[("4", "4.6", AHEA), ("4.3", "4.9", FDA_MEMORY)],
    acid=("citric acid", "0.3", "0.39"), sources=[IFCT], piece="11529:medium whole",
    notes=["Acids counted as citric; 0.035 g (Ciqual 20276) is left out, a tenth of the rest. Its "
           "pH reaches above the law's line: it counts as low acid."])

ingredient(
    "vegetables", "green tomato", "fruit vegetable",
    "green tomatoes, unripe tomato, unripe tomatoes, tomate verte, grüne Tomate, grüne Tomaten",
    "tomato-green", acid=("citric acid", "0.15", "0.15"), sources=[IFCT], piece="11527:medium",
    raw=("unpleasant",), notes=[NO_PH])

ingredient(
    "vegetables", "aubergine", "fruit vegetable",
    "aubergines, eggplant, eggplants, brinjal, brinjals, Auberginen, berenjena", "aubergine",
    pH=["Eggplant"], acid=("malic acid", "0.17", "0.18"), sources=[IFCT],
    piece="11209:eggplant, unpeeled",
    raw=("unpleasant",), notes=["Acids counted as malic, the main one."])

ingredient(
    "vegetables", "celery", "stalk", "celery stalk, celery stalks, céleri, Staudensellerie, apio",
    "celery", pH=["Celery"], allergen="celery", piece="11143:stalk, medium",
    notes=["A piece is one stalk."])

ingredient(
    "vegetables", "sweetcorn", "vegetable",
    "sweet corn, corn kernels, maïs doux, Zuckermais, maíz dulce", "sweetcorn", pH=["Corn"],
    piece="11167:ear, medium", notes=["Edible: kernels of a cob in its husk. A piece is what one "
    "cob yields."])

# ---- Orchard fruit ------------------------------------------------------------------------------

ingredient(
    "orchard_fruit", "apple", "pome fruit",
    "apples, eating apple, eating apples, dessert apple, pomme, pommes, Apfel, Äpfel, manzana",
    "apple, apple-peeled", pH=["Apple, eating"],
    acid=("malic acid", "0.42", "0.84"), piece="09003:medium", sources=[IFCT, BLYTH],
    notes=["Edible: the low end peeled and cored, the high end cored only. Acids counted as malic; "
           "0.032 g (Ciqual 13122) is left out, a tenth of the rest."])

ingredient(
    "orchard_fruit", "pear", "pome fruit", "pears, poire, poires, Birne, Birnen, pera, peras",
    "pear", pH=[("3.5", "4.6", FDA_MEMORY + ", Bartlett")],
    acid=("malic acid", "0.2", "0.2"), sources=[BLYTH], piece="09252:medium",
    notes=["Acids counted as malic. Its pH reaches above the law's line: it counts as low acid."])

ingredient(
    "orchard_fruit", "cooking apple", "pome fruit",
    "cooking apples, cooker, cookers, Kochapfel, Kochäpfel", "apple-cooking-peeled",
    pH=["Apple sauce"], acid=("malic acid", "0.84", "1.4"),
    parts_from="malic acid, high end: from memory", sources=[BLYTH],
    edible=("77", "77", "as peeled apple, USDA SR28 NDB 09004, refuse"),
    notes=["The pH is that of apple sauce in the list."])

ingredient(
    "orchard_fruit", "quince", "pome fruit", "quinces, coing, coings, Quitte, Quitten, membrillo",
    "quince", pH=[("3.12", "3.4", FDA_MEMORY + ", stewed")], acid=("malic acid", "0.7", "1.1"),
    parts_from="malic acid: from memory", raw=("unpleasant",), piece="09296:fruit without refuse")

ingredient(
    "orchard_fruit", "plum", "stone fruit",
    "plums, red plum, red plums, Victoria plum, Victoria plums, Pflaume, Pflaumen, ciruela, "
    "ciruelas",
    "plum, plum-victoria", pH=[("2.8", "4.6", AHEA + ", all plums")],
    acid=("malic acid", "0.85", "1.27"), sources=[BLYTH], piece="09279:fruit",
    notes=[KERNELS, "Acids counted as malic. Some plums reach above the law's line: it counts as "
           "low acid."])

ingredient(
    "orchard_fruit", "damson", "stone fruit", "damsons, quetsche, quetsches, Zwetschge, Zwetschgen",
    "damson", pH=[("2.9", "3.1", FDA_MEMORY)],
    edible=("90", "90", "stoned, from memory"), notes=[KERNELS, "No acids are at hand."])

ingredient(
    "orchard_fruit", "greengage", "stone fruit", "greengages, reine-claude, Reneklode, Renekloden",
    "greengage", pH=[("3.6", "4.3", FDA_MEMORY)], acids_from_table=False,
    edible=("94", "94", "as plum, USDA SR28 NDB 09279, refuse"),
    notes=[KERNELS, "Ciqual's acids (0.0058 g) are not believed; no acids are given."])

ingredient(
    "orchard_fruit", "apricot", "stone fruit",
    "apricots, abricot, abricots, Aprikose, Aprikosen, Marille, albaricoque", "apricot",
    pH=["Apricots"], acid=("organic acids", "0.47", "1.16"), sources=[BLYTH], piece="09021:apricot",
    notes=[KERNELS, "Its pH reaches above the law's line: it counts as low acid."])

ingredient(
    "orchard_fruit", "peach", "stone fruit",
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
    "orchard_fruit", "sour cherry", "stone fruit",
    "sour cherries, morello, morellos, morello cherry, morello cherries, griotte, griottes, "
    "Sauerkirsche, Sauerkirschen, guinda", "cherry-sour",
    pH=[("3.25", "3.82", FDA_MEMORY + ", red cherries in water")],
    notes=[KERNELS, "No acids are at hand."])

# ---- Soft fruit ---------------------------------------------------------------------------------

ingredient(
    "soft_fruit", "raspberry", "soft fruit",
    "raspberries, framboise, framboises, Himbeere, Himbeeren, frambuesa", "raspberry",
    pH=[("3.22", "3.95", FDA_MEMORY)], acid=("citric acid", "1.38", "1.9"), sources=[BLYTH],
    piece="09302:raspberries", notes=["Acids counted as citric, the main one."])

ingredient(
    "soft_fruit", "strawberry", "soft fruit",
    "strawberries, fraise, fraises, Erdbeere, Erdbeeren, fresa, fresas", "strawberry",
    pH=[("3", "3.9", FDA_MEMORY)], acid=("citric acid", "0.85", "0.93"), sources=[BLYTH],
    piece="09316:medium", notes=["Acids counted as citric, the main one."])

ingredient(
    "soft_fruit", "blackberry", "soft fruit",
    "blackberries, bramble, brambles, mûre, mûres, Brombeere, Brombeeren, zarzamora", "blackberry",
    pH=["Blackberries"], acid=("organic acids", "0.15", "1.19"), sources=[BLYTH],
    notes=["Acids: Ciqual has 0.15 g, the old list 1.19 g. Nothing says which is right."])

ingredient(
    "soft_fruit", "blackcurrant", "soft fruit",
    "blackcurrants, black currant, black currants, cassis, schwarze Johannisbeere, grosella negra",
    "blackcurrant", pH=[("2.6", "3.1", OTHER_LIST)], acid=("citric acid", "2.63", "2.63"),
    notes=["Ciqual's acids are counted as citric, the main one."])

ingredient(
    "soft_fruit", "redcurrant", "soft fruit",
    "redcurrants, red currant, red currants, groseille, groseilles, rote Johannisbeere, grosella "
    "roja",
    "redcurrant", pH=[("2.9", "2.9", FDA_MEMORY)], acid=("citric acid", "2.15", "2.15"),
    sources=[BLYTH], notes=["Acids counted as citric; Ciqual's 6.3 g are not believed."])

ingredient(
    "soft_fruit", "gooseberry", "soft fruit",
    "gooseberries, groseille à maquereau, Stachelbeere, Stachelbeeren, grosella espinosa",
    "gooseberry",
    pH=[("2.8", "3.1", FDA_MEMORY), ("3", "3", AHEA)], acid=("organic acids", "1.4", "1.42"),
    sources=[BLYTH], notes=["Acids are citric and malic, in what proportion is not known."])

ingredient(
    "soft_fruit", "blueberry", "soft fruit",
    "blueberries, myrtille, myrtilles, Heidelbeere, Heidelbeeren, arándano", "blueberry",
    pH=["Blueberries"], acid=("organic acids", "1.37", "1.37"))

ingredient(
    "soft_fruit", "elderberry", "soft fruit",
    "elderberries, baie de sureau, baies de sureau, Holunderbeere, Holunderbeeren, baya de saúco",
    "elderberry",
    raw=("unsafe", "raw juice pressed with leaves and branches made people ill (CDC 1984)"),
    notes=["Edible: the berries alone. Strip the stems, cook the berries. " + NO_PH])

ingredient(
    "soft_fruit", "rhubarb", "fruit", "rhubarbs, rhubarbe, Rhabarber, ruibarbo", "rhubarb",
    pH=["Rhubarb"], acid=("malic acid", "1.9", "1.9"), piece="09307:stalk",
    notes=["Stalks only: the leaves are poisonous. Ciqual's acids are counted as malic; some of "
           "them are oxalic."])

# ---- Citrus -------------------------------------------------------------------------------------

ingredient(
    "citrus", "lemon", "citrus", "lemons, fresh lemon, fresh lemons, citron, citrons, Zitrone, "
    "Zitronen",
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
    "citrus", "orange", "citrus", "oranges, sweet orange, sweet oranges, Orangen, naranja",
    "orange", pH=[("3.69", "4.34", FDA_MEMORY)], acid=("citric acid", "1.05", "1.48"),
    sources=[IFCT],
    piece="09200:fruit", notes=["The flesh without peel. Acids counted as citric."])

# ---- Dried fruit --------------------------------------------------------------------------------

ingredient(
    "dried_fruit", "sultana", "vine fruit",
    "sultanas, golden raisin, golden raisins, Sultanine, Sultaninen", "sultana",
    pH=[("3.8", "4.1", FDA_MEMORY + ", seedless raisins")], allergen="not stated",
    density="sultana:cup.*", notes=[SULPHITES])

ingredient(
    "dried_fruit", "date", "dried fruit",
    "dates, dried date, dried dates, datte, dattes, Dattel, Datteln, dátil",
    "date-dried, date-medjool",
    pH=[("4.14", "6.4", FDA_MEMORY)], allergen="not stated",
    keep=["glucose", "fructose", "sucrose"], density="date-dried:cup, chopped",
    piece="09087:date",
    notes=["Weights without stones. Some kinds keep their sucrose, others have none. The ranges "
           "hold both.", SULPHITES])

ingredient(
    "dried_fruit", "raisin", "vine fruit",
    "raisins, raisin sec, raisins secs, Rosine, Rosinen, pasa, pasas",
    "raisin", pH=[("3.8", "4.1", FDA_MEMORY)], allergen="not stated", density="raisin:cup.*",
    piece="09298:raisins", notes=[SULPHITES])

ingredient(
    "dried_fruit", "currant", "vine fruit",
    "currants, dried currant, dried currants, zante currant, zante currants, raisin de Corinthe, "
    "Korinthe, Korinthen", "currant-zante", allergen="not stated", density="currant-zante:cup",
    notes=["The dried grape, not a blackcurrant or redcurrant. " + NO_PH, SULPHITES])

ingredient(
    "dried_fruit", "dried fig", "dried fruit",
    "dried figs, figue sèche, figues sèches, getrocknete Feige",
    "fig-dried", pH=[("5.05", "5.98", FDA + ", fresh Calimyrna figs")], allergen="not stated",
    density="fig-dried:cup", piece="09094:fig", notes=[SULPHITES])

ingredient(
    "dried_fruit", "prune", "dried fruit",
    "prunes, dried plum, dried plums, pruneau, pruneaux, Backpflaume",
    "prune", pH=["Prunes"], allergen="not stated", without=["Ciqual 2020 13042"],
    density="prune:cup, pitted", piece="09291:prune",
    notes=["Weights without stones. Ciqual's row does not add up and is left out; it has 9.6 g of "
           "polyols.", SULPHITES])

ingredient(
    "dried_fruit", "dried apricot", "dried fruit",
    "dried apricots, abricot sec, abricots secs, getrocknete Aprikose, orejón", "apricot-dried",
    pH=[("3.3", "3.51", FDA_MEMORY + ", stewed")], allergen="not stated",
    without=["Ciqual 2020 13001"], density="apricot-dried:cup.*",
    notes=["Ciqual's row does not add up and is left out. Bright orange ones are sulphited: the "
           "label says."])

# ---- Sweeteners ---------------------------------------------------------------------------------

ingredient(
    "sweeteners", "sugar", "sweetener",
    "white sugar, granulated sugar, caster sugar, preserving sugar, sucre, Zucker, azúcar",
    "sugar-white", density="sugar-white:tsp|cup", parts=[("sucrose", "99.8", "100", "g")])

ingredient(
    "sweeteners", "brown sugar", "sweetener",
    "soft brown sugar, light brown sugar, dark brown sugar, muscovado sugar, cassonade, brauner "
    "Zucker",
    "sugar-brown", without=["CoFID 2015 17-060"], density="sugar-brown:(tsp|cup) (un)?packed",
    notes=["A spoon of it weighs half as much again when pressed down: weigh it."])

ingredient(
    "sweeteners", "demerara sugar", "sweetener", "demerara, turbinado sugar, raw sugar",
    "sugar-demerara-turbinado", without=["CoFID 2015 17-061"],
    density="sugar-demerara-turbinado:tsp|cup")

ingredient(
    "sweeteners", "honey", "sweetener", "honeys, miel, Honig", "honey",
    pH=[("3.7", "4.2", FDA_MEMORY)], density="honey:tbsp|cup")

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

# ---- Salt and water -----------------------------------------------------------------------------

ingredient(
    "seasonings", "salt", "seasoning",
    "table salt, fine salt, cooking salt, sel, Salz, sal", "salt",
    leave=["ash", "potassium"], parts=[("salt", "99.8", "99.97", "g")],
    density="salt:tsp|tbsp|cup",
    notes=["Fine table salt. Flake and coarse salt weigh down to half as much a spoon: weigh them. "
           "The sodium is that of the salt, not besides it."])

ingredient(
    "seasonings", "water", "liquid", "tap water, eau, Wasser, agua", "water",
    leave=["ash"], parts=[("water", "99.9", "100", "g")],
    density=("0.997", "1.001", "USDA SR28 NDB 14411, weight of a US fl oz and a litre"),
    notes=["Tap water; its salts differ from place to place."])

# ---- Spices -------------------------------------------------------------------------------------

ingredient(
    "spices", "ground allspice", "warm spice",
    "allspice, ground pimento, piment de la Jamaïque", "allspice",
    density="allspice:tsp|tbsp")

ingredient(
    "spices", "whole clove", "warm spice",
    "whole cloves, clou de girofle, clous de girofle, Gewürznelke, Gewürznelken", "cloves",
    piece=("0.06", "0.12", "from memory"), notes=["A piece is one bud."])

ingredient(
    "spices", "ground clove", "warm spice", "ground cloves, clove powder", "cloves",
    density="cloves:tsp|tbsp")

ingredient(
    "spices", "ground cinnamon", "warm spice",
    "cinnamon, cannelle moulue, gemahlener Zimt, canela molida",
    "cinnamon", density="cinnamon:tsp|tbsp")

ingredient(
    "spices", "cinnamon stick", "warm spice",
    "cinnamon sticks, stick cinnamon, bâton de cannelle, Zimtstange, Zimtstangen", "cinnamon",
    piece=("2", "4", "from memory"), notes=["Composition of ground cinnamon."])

ingredient(
    "spices", "fresh ginger", "fresh spice",
    "ginger root, root ginger, gingembre frais, frischer Ingwer, jengibre fresco", "ginger-root",
    pH=[("5.6", "5.9", FDA_MEMORY)], density="ginger-root:tsp",
    notes=["Sources differ by 12 g of water."])

ingredient(
    "spices", "ground ginger", "warm spice",
    "ginger powder, dried ginger, gingembre moulu, Ingwerpulver, jengibre molido", "ginger-ground",
    density="ginger-ground:tsp|tbsp", without=["CoFID 2015 13-832"],
    notes=["CoFID's row is left out: it has 20 g of sugars against 3."])

ingredient(
    "spices", "nutmeg", "warm spice", "nutmegs, ground nutmeg, noix de muscade, Muskatnuss, nuez "
    "moscada",
    "nutmeg", density="nutmeg:tsp|tbsp")

ingredient(
    "spices", "mace", "warm spice", "ground mace, macis, Muskatblüte", "mace",
    density="mace:tsp|tbsp")

ingredient(
    "spices", "mustard seed", "seed spice",
    "mustard seeds, yellow mustard seed, yellow mustard seeds, brown mustard seed, brown mustard "
    "seeds, graine de moutarde, Senfkorn, Senfkörner", "mustard-seed", allergen="mustard",
    density=("0.6", "0.75", "from memory"))

ingredient(
    "spices", "mustard powder", "hot spice",
    "dry mustard, ground mustard, mustard flour, English mustard powder, moutarde en poudre, "
    "Senfpulver",
    "mustard-seed", allergen="mustard", density="mustard-seed:tsp|tbsp",
    notes=["Figures of ground mustard seed. Some tins hold wheat flour and turmeric too: the label "
           "says."])

ingredient(
    "spices", "turmeric", "spice", "ground turmeric, turmeric powder, curcuma, Kurkuma, cúrcuma",
    "turmeric", density="turmeric:tsp|tbsp")

ingredient(
    "spices", "black pepper", "hot spice",
    "ground black pepper, poivre noir, schwarzer Pfeffer, pimienta negra", "black-pepper",
    density="black-pepper:(tsp|tbsp), ground", notes=["A spoon of it is ground."])

ingredient(
    "spices", "black peppercorn", "hot spice",
    "black peppercorns, peppercorn, peppercorns, whole black pepper, Pfefferkorn, Pfefferkörner",
    "black-pepper", density="black-pepper:tsp, whole", piece=("0.04", "0.06", "from memory"))

ingredient(
    "spices", "cayenne", "hot spice",
    "cayenne pepper, ground cayenne, poivre de Cayenne, Cayennepfeffer, cayena", "cayenne",
    density="cayenne:tsp|tbsp", notes=["Its heat differs from pack to pack: no figure is given."])

ingredient(
    "spices", "coriander seed", "seed spice",
    "coriander seeds, graine de coriandre, Koriandersamen", "coriander-seed",
    density="coriander-seed:tsp|tbsp")

ingredient(
    "spices", "cumin seed", "seed spice",
    "cumin seeds, cumin, graine de cumin, Kreuzkümmel, comino",
    "cumin-seed", density="cumin-seed:(tsp|tbsp), whole")

ingredient(
    "spices", "dill seed", "seed spice", "dill seeds, graine d'aneth, Dillsamen", "dill-seed",
    density="dill-seed:tsp|tbsp")

ingredient(
    "spices", "fennel seed", "seed spice", "fennel seeds, graine de fenouil, Fenchelsamen",
    "fennel-seed",
    density="fennel-seed:(tsp|tbsp).*")

ingredient(
    "spices", "caraway seed", "seed spice",
    "caraway seeds, caraway, graine de carvi, Kümmel, alcaravea",
    "caraway", density="caraway:tsp|tbsp")

ingredient(
    "spices", "celery seed", "seed spice", "celery seeds, graine de céleri, Selleriesamen",
    "celery-seed",
    allergen="celery", density="celery-seed:tsp|tbsp")

ingredient(
    "spices", "curry powder", "warm spice, hot spice",
    "curry powders, curry en poudre, Currypulver",
    "curry-powder", allergen="not stated", density="curry-powder:tsp|tbsp",
    notes=["A mixture: mustard, celery and more may be in it, the label says."])

ingredient(
    "spices", "paprika", "spice", "sweet paprika, ground paprika, Paprikapulver, pimentón",
    "paprika",
    density="paprika:tsp|tbsp")

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
