// SPDX-License-Identifier: Apache-2.0
#include "grammar/corpus.hpp"

namespace maslin::grammar {
namespace {

constexpr std::string_view orchard =
    R"maslin(## Sharp fruit with roots and a little squash, dark. Good with hard cheese.
framework orchard chutney {
  title   "Orchard chutney"
  version 3
  status  own                            # own, traditional, or tested "source"
  basis   prepared produce               # every "per kilogram" below is per kilogram of this

  produce {
    onion             12 .. 20 %   cut "as fine as you like"
    root               0 .. 20 %   prefer 10 %, cut 12 mm
    squash             0 .. 15 %   cut 8 .. 10 mm, prefer 10 %
    sharp fruit       45 .. 65 %
    mild fruit         0 .. 20 %
    soft fruit         0 .. 10 %
  }

  per kilogram {
    vinegar           420 .. 520 ml   prefer 460 ml    # of 5 % acidity unless said; the planner may move inside the range
    sugar             300 g
    dried fruit        80 .. 120 g
    salt               10 g
    ground allspice     1 tsp
    whole clove         2                # a count
  }

  substitute {
    dried fruit   for sugar    by sugars       full      up to 50 %   # full: all it brings counts; optional: the planner chooses
    lemon juice   for vinegar  by acidity      optional  up to 10 %   only bottled lemon juice
    vinegar       for vinegar  by acetic acid                         # another strength
  }

  limits {
    low acid <= 45 % of prepared produce     # decides what is admitted; garlic, fresh ginger, dates count wherever they are written
    acetic acid >= 21 g per kilogram of prepared produce     # as added
    acetic acid >= 9 g per kilogram of finished product      # as kept
    soluble solids 36 .. 46 %
    route hot fill                       # a keeping route, declared with its floors and source
  }

  method {
    day before { soak dried fruit in 1/4 of vinegar }
    stage soften {
      add onion, root, squash, 1/2 of vinegar
      simmer 25 min covered until "a skewer slides in"
    }
    stage stew {
      add sharp fruit, mild fruit, the rest of vinegar, dried fruit, sugar, salt, all spice
      simmer 20 min
    }
    stage thicken {
      add soft fruit
      reduce to soluble solids 40 %, at least 20 min
    }
    fill hot at 85 °C, headspace 13 mm
  }

  taste {
    sharper { vinegar * 1.10; sugar * 0.90 }
    sweeter { sugar * 1.15 }
  }
  mature 8 weeks
  best within 12 months                  # the author's claim; on a label only once the route's readings are complete
  once opened keep cold, 6 weeks
}

framework quince and ginger chutney refines orchard chutney {
  produce { sharp fruit as quince, apple 50 .. 65 % }    # narrower in class and in range
  per kilogram { ground ginger 8 g }
}

basket "second week of October" {
  squash         1.4 kg gross, trim 34 %         # else the ingredient's own edible portion, marked as an estimate
  apple          3.2 kg gross, spoiled 250 g, from "church orchard"
  pear           600 g prepared, use first
  onion          700 g gross, keep back 100 g
  sultana        400 g, sulphited
  date           to buy, at most 500 g, at 6.80 per kg
}

kitchen "village hall" {
  pan      9 l, 30 cm across, weighs 2.1 kg, stainless
  hob      2.4 kW, electric
  altitude 140 m
  scales   to 5 g up to 5 kg
  spoons   to 1/4 tsp
  jars     6 of 720 ml at 0.90 each, 24 of 282 ml, at 0.55 each, 12 of 190 ml
  store    { cider vinegar 2 l, 5 % acidity; sugar 3 kg; salt 1 kg; ground allspice 40 g }
  law      "Great Britain" as of 2026-03-01
}
)maslin";

constexpr std::string_view quince = R"maslin(class sharp fruit is fruit where highest pH <= 4.2
class low acid is produce where highest pH > 4.5     # by figures, not by the word "fruit"; an unknown pH counts as low acid

ingredient quince is pome fruit {
  also         quinces
  composition  water 83.8 g, glucose 2.5 g, fructose 5.3 g, sucrose 0.9 g, malic acid 0.9 g, fibre 1.9 g   # per 100 g edible
  pH           3.1 .. 3.4
  edible       61 %
  raw          unpleasant                            # or: unsafe, boil at least 10 min, because "unripe ones hold too much of it"
  allergen     none
  source       "database, release, food code"       # where a table has only totals: soluble solids 12 %, total solids 14 %
}

standard jam in "Great Britain" as of 2018 {
  reserved name jam
  fruit >= 350 g per kilogram of finished product
  soluble solids >= 60 %
  source "the regulations of that year"
}
)maslin";

constexpr std::string_view october = R"maslin(batch "2026-10-10 a" of orchard chutney version 3 {
  boil 1 {
    used    { squash 0.640 kg prepared; apple 1.805 kg prepared; pear 0.420 kg prepared }
    reading at 40 min              { weight 5.02 kg with pan }
    filled at 88 °C                { 9 of 282 ml, 2 of 190 ml }
    reading 26 h after filling     { pH 3.7 by meter, buffers 4 and 7 }
  }
  note "Skins set early; stirred from 30 min on."
}
)maslin";

// What the samples above leave out.
constexpr std::string_view store_room = R"maslin(use "units.maslin"
use “shared/roots.maslin”
let syrup = 350 ml per kilogram
let half syrup = (syrup + 20 g) * 1/2 - 3 g / 2
let plain = syrup
unit tsp = 5 ml
unit US cup = 236.6 ml, also US cups
unit imp fl oz = 28.4 ml
unit US fl oz = 29.6 ml
unit cup could be US cup, imp cup, also cups
unit fl oz could be US fl oz, imp fl oz
unit glug is volume, also glugs, slosh
unit % = 0.01
class root is produce, vegetable where highest pH >= 4.6 and lowest pH > 4.5 {
  usually carrot
  also roots, “Rüben”
  note "Beetroot too."
}
class crème fraîche where pH ≤ 4.6 and pH ≥ 3 and water < 80 % and fat = 30 %
class bare
class open {}
ingredient "cream of tartar" {
  composition potassium 8 g, from "one table", tartaric acid at least 60 g, from “another”
  soluble solids 90 %, total solids 95 %, from "a third", acetic acid 0 %, dry weight 99 %
  sugars 0 g; acidity 50 %; density 0.9 kg per l; piece 3 g; weight 4 g
  pungency 0 .. 3; ash alkalinity 8.2 .. 10.8 mmol per 100 g, from "two tables"
  raw unsafe, boil at least 10 min, because "of the beans"
  raw unpleasant, because "it puckers"
  allergen not stated
  compound
}
ingredient brown sauce { made of tomato, malt vinegar }
ingredient green sauce { made of parsley, "cream of tartar"; compound }
kitchen { law "Great Britain" as of 2018 }
ingredient onion is root {
  allergen celery, mustard
  source "one", "two",
         # a remark between
         "three"
}
framework cabbage relish {
  title "Cabbage – sharp"; version 1
  status tested "the village's own trials"
  status traditional
  note "Keep the lid on."
  source "hand to hand"
  produce { cabbage 40...60 %; onion 1/4 … ½, prefer 1 1/2 g; carrot 5-10 %; beetroot 3 – 4 %; leek 3 — 4 % }
  per kg {
    vinegar 400 ml, prefer 420 ml, 6 % acidity
    salt at most 20 g per 100 g of cabbage
    sugar (2 g + 3 g)
    honey at most (2 * 3) per kg
    mustard as white mustard 2 tsp
  }
  per kilogram { pepper 1 lb 4 oz }
  substitute { honey for sugar by total solids, full, up to 1 lb 4 oz, only clear honey }
  substitute { a for b by dry weight; a for b by pH; a for b by edible; a for b by density
               a for b by piece; a for b by weight; a for b by pungency; a for b by soluble solids }
  limits { salt 1 h 20 min; vinegar at least 3 g; route boiled, process for hot relish }
  method {
    stage wilt { soak all cabbage in the rest of vinegar; boil 10 min, uncovered, until "soft" }
    fill
  }
  method {
    2 days before {
      salt cabbage, 1/2 of beetroot in salt for 12 .. 24 h, losing 5 .. 10 %
      salt leek at 8 % for 1 day; salt leek at 8 %, losing at most 3 %
      brine the rest of beetroot, carrot at 10 % for at least 24 h
      brine onion at 40 g per kg; brine all root at 10 %, losing 1 .. 2 %
      soak cabbage, leek in the rest of vinegar for 12 h
      macerate cabbage in honey for 1 night; macerate leek in sugar
    }
    stage sour {
      pack cabbage, all root; take out bay, 1/2 of clove
      strain; strain for 12 h; strain keeping 60 .. 80 %; strain for 1 h, keeping 2 kg
      reduce to weight 60 %, at least 20 min, until "it mounds"; reduce to weight 60 % until “thick”
      ferment 3 .. 5 weeks at 18 .. 22 °C until "it is sour"; ferment at least 3 weeks
    }
  }
  method { fill at 85 °C; fill hot; fill, headspace 1 cm; stage cool { simmer 185 °F } }
  once opened keep cold
}
basket {
  3 onions, spoiled 1
  2 US cups, keep back 1 per 4 of them
  carrot 2 kg drained use first to buy
  cabbage 3 kg, at least 1 kg, packs of 500 g, at 2 per kg, at 3 per 100 g
  beetroot 2 fl oz
}
basket week two { }
kitchen {
  pan 8 l, lined copper; hob 2 kW, gas, lost 250 g in 10 min; hob 3 kW
  scales to 1 g, up to 3 kg
}
kitchen my own {}
standard plain jam in "Great Britain" { note "None."; fruit 30 % }
route hot fill { acidity at least 1 % ; source "the book" }
route boiled in "United States" as of 2015 {
  pH <= 4.6
  read pH <= 4.6; read seal; read filling temperature at least 85 °C
  refuse nut, oil, because "no acid gets in"
  refuse egg
  process for hot relish, 10 min up to 300 m, 15 min up to 1800 m, 20 min above,
    jars up to 500 ml, from "a table"
  process for "jam of plums", 5 min above, jars up to 1 l
  recipe for hot relish {
    produce { cabbage 60 .. 70 % }
    per kilogram { vinegar 400 .. 450 ml }
    headspace 13 mm; note "cups as grams"; source "a table"
  }
}
batch "one" of cabbage relish {
  boil 2 {
    used { cabbage 1 kg }
    reading { acidity 1.2 % , by hand; pH 3.6 with pan buffers 4 }
    reading 26 h after filling { pH 3.6 by meter to 0.05, buffers 4 and 7; seal all; seal 8 of 9 }
    filled { 3 of 1/2 l }
    note "done"
  }
}
)maslin";

constexpr std::string_view faulty = R"maslin(framwork cabbage relish {
  produce { cabbage 40 % }
}
framework cabbage relish {
  prodcue { cabbage 40 .. 60 %; { inner { deeper } } }
  produce {
    cabbage 40 .. % ; onion 12 .. ; carrot .. 3 %
    beetroot 1,5 kg
    beetroot -1.5 kg; leek - 2 %; leek 2e3 g; leek 1.5E-3 g, leek .5 g
    "unclosed 12 %
    „Rote Bete” 12 %; «chou» 3 %; “chou" 3 %
    onion 12 .. 20 %,
  per kilogram { salt 1 g }
  taste { sharper { vinegar * ; vinegar 2 } milder }
}}
} ;; ;
basket "week" {
  apple 3 kg, gross, trim, 3 kg
  pear in syrup 3 kg
  apple 3 kg @ £ 3 ?
ingredient pear is {
}
ingredient pear { pH 3..4..5
kitchen "village hall" {
  pan 9 l, 30 cm wide
  jars 6 of, 24 of 282 ml at each, 3 of 190 ml at 0.5
  store { sugar
batch "one" of pear jam version 3 {
  boil { }
  boil 1 { reading at { } filled at 88 { 9 } }
batch "two" of pear jam version 4 {
)maslin";

}  // namespace

std::vector<std::string_view> sound_texts() { return {orchard, quince, october, store_room}; }

std::vector<std::string_view> small_texts() {
  return {
      "",
      " ",
      "\n",
      "\r\n",
      "\r",
      "\t \t",
      ";",
      ";;\n;",
      "}",
      "{",
      "}{",
      "{}",
      "{{{}",
      "# only a comment",
      "## only documentation\n# and a comment\r\n### three\n#",
      "#\rstill the comment",
      "\xEF\xBB\xBF",
      "\xEF\xBB\xBFlet a = 3\n",
      "let a = 3\n\xEF\xBB\xBF",
      "\n\xEF\xBB\xBFlet a = 3",
      "let",
      "let a",
      "let a =",
      "let a = 3 +",
      "let a = (3",
      "let a = (3))",
      "let a = ((3 + b) * (2 / c)) - -3 g",
      "let a = 3 ; let b = a-3\r\nlet c = a - 3;",
      "let a = 3 4",
      "lets a = 3",
      "let of = 3",
      "let a of b = 3",
      "let crème fraîche = ½ l",
      "let cre\xCC\x80me = 3 ¼ l ⅞ g",
      "let \xCC\x80me = 3",
      "let яблоко = 3 кг",
      "let 林檎 = 3",
      "let cook's own-grown n2 = 1 1/2 tsp",
      "let cook’s = 1  1/2 tsp",
      "let a = 1 1/ 2",
      "let a = 1.2.3",
      "let a = 1. 2",
      "let a = 1,234,5.6 kg",
      "let a = 12 %, 3",
      "let a = 1e5x",
      "let a = 1e5 x",
      "let a = - 5",
      "let\u00A0a\u00A0=\u00A03\u00A0g",
      "let a = 3 g ## said after\nlet b = 2 # and here",
      "use \"a.maslin",
      "use \"a.maslin\n\"",
      "use \"a # no comment\" # a comment",
      "use “a.maslin\"",
      "use „„„«««“”",
      "use a",
      "use \"a\" use \"b\"",
      "class a { also b",
      "class a { also b }\nclass c {",
      "class a { also b } c",
      "class a {\nframework b { }\n",
      "class a where b",
      "class a where b >= 3 and",
      "class a is b,\n  c,\n  # between\n  d",
      "class a is b,\n\nclass c",
      "class a is b,",
      "unit cup could be",
      "unit cup could be also",
      "unit cup could be a, also b, c",
      "unit US = 3 g",
      "unit US gross = 3 g",
      "unit of = 3 g",
      "framework a",
      "framework a\n{ }",
      "framework a { produce { onion 12 ..",
      "framework a { produce { onion 12 .. 20 %\n  limits { salt 3 %\n  method { fill\n}\n",
      "framework a { produce { produce 3 %; method 4 %; per 3 } }",
      "framework a { produce { basket 3 %; basket { ",
      "framework a { prodcue { onion 12 % } } }",
      "framework a { prodcue { onion 12 %\n",
      "framework a { method { stage b { add c\n taste { d { e * 2 } } } }",
      "framework a { method { day before {} day after {} stage {} stage b } }",
      "framework a { method { days before { } 2 day before { } 2 days before {\nstage b { } } }",
      "framework a { method { stage b { salt c; salt c in; salt c at; salt c in d for; brine c in "
      "d } } }",
      "framework a { method { stage b { strain keeping; strain for; take c; take out; pack; "
      "macerate c } } }",
      "framework a { method { stage b { ferment; ferment 3 weeks at; ferment 3 weeks until; soak "
      "c, in d } } }",
      "framework a { limits { b <= ; c ≤ 3; d 3 ≥ 4; route; route b 3 } }",
      "framework a { substitute { b for c; b by d; b for c by e; b for c by acetic } }",
      "framework a { per kg { b 3 g prefer 4 g, 5 % acidity; c 3 g 5 % acidity } }",
      "framework a { per { b 3 g } }",
      "framework a { title; title b; version; version b; status mine; mature; }",
      "framework a { once opened keep cold, ; best within 3 }",
      "framework a refines b c refines d { }",
      "ingredient a { pH 3 .. 4, 5; composition; composition b; raw; raw unsafe, boil, because }",
      "ingredient a { allergen; allergen none, b; note; source \"a\", ; acetic 3; acetic acid }",
      "basket \"a\" { b 3 kg gross prepared; c to; d 3 kg,, trim 3 %; 3; 3 of e; f }",
      "basket \"a\" { b 3 kg 4 g trim 5 % keep 3 at 3 at 3 per kg packs 3 }",
      "basket \"a\" { b 2 l 5 % acidity }",
      "kitchen { pan 9 l 3 cm across; hob; hob 2 kW, lost; altitude high; scales 5 g; spoons to 3; "
      "jars of 3 }",
      "kitchen { store sugar 3 kg } store { }",
      "standard a in \"b\" as of 2026-3- { }\nkitchen { law \"b\" as of; law \"c\" as 2026-01-01 }",
      "ingredient a { made; made of; made of b,; compound b; compound }",
      "batch \"a\" of b { boil 1 { reading { seal; seal 3; seal 3 of; seal all 3; pH 3 by to 4 } } "
      "}",
      "standard a \"b\" { }\nstandard a in \"b\" as 2018 { }\nroute { }\nroute a { reserved a }",
      "route a in b { read; read b <=; refuse; refuse because; process; process 1 min up; process "
      "1 min above, jars }",
      "route a { recipe for b { produce; headspace; } recipe b { }",
      "route a { recipe for b {\nkitchen c {",
      "batch of a { }\nbatch \"b\" a { }\nbatch \"b\" of a version { }",
      "basket a {\nbatch \"b\" of c version 3 { note \"d\" }",
      "basket a {\nbasket {\nkitchen b {\ningredient c is d, e {\nframework f refines g {",
      "batch \"a\" of b { boil 1 { reading { pH; pH 3 ## said\nkitchen { } }",
      "batch \"a\" of b { boil 1 { reading {\nbasket {",
      "batch \"a\" of b { boil 1 { filled { 3\nkitchen { } }",
      "batch \"a\" of b { boil 1 { filled {\nkitchen { }",
      "batch \"a\" of b { boil 1 {\nkitchen { }",
      "route a {\nkitchen { }",
      "framework a { per kg {\nsubstitute {\nper kg { b 3 }",
      "framework a { taste {\ntaste { b {\nlimits { } }",
      "framework a { method { stage b { stir ## said\n} } }",
      "framework a { method { stage b { } ## said\nstage c ## said\n } }",
      "ingredient a { note \"b\" }",
      "basket { apple 3 kg gros,\n  trim 3 %,\n  # said\n  spoiled 3 g\n pear 3 kg }",
      "basket { apple 3 kg gros,\n## said\npear 3 kg, ## said\npear gros,; pear gros,\n}",
      "basket { apple 3 kg gros,\nbasket {\n}",
      "basket { apple 3 kg, # said\n pear 3 kg,\n}\nbasket { apple 3 kg,; pear 3 kg, } , , use",
      "framework a { produce { onion 12 %,\n root 3 %,,\n squash,\n },\n limits { },\n}",
      "let a = \x01\x7F \u200B$",
      "let a = 3 🍐 g",
      faulty,
  };
}

}  // namespace maslin::grammar
