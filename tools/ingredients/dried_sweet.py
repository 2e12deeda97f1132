# SPDX-License-Identifier: Apache-2.0
"""Dried fruit, sugars and syrups."""

from .form import (FDA, FDA_MEMORY, NO_PH, SULPHITES, ingredient)

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

ingredient(
    "dried_fruit", "dried apple", "dried fruit",
    "dried apples, dried apple ring, dried apple rings, apple ring, apple rings, pomme séchée, "
    "pommes séchées, getrockneter Apfel, getrocknete Äpfel, Apfelring, Apfelringe", "apple-dried",
    allergen="not stated", density="apple-dried:cup", piece="09011:ring",
    notes=["A piece is one ring. No acids are at hand. " + NO_PH, SULPHITES])

ingredient(
    "dried_fruit", "dried cranberry", "dried fruit",
    "dried cranberries, sweetened cranberry, sweetened cranberries, canneberge séchée, canneberges "
    "séchées, getrocknete Cranberrys", "cranberry-dried-sweetened", allergen="not stated",
    density="cranberry-dried-sweetened:cup",
    notes=["Sweetened before drying, as almost all are: much of the sugar is added. Often oiled. "
           + NO_PH])

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

ingredient(
    "sweeteners", "icing sugar", "sweetener",
    "powdered sugar, confectioners' sugar, sucre glace, Puderzucker, azúcar glas", "sugar-icing",
    density="sugar-icing:(cup|tsp|tbsp).*",
    notes=["A little starch in it keeps it loose, and clouds."])

ingredient(
    "sweeteners", "molasses", "sweetener",
    "black treacle, cane molasses, mélasse, Melasse, melaza", "molasses",
    pH=[("4.9", "5.4", FDA_MEMORY)], allergen="not stated", density="molasses:cup",
    notes=["The kinds of sugar in SR28 are 20 g short of its total. The kinds "
           "stand here. Some is sulphured: the label says."])

ingredient(
    "sweeteners", "golden syrup", "sweetener", "golden syrups, light treacle", "golden-syrup",
    density=("1.4", "1.44", "from memory"))

ingredient(
    "sweeteners", "corn syrup", "sweetener",
    "corn syrups, light corn syrup, sirop de maïs, Maissirup, jarabe de maíz", "corn-syrup-light",
    pH=[("5", "5", FDA_MEMORY)], density="corn-syrup-light:tbsp|cup",
    notes=["What the table calls sugars holds longer chains too."])

ingredient(
    "sweeteners", "maple syrup", "sweetener",
    "maple syrups, sirop d'érable, Ahornsirup, jarabe de arce", "maple-syrup", pH=["Maple syrup"],
    density="maple-syrup:tbsp|cup")

ingredient(
    "sweeteners", "agave syrup", "sweetener",
    "agave syrups, agave nectar, sirop d'agave, Agavendicksaft, jarabe de agave", "agave-syrup",
    density=("1.35", "1.4", "from memory"), leave=["glucose", "sucrose"],
    parts=[("sugars", "70.2", "70.2", "g")],
    notes=["Ciqual's total of sugars; it has no figure for fructose, which is most of them."],
    parts_from="sugars: the total of Ciqual 2020 31089")
