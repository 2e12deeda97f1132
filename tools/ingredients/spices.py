# SPDX-License-Identifier: Apache-2.0
"""Dry spices and dried herbs."""

from .form import (ANY_POD, FDA_MEMORY, SCOVILLE, drop_all, ingredient)

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
    "spices", "fresh ginger", "fresh spice, jam fruit",
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
    density="cayenne:tsp|tbsp", pungency=("30000", "50000", SCOVILLE),
    notes=["Its heat differs from pack to pack."])

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
    "curry-powder", allergen="not stated", compound=True, density="curry-powder:tsp|tbsp",
    notes=["A mixture: mustard, celery and more may be in it, the label says."])

ingredient(
    "spices", "paprika", "spice", "sweet paprika, ground paprika, Paprikapulver, pimentón",
    "paprika",
    density="paprika:tsp|tbsp")

ingredient(
    "spices", "whole allspice", "warm spice",
    "allspice berry, allspice berries, whole pimento, Pimentkorn, Pimentkörner", "allspice",
    piece=("0.03", "0.09", "from memory"), notes=["A piece is one berry."])

ingredient(
    "spices", "cardamom pod", "warm spice",
    "cardamom pods, whole cardamom, gousse de cardamome, gousses de cardamome, Kardamomkapsel, "
    "Kardamomkapseln", "cardamom", piece=("0.15", "0.3", "from memory"),
    notes=["Composition of ground cardamom. Green pods; the black ones are larger and smoky."])

ingredient(
    "spices", "ground cardamom", "warm spice",
    "cardamom powder, cardamome moulue, gemahlener Kardamom", "cardamom",
    density="cardamom:(tsp|tbsp), ground")

ingredient(
    "spices", "star anise", "warm spice",
    "star anises, anis étoilé, badiane, Sternanis, anís estrellado",
    piece=("0.7", "2", "from memory"), notes=["No table at hand has it. A piece is one star."])

ingredient(
    "spices", "juniper berry", "warm spice",
    "juniper berries, juniper, baie de genièvre, baies de genièvre, Wacholderbeere, "
    "Wacholderbeeren, enebro", piece=("0.05", "0.15", "from memory"),
    notes=["Dried. No table at hand has it."])

ingredient(
    "spices", "fenugreek seed", "seed spice",
    "fenugreek seeds, fenugreek, methi, fenugrec, Bockshornklee, alholva", "fenugreek-seed",
    density="fenugreek-seed:tsp|tbsp")

ingredient(
    "spices", "anise seed", "seed spice",
    "anise seeds, aniseed, aniseeds, anis vert, Anissamen, anís", "anise-seed",
    density="anise-seed:(tsp|tbsp), whole")

ingredient(
    "spices", "nigella seed", "seed spice",
    "nigella seeds, nigella, kalonji, black onion seed, black onion seeds, nigelle, Schwarzkümmel",
    density=("0.5", "0.65", "from memory"), notes=["No table at hand has it."])

ingredient(
    "spices", "poppy seed", "seed spice",
    "poppy seeds, graine de pavot, graines de pavot, Mohn, Mohnsamen, semilla de amapola",
    "poppy-seed", density="poppy-seed:tsp|tbsp")

ingredient(
    "spices", "ground coriander", "warm spice",
    "coriander powder, coriandre moulue, gemahlener Koriander", "coriander-seed",
    density=("0.33", "0.45", "from memory"), notes=["Composition of the seed."])

ingredient(
    "spices", "ground cumin", "warm spice",
    "cumin powder, cumin moulu, gemahlener Kreuzkümmel", "cumin-seed",
    density=("0.38", "0.5", "from memory"), notes=["Composition of the seed."])

ingredient(
    "spices", "white pepper", "hot spice",
    "ground white pepper, poivre blanc, weißer Pfeffer, pimienta blanca", "white-pepper",
    density="white-pepper:(tsp|tbsp), ground", notes=["A spoon of it is ground."])

ingredient(
    "spices", "dried chilli", "hot spice",
    "dried chillies, dried chili, dried chilies, dry chilli, dry chillies, piment sec, piments "
    "secs, getrocknete Chili, getrocknete Chilis, guindilla seca", "chilli-dried",
    piece="11962:pepper", pungency=ANY_POD,
    notes=["Heat differs by kind a thousandfold: name the kind. A piece is a small one."])

ingredient(
    "spices", "chilli flakes", "hot spice",
    "chilli flake, chili flakes, chili flake, crushed chilli, crushed chillies, red pepper flakes, "
    "Chiliflocken, piment en flocons", "chilli-dried", density=("0.3", "0.42", "from memory"),
    pungency=ANY_POD, notes=["Composition of dried chilli. Heat differs from pack to pack."])

ingredient(
    "spices", "chilli seasoning", "hot spice",
    "chilli seasonings, chili seasoning, chilli powder blend, chili powder blend",
    "chilli-powder-blend", allergen="not stated", compound=True, density="chilli-powder-blend:tsp|tbsp",
    salted=True, leave=["organic acids"], pungency=ANY_POD,
    notes=["The American mixture of chilli, cumin, oregano, garlic and salt. In Britain `chilli "
           "powder` is chilli alone: see cayenne."])

ingredient(
    "spices", "smoked paprika", "spice",
    "smoked paprikas, pimentón ahumado, pimentón de la Vera, geräuchertes Paprikapulver, paprika "
    "fumé", "paprika", density="paprika:tsp|tbsp", notes=["Composition of plain paprika."])

ingredient(
    "spices", "saffron", "spice",
    "saffrons, saffron thread, saffron threads, safran, Safranfaden, Safranfäden, azafrán",
    "saffron", density="saffron:tsp|tbsp")

ingredient(
    "spices", "garlic powder", "spice",
    "dried garlic, granulated garlic, ail en poudre, Knoblauchpulver, ajo en polvo",
    "garlic-powder", density="garlic-powder:tsp|tbsp",
    notes=["Dry. Most of its carbohydrate is fructan."])

ingredient(
    "spices", "onion powder", "spice",
    "granulated onion, oignon en poudre, Zwiebelpulver, cebolla en polvo", "onion-powder",
    density="onion-powder:tsp|tbsp")

ingredient(
    "spices", "dried onion", "spice",
    "dried onions, onion flakes, onion flake, oignon séché, oignons séchés, Röstzwiebel, "
    "Trockenzwiebel, Trockenzwiebeln", "onion-dried-flakes", density="onion-dried-flakes:tbsp|cup",
    notes=["Dry. Soaked, it is an onion again, and counts as such nowhere here."])

ingredient(
    "spices", "pickling spice", "spice",
    "pickling spices, mixed pickling spice, épices à marinade, Einlegegewürz, Gurkengewürz",
    allergen="not stated", compound=True, density=("0.35", "0.5", "from memory"),
    notes=["A mixture of whole spices: mustard and celery are in most of them, the label says. No "
           "table has it."])

ingredient(
    "spices", "mixed spice", "warm spice",
    "mixed spices, pudding spice, pumpkin pie spice, quatre-épices", allergen="not stated",
    compound=True, density=("0.38", "0.5", "from memory"),
    notes=["A mixture of ground warm spices, which differs from maker to maker. No table has it."])

ingredient(
    "spices", "bay leaf", "dried herb",
    "bay leaves, dried bay leaf, dried bay leaves, feuille de laurier, feuilles de laurier, "
    "Lorbeerblatt, Lorbeerblätter, hoja de laurel", "bay-leaf",
    density="bay-leaf:(tsp|tbsp), crumbled", piece=("0.1", "0.3", "from memory"),
    leave=["starch"],
    notes=["A spoon of it is crumbled. Ciqual counts all carbohydrate as sugars: left out."],
    drop=drop_all("Ciqual 2020 11053", ["sugars_total_g"]))

ingredient(
    "spices", "dried oregano", "dried herb",
    "oregano, origan, Oreganum, orégano", "oregano", density="oregano:tsp, (leaves|ground)")

ingredient(
    "spices", "dried thyme", "dried herb",
    "thyme, thym, Thymian, tomillo", "thyme-dried",
    density="thyme-dried:(tsp|tbsp), (leaves|ground)")

ingredient(
    "spices", "dried rosemary", "dried herb",
    "rosemary, romarin, Rosmarin, romero", "rosemary-dried", density="rosemary-dried:tsp|tbsp",
    drop=[("CoFID 2015 13-882", "carb_g")],
    notes=["CoFID's carbohydrate is twice that of the others and left out."])
