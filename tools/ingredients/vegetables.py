# SPDX-License-Identifier: Apache-2.0
"""Pods, peppers, tomatoes and other vegetables."""

from .form import (AHEA, ANY_POD, FDA, FDA_MEMORY, IFCT, NO_PH, OTHER_LIST, SCOVILLE, SWEET,
                   ingredient)

# ---- Vegetables ---------------------------------------------------------------------------------

BEAN_RAW = ("unsafe, boil at least 10 min", "raw they hold lectins (from memory, the minutes too)")

ingredient(
    "vegetables", "green bean", "pod",
    "green beans, French bean, French beans, string bean, string beans, haricot vert, haricots "
    "verts, grüne Bohne, grüne Bohnen, judía verde", "green-bean", pH=["Beans, string"],
    raw=BEAN_RAW)

ingredient(
    "vegetables", "runner bean", "pod", "runner beans, Feuerbohne, Feuerbohnen", "runner-bean",
    edible=("88", "88", "as green bean, USDA SR28 NDB 11052, refuse"), raw=BEAN_RAW, notes=[NO_PH])

ingredient(
    "vegetables", "sweet pepper", "pepper family",
    "sweet peppers, bell pepper, bell peppers, capsicum, capsicums, poivron, poivrons, "
    "Gemüsepaprika, pimiento",
    "pepper-green, pepper-red, pepper-yellow", pH=["Peppers", ("4.65", "5.93", OTHER_LIST)],
    without=["USDA SR28 NDB 11951"], acid=("malic acid", "0.27", "0.45"), sources=[IFCT],
    piece="11333:medium",
    pungency=SWEET, notes=["Green, red and yellow together. Acids counted as malic, the main one. Ciqual 20168 has "
           "1.1 g, three times the rest: left out."])

ingredient(
    "vegetables", "chilli", "pepper family, fresh spice",
    "chillies, chili, chilies, fresh chilli, fresh chillies, chilli pepper, chilli peppers, hot "
    "pepper, hot peppers, frische Chilischote, guindilla", "chilli-red, chilli-green",
    piece="11819:pepper", pungency=ANY_POD,
    notes=["A piece is a large one. Heat differs by kind a thousandfold: name the kind. " + NO_PH])

ingredient(
    "vegetables", "tomato", "fruit vegetable, jam fruit",
    "tomatoes, red tomato, red tomatoes, ripe tomato, ripe tomatoes, tomate, tomates, Tomaten",
    "tomato-red", pH=[("4", "4.6", AHEA), ("4.3", "4.9", FDA_MEMORY)],
    acid=("citric acid", "0.3", "0.39"), sources=[IFCT], piece="11529:medium whole",
    notes=["Acids counted as citric; 0.035 g (Ciqual 20276) is left out, a tenth of the rest. Its "
           "pH reaches above the law's line: it counts as low acid."])

ingredient(
    "vegetables", "green tomato", "fruit vegetable, jam fruit",
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

ingredient(
    "vegetables", "yellow bean", "pod",
    "yellow beans, wax bean, wax beans, haricot beurre, haricots beurre, Wachsbohne, Wachsbohnen",
    "yellow-bean", pH=[("5.3", "5.7", FDA + ", wax beans")], piece="11722:beans", raw=BEAN_RAW)

ingredient(
    "vegetables", "broad bean", "pod",
    "broad beans, fava bean, fava beans, fève, fèves, dicke Bohne, dicke Bohnen, Saubohne, "
    "Saubohnen, haba, habas", "broad-bean", piece="11088:broadbean",
    raw=("unsafe, boil at least 10 min",
         "lectins, up to a tenth of kidney beans' (FDA Bad Bug Book)"),
    notes=["Edible: bought shelled; a pod yields about a third of its weight (from memory). The "
           "minutes are from memory. Some people must not eat them: favism (from memory). "
           + NO_PH])

ingredient(
    "vegetables", "pea", "pod",
    "peas, green pea, green peas, garden pea, garden peas, petit pois, petits pois, Erbse, Erbsen, "
    "guisante, guisantes", "peas-green", pH=[("6.22", "6.88", FDA_MEMORY)],
    notes=["Edible: shelled out of the pod. Sugars fall by the hour after picking."])

ingredient(
    "vegetables", "mangetout", "pod",
    "mangetouts, snow pea, snow peas, sugar snap pea, sugar snap peas, sugar pea, sugar peas, pois "
    "gourmand, pois gourmands, Zuckerschote, Zuckerschoten",
    parts=[("water", "88.9", "88.9", "g"), ("protein", "2.8", "2.8", "g"), ("fat", "0.2", "0.2",
           "g"), ("fibre", "2.6", "2.6", "g"), ("sugars", "4", "4", "g"), ("ash", "0.5", "0.6",
           "g"), ("sodium", "4", "4", "mg"), ("potassium", "200", "200", "mg")],
    parts_from="USDA SR28 NDB 11300, from memory", edible=("94", "94", "from memory"),
    notes=[NO_PH])

ingredient(
    "vegetables", "kidney bean", "pulse",
    "kidney beans, red kidney bean, red kidney beans, haricot rouge, haricots rouges, Kidneybohne, "
    "Kidneybohnen, alubia roja",
    pH=[("5.4", "6", FDA)],
    parts=[("water", "11.7", "11.8", "g"), ("protein", "23.5", "23.6", "g"), ("fat", "0.8", "0.9",
           "g"), ("fibre", "15.2", "24.9", "g"), ("starch", "33", "42", "g"), ("sugars", "2.1",
           "2.3", "g"), ("ash", "3.8", "3.9", "g"), ("sodium", "12", "24", "mg"), ("potassium",
           "1359", "1406", "mg")],
    parts_from="USDA SR28 NDB 16027 and 16032, from memory; starch: the rest",
    raw=("unsafe, boil at least 30 min",
         "raw and half cooked ones hold a lectin (FDA Bad Bug Book)"),
    notes=["Weighed dry. Soak 5 h, throw that water away and boil in fresh. Near 80 °C, as in a "
           "slow cooker, they can become several times worse. British texts say 10 min at a hard "
           "boil. The longer time stands here."])

ingredient(
    "vegetables", "red pepper", "pepper family",
    "red peppers, red sweet pepper, red sweet peppers, red bell pepper, red bell peppers, poivron "
    "rouge, poivrons rouges, rote Paprika, pimiento rojo", "pepper-red",
    pH=["Peppers", ("4.65", "5.93", OTHER_LIST)], acid=("malic acid", "0.32", "0.45"),
    sources=[IFCT], piece="11821:medium", pungency=SWEET,
    notes=["Acids counted as malic, the main one."])

ingredient(
    "vegetables", "green pepper", "pepper family",
    "green peppers, green sweet pepper, green sweet peppers, green bell pepper, green bell "
    "peppers, poivron vert, poivrons verts, grüne Paprika, pimiento verde", "pepper-green",
    pH=["Peppers", ("4.65", "5.93", OTHER_LIST)], acid=("malic acid", "0.27", "0.27"),
    piece="11333:medium", pungency=SWEET, notes=["Ciqual's acids are counted as malic."])

ingredient(
    "vegetables", "yellow pepper", "pepper family",
    "yellow peppers, yellow sweet pepper, yellow sweet peppers, orange pepper, orange peppers, "
    "poivron jaune, poivrons jaunes, gelbe Paprika, pimiento amarillo", "pepper-yellow",
    pH=["Peppers", ("4.65", "5.93", OTHER_LIST)], acids_from_table=False,
    piece="11951:pepper, large", pungency=SWEET,
    notes=["Ciqual's acids (1.1 g) are three times those of other colours and left out. A piece "
           "is a large one."])

ingredient(
    "vegetables", "jalapeno", "pepper family, fresh spice",
    "jalapenos, jalapeño, jalapeños, jalapeno pepper, jalapeno peppers", "jalapeno",
    piece="11979:pepper", pungency=("2500", "8000", SCOVILLE), notes=[NO_PH])

HOT = "Composition of red and green chillies. Gloves. "

ingredient(
    "vegetables", "bird's eye chilli", "pepper family, fresh spice",
    "bird's eye chillies, bird's eye chili, bird's eye chilies, Thai chilli, Thai chillies, bird "
    "chilli, bird chillies, piment oiseau", "chilli-red, chilli-green",
    piece=("0.5", "2", "from memory"), pungency=("50000", "100000", SCOVILLE),
    notes=[HOT + NO_PH])

ingredient(
    "vegetables", "Scotch bonnet", "pepper family, fresh spice",
    "Scotch bonnets, Scotch bonnet chilli, Scotch bonnet chillies, habanero, habaneros, habanero "
    "chilli, habanero chillies", "chilli-red, chilli-green", piece=("5", "12", "from memory"),
    pungency=("100000", "350000", SCOVILLE), notes=[HOT + NO_PH])

ingredient(
    "vegetables", "tomatillo", "fruit vegetable",
    "tomatillos, husk tomato, husk tomatoes, green husk tomato", "tomatillo",
    pH=[("3.83", "3.83", FDA_MEMORY)], piece="11954:medium",
    edible=("90", "95", "husked, from memory"),
    notes=["One published pH for a thing that ripens: measure."])

ingredient(
    "vegetables", "cherry tomato", "fruit vegetable, jam fruit",
    "cherry tomatoes, cocktail tomato, cocktail tomatoes, tomate cerise, tomates cerises, "
    "Kirschtomate, Kirschtomaten", "tomato-cherry",
    pH=[("4", "4.6", AHEA + ", tomatoes"), ("4.3", "4.9", FDA_MEMORY + ", tomatoes")],
    acid=("citric acid", "0.56", "0.56"), piece="11529:cherry",
    edible=("98", "100", "from memory"),
    notes=["Ciqual's acids are counted as citric. The pH is that of tomatoes, so it counts as low "
           "acid."])

ingredient(
    "vegetables", "dried tomato", "dried vegetable",
    "dried tomatoes, sun-dried tomato, sun-dried tomatoes, tomate séchée, tomates séchées, "
    "getrocknete Tomate, getrocknete Tomaten", "tomato-sun-dried", allergen="not stated",
    piece="11955:piece",
    notes=["Dry ones, not in oil. Many are salted and some sulphited: the label says. " + NO_PH])

ingredient(
    "vegetables", "tomato paste", "produce",
    "tomato pastes, tomato purée, tomato concentrate, concentré de tomate, concentré de tomates, "
    "Tomatenmark, tomate concentrado", "tomato-paste", pH=[("3.5", "4.7", FDA_MEMORY)],
    density="tomato-paste:tbsp|cup", leave=["starch"],
    notes=["Without added salt. Its pH reaches above the law's line: it counts as low acid."])

ingredient(
    "vegetables", "okra", "fruit vegetable",
    "okras, lady's finger, lady's fingers, bhindi, gombo, gombos, Okraschote, Okraschoten", "okra",
    pH=[("5.5", "6.6", FDA_MEMORY + ", cooked")], piece="11278:pods")

ingredient(
    "vegetables", "mushroom", "vegetable",
    "mushrooms, white mushroom, white mushrooms, button mushroom, button mushrooms, champignon, "
    "champignons, champignon de Paris, champiñón", "mushroom-white", pH=[("6", "6.7", FDA)],
    piece="11260:medium", notes=["Cultivated ones. Of gathered mushrooms nothing here holds."])

ingredient(
    "vegetables", "asparagus", "stalk", "asparagus spears, asperge, asperges, Spargel, espárrago",
    "asparagus", pH=[("6", "6.7", FDA)], piece="11011:spear, medium")

ingredient(
    "vegetables", "globe artichoke", "vegetable",
    "globe artichokes, artichoke heart, artichoke hearts, artichaut, artichauts, Artischocke, "
    "Artischocken, alcachofa", "artichoke-globe", pH=[("5.5", "6", FDA)],
    piece="11007:artichoke, medium", notes=["Much of its carbohydrate is inulin."])

ingredient(
    "vegetables", "spinach", "leaf", "épinard, épinards, Spinat, espinaca, espinacas", "spinach",
    pH=[("5.5", "6.8", OTHER_LIST)], leave=["starch"])

ingredient(
    "vegetables", "chard", "leaf",
    "chards, Swiss chard, leaf beet, spinach beet, blette, blettes, Mangold, acelga",
    pH=[("6.17", "6.78", FDA_MEMORY)], edible=("90", "92", "from memory"),
    parts=[("water", "92.7", "92.7", "g"), ("protein", "1.8", "1.8", "g"), ("fat", "0.2", "0.2",
           "g"), ("fibre", "1.6", "1.6", "g"), ("sugars", "1.1", "1.1", "g"), ("ash", "1.6", "1.6",
           "g"), ("sodium", "213", "213", "mg"), ("potassium", "379", "379", "mg")],
    parts_from="USDA SR28 NDB 11147, from memory")

ingredient(
    "vegetables", "fennel bulb", "stalk",
    "fennel bulbs, bulb fennel, Florence fennel, fenouil, fenouils, Knollenfenchel, hinojo",
    "fennel-bulb", pH=[("5.48", "5.88", FDA_MEMORY)], piece="11957:bulb")

ingredient(
    "vegetables", "drumstick pod", "pod", "drumstick pods, moringa pod, moringa pods",
    "drumstick-pod", piece="11620:pod", notes=[NO_PH])

ingredient(
    "vegetables", "caper", "produce",
    "capers, câpre, câpres, Kaper, Kapern, alcaparra, alcaparras", "nasturtium-capers-canned",
    allergen="not stated", density="nasturtium-capers-canned:tbsp, drained", salted=True,
    notes=["From the jar, drained: pickled in vinegar or kept in salt, and as salt as that. "
           + NO_PH])

ingredient(
    "vegetables", "green olive", "produce",
    "green olives, olive verte, olives vertes, grüne Olive, grüne Oliven, aceituna, aceitunas",
    "olive-green-brine", pH=[("3.6", "4.6", FDA_MEMORY + ", fermented")],
    edible=("75", "85", "stoned, from memory"), salted=True, leave=["starch"],
    notes=["From brine, drained and stoned. Its pH reaches above the law's line: it counts as low "
           "acid."])
