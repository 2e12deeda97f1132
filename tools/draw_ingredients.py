#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Draws stdlib/ingredients/*.maslin from data/*.csv and tools/ingredients_table.py.

  tools/draw_ingredients.py           write the files
  tools/draw_ingredients.py --check   write nothing; exit 1 if a file on disk differs

How a figure is drawn. Every component takes all rows the entry names, of every database, and
becomes a range that holds them all. Left out are values below the limit of detection or a trace,
unless nothing else is there (then the component is not listed); what the table drops, with its
reason; and a value a factor of three away from two others or more that agree. What is left out for
that last reason stands in the entry's notes. A row that has the sugars only as a total shares it
out as the other rows of the ingredient do. Figures are rounded to 0.01 g, ranges outwards.
"""

import csv
import decimal
import pathlib
import re
import sys
import textwrap

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent))
sys.dont_write_bytecode = True
import ingredients_table as table  # noqa: E402

ROOT = pathlib.Path(__file__).resolve().parent.parent
OUT = ROOT / "stdlib" / "ingredients"
WIDTH = 100
FIELD = 13  # "composition" and two blanks

D = decimal.Decimal
NOISE = {"g": D("0.3"), "mg": D(40)}  # differences up to this are never "a factor of three"
SHOWN = D("0.05")  # g: a component that reaches this nowhere is not listed
SUM_SLACK = D(3)

# CSV column, name in the language, unit, part of the sum of 100 g
PROXIMATE = [("water_g", "water"), ("protein_g", "protein"), ("fat_g", "fat"),
             ("fibre_g", "fibre"), ("starch_g", "starch")]
SUGARS = [("glucose_g", "glucose"), ("fructose_g", "fructose"), ("sucrose_g", "sucrose"),
          ("maltose_g", "maltose")]
OTHERS = [("polyols_g", "polyols"), ("alcohol_g", "alcohol")]
MINERALS = [("sodium_mg", "sodium"), ("potassium_mg", "potassium")]

RESERVED = {"of", "for", "by", "in", "as", "is", "at", "to", "from", "where", "refines", "until",
            "only", "version"}


class Problem(Exception):
    pass


# ---- Reading ------------------------------------------------------------------------------------

def rows_of(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def food_id(row):
    database, code = row["source_db"], row["source_food_id"]
    if database.startswith("USDA"):
        return "USDA SR28 " + code
    if database.startswith("Ciqual"):
        return "Ciqual 2020 " + code
    return "CoFID 2015 " + code


def flagged(row, column):
    """Below detection or a trace: a bound, not a measurement."""
    return re.search(rf"(^|;){column}(<|=tr|=N)", row["flags"]) is not None


class Data:
    def __init__(self):
        self.rows = rows_of(ROOT / "data" / "composition.csv")
        self.weights = rows_of(ROOT / "data" / "household_weights.csv")
        self.ash = rows_of(ROOT / "data" / "ash_alkalinity.csv")
        self.ph = {row["item"]: row for row in rows_of(ROOT / "data" / "ph_of_foods.csv")}

    def foods(self, entry):
        found = [row for key in entry["keys"] for row in self.rows if row["key"] == key]
        kept = [row for row in found if food_id(row) not in entry["without"]]
        for name in list(entry["without"]) + [name for name, _ in entry["drop"]]:
            if name not in map(food_id, found):
                raise Problem(f"{entry['name']}: no row {name}")
        if entry["keys"] and not kept:
            raise Problem(f"{entry['name']}: no rows for {entry['keys']}")
        return kept


# ---- Numbers ------------------------------------------------------------------------------------

def rounded(value, places, up):
    way = decimal.ROUND_CEILING if up else decimal.ROUND_FLOOR
    return value.quantize(D(1).scaleb(-places), rounding=way)


def nearest(value, places):
    """Conversions carry digits that mean nothing; a figure with few digits stays as printed."""
    return round(value, places) if -value.as_tuple().exponent > places else value


def number(value):
    text = format(value, "f")
    return text.rstrip("0").rstrip(".") if "." in text else text


def spread(low, high, unit, places=2):
    low, high = rounded(low, places, False), rounded(high, places, True)
    unit = " " + unit if unit else ""
    return number(low) + unit if low == high else f"{number(low)} .. {number(high)}{unit}"


# ---- One component out of several sources -------------------------------------------------------

def near(one, other, noise):
    return abs(one - other) <= noise or max(one, other) <= 3 * min(one, other)


def without_strays(values, noise):
    """Splits (value, food) pairs into those that agree and those a factor of three from all others.

    A value is a stray only where the others, two at least, agree among themselves."""
    if len(values) < 3:
        return values, []
    stray = []
    for pair in values:
        rest = [value for other in values if other is not pair for value in [other[0]]]
        if near(min(rest), max(rest), noise) and not any(near(pair[0], r, noise) for r in rest):
            stray.append(pair)
    return [pair for pair in values if pair not in stray], stray


def places_of(value):
    return max(1, -value.as_tuple().exponent)


def without_copies(values):
    """Drops a value that is another one, only printed with fewer digits."""
    def copy(value):
        return any(places_of(other) > places_of(value) and round(other, places_of(value)) == value
                   for other, _ in values)

    return [pair for pair in values if not copy(pair[0])]


class Component:
    def __init__(self, name, low, high, unit="g"):
        self.name, self.low, self.high, self.unit = name, low, high, unit

    def text(self):
        places = 0 if self.unit == "mg" else 2
        return f"{self.name} {spread(self.low, self.high, self.unit, places)}"

    def middle(self):
        return (self.low + self.high) / 2

    def is_bound(self):
        """Anything from none up: the whole carbohydrate by difference is named."""
        return self.name == "sugars" and self.low == 0


def known(entry, row, column):
    return bool(row[column]) and (food_id(row), column) not in entry["drop"]


def shared_total(entry, foods, row, column):
    """A row with the total of sugars alone shares it out as the rows with the kinds do."""
    kinds = [kind for kind, _ in SUGARS]
    if any(row[kind] for kind in kinds) or not known(entry, row, "sugars_total_g"):
        return None
    models = [model for model in foods if all(known(entry, model, kind) for kind in kinds[:3])]
    sums = sum(D(model[kind] or 0) for model in models for kind in kinds)
    if not sums:
        return None
    share = sum(D(model[column] or 0) for model in models) / sums
    return round(D(row["sugars_total_g"]) * share, 2)


def component(entry, foods, column, name, strays, bounds=False, least=SHOWN):
    """The range over all sources, or None when nothing is known or worth listing."""
    unit = "mg" if column.endswith("_mg") else "g"
    values = []
    for row in foods:
        if known(entry, row, column) and (bounds or not flagged(row, column)):
            values.append((nearest(D(row[column]), 2), food_id(row)))
        elif (column, name) in SUGARS:
            share = shared_total(entry, foods, row, column)
            values += [(share, food_id(row))] if share is not None else []
    if name not in entry["keep"]:
        values, stray = without_strays(values, NOISE[unit])
        strays += [(name, value, unit, food) for value, food in stray]
    if not values:
        return None
    values = without_copies(values)
    low, high = min(value for value, _ in values), max(value for value, _ in values)
    if unit == "g" and high < least:
        return None
    return Component(name, low, high, unit)


def difference_of(row):
    """Starch where a table has only carbohydrate by difference: what is neither fibre nor sugar."""
    return D(row["carb_g"]) - D(row["fibre_g"]) - D(row["sugars_total_g"] or 0)


def not_fibre(row):
    """The carbohydrate that is not fibre; only SR28 counts the fibre in."""
    fibre = D(row["fibre_g"]) if "incl. fibre" in row["basis"] else D(0)
    return D(row["carb_g"]) - fibre


def sugars_of_unknown_kind(entry, foods, strays):
    """The total, be it nothing; where no table has it, none up to all that is not fibre."""
    total = component(entry, foods, "sugars_total_g", "sugars", strays, least=D(0))
    if total:
        return [total]
    most = [not_fibre(row) for row in foods
            if known(entry, row, "carb_g") and known(entry, row, "fibre_g")]
    return [Component("sugars", D(0), max(most))] if most else []


def composition(entry, foods):
    """The components in order, and what was left out as a stray."""
    strays, parts = [], []

    def take(column, name):
        part = component(entry, foods, column, name, strays)
        if part:
            parts.append(part)
        return part

    for column, name in PROXIMATE:
        if name == "starch" and entry["starch_by_difference"]:
            values = [difference_of(row) for row in foods if row["carb_g"]]
            parts.append(Component("starch", min(values), max(values)))
        else:
            take(column, name)
    kinds = [take(column, name) for column, name in SUGARS]
    if not any(kinds):
        parts += sugars_of_unknown_kind(entry, foods, strays)
    for column, name in OTHERS:
        take(column, name)
    if entry["acid"]:
        kind, low, high = entry["acid"]
        parts.append(Component(kind, D(low), D(high)))
    elif entry["acids_from_table"]:
        acids = component(entry, foods, "organic_acids_g", "organic acids", strays)
        if acids and acids.low > 0:
            parts.append(acids)
    take("ash_g", "ash")
    for column, name in MINERALS:
        part = component(entry, foods, column, name, strays) or component(
            entry, foods, column, name, [], bounds=True)
        if part:
            parts.append(part)
    for name, low, high, unit in entry["parts"]:
        fixed = Component(name, D(low), D(high), unit)
        places = [index for index, part in enumerate(parts) if part.name == name]
        if places:
            parts[places[0]] = fixed
        else:
            parts.insert(len([part for part in parts if part.unit == "g"]), fixed)
    return [part for part in parts if part.name not in entry["leave"]], strays


def salt_of(row):
    """Added salt: the sodium as sodium chloride (58.44 g for 22.99 g, molar masses)."""
    return D(row["sodium_mg"]) * D("58.44") / D("22.99") / 1000


def salted(foods, parts):
    """Salt by the sodium, and as ash what is left of it, so that neither is counted twice."""
    rows = [row for row in foods if row["sodium_mg"] and row["ash_g"]]
    salts = [salt_of(row) for row in rows]
    rests = [max(D(0), D(row["ash_g"]) - salt) for row, salt in zip(rows, salts)]
    kept = [part for part in parts if part.name not in ("ash", "sodium")]
    grams = len([part for part in kept if part.unit == "g"])
    found = [Component("salt", min(salts), max(salts))]
    if max(rests) >= SHOWN:
        found.append(Component("ash", min(rests), max(rests)))
    return kept[:grams] + found + kept[grams:]


def check_marked(entry, foods):
    """A figure typed by hand says where it comes from."""
    said = bool(entry["parts_from"] or entry["sources"])
    if entry["parts"] and not said and not foods:
        raise Problem(f"{entry['name']}: parts typed by hand, from where?")
    if entry["acid"] and not said:
        kind, low, high = entry["acid"]
        known = [round(D(row["organic_acids_g"]), 2) for row in foods if row["organic_acids_g"]]
        if not {round(D(low), 2), round(D(high), 2)} <= set(known):
            raise Problem(f"{entry['name']}: {kind} typed by hand, from where?")


def residual_note(entry, parts):
    rest = 100 - sum(part.high if part.is_bound() else part.middle() for part in parts
                     if part.unit == "g")
    if abs(rest) <= SUM_SLACK:
        return None
    amount = number(abs(rest).quantize(D(1), rounding=decimal.ROUND_HALF_EVEN))
    if entry["rest"]:
        return f"{amount} g of the 100 g are unnamed: {entry['rest']}."
    if rest > 0 and not any(part.name == "fibre" for part in parts):
        return f"{amount} g of the 100 g are unnamed: no table at hand has the fibre."
    if rest > 0:
        return f"{amount} g of the 100 g are unnamed: carbohydrate by difference, of unknown kind."
    return f"The middles of the ranges are {amount} g over 100 g: the tables do not agree."


# ---- The other statements -----------------------------------------------------------------------

def quoted(text):
    if '"' in text:
        raise Problem(f"a quote within a text: {text}")
    return f'"{text}"'


def name_text(name):
    words = name.split(" ")
    if any(word in RESERVED for word in words):
        return quoted(name)
    if not all(word[:1].isalpha() for word in words):
        raise Problem(f"not a name: {name}")
    return name


def ph_line(entry, data):
    ph = entry["pH"]
    if ph is None:
        return None
    low, high, origins = [], [], []
    for part in ph:
        if isinstance(part, str):
            row = data.ph[part]
            low.append(D(row["ph_low"]))
            high.append(D(row["ph_high"]))
            origins.append(table.PH_SOURCES[row["source"]])
        else:
            low.append(D(part[0]))
            high.append(D(part[1]))
            origins.append(part[2])
    seen = list(dict.fromkeys(origins))
    return [spread(min(low), max(high), ""), "from " + quoted("; ".join(seen))]


def ash_line(entry, data):
    """The alkalinity of the ash, which tables give by the name of the ingredient."""
    found = [row for row in data.ash if row["ingredient"] == entry["name"]]
    if not found:
        return None
    values = [D(row["mmol_per_100_g"]) for row in found]
    origins = dict.fromkeys(row["source"] for row in found)
    return [spread(min(values), max(values), "mmol per 100 g"), "from " + quoted("; ".join(origins))]


def by_hand(figure, unit, places=2):
    """A figure of an entry: (low, high, origin)."""
    low, high, origin = figure
    return [spread(D(low), D(high), unit, places), "from " + quoted(origin)]


def edible_line(entry, foods):
    if entry["edible"] is not None:
        return by_hand(entry["edible"], "%", 0)
    refuse = [(D(row["refuse_pct"]), food_id(row)) for row in foods if row["refuse_pct"]]
    if not refuse:
        return None
    low, high = 100 - max(refuse)[0], 100 - min(refuse)[0]
    codes = list(dict.fromkeys(code.removeprefix("USDA SR28 ") for _, code in refuse))
    return [spread(low, high, "%", 0), "from " + quoted(f"USDA SR28 {', '.join(codes)}, refuse")]


def density_line(entry, data):
    density = entry["density"]
    if density is None:
        return None
    if isinstance(density, tuple):
        return by_hand(density, "g per ml", 3)
    key, pattern = density.split(":")
    found = [row for row in data.weights if row["key"] == key and row["bulk_density_g_per_ml"]
             and re.fullmatch(pattern, row["measure"])]
    if not found:
        raise Problem(f"{entry['name']}: no spoon weight {density}")
    values = [nearest(D(row["bulk_density_g_per_ml"]), 3) for row in found]
    measures = ", ".join(dict.fromkeys(row["measure"] for row in found))
    weight = f"weight of a US {measures}" if len(measures) < 40 else "US spoon and cup weights"
    origin = f"USDA SR28 {found[0]['source_food_id']}, {weight}"
    return [spread(min(values), max(values), "g per ml", 3), "from " + quoted(origin)]


def piece_line(entry, data):
    piece = entry["piece"]
    if piece is None:
        return None
    if isinstance(piece, tuple):
        return by_hand(piece, "g")
    code, measure = piece.split(":")
    found = [row for row in data.weights if row["source_food_id"] == "NDB " + code
             and row["measure"].startswith(measure)]
    if not found:
        raise Problem(f"{entry['name']}: no piece {piece}")
    row = found[0]
    weight = D(row["grams"]) / D(row["amount"])
    label = row["measure"].split(" (")[0].replace('"', " inch")
    return [spread(weight, weight, "g"),
            "from " + quoted(f"USDA SR28 NDB {code}, {label}, edible part")]


def entry_text(entry, data):
    foods = data.foods(entry)
    lines = []

    def put(field, parts):
        text = ", ".join(parts)
        lines.extend(wrapped(field, parts) if len(text) + FIELD + 2 > WIDTH else
                     ["  " + head_of(field) + text])

    if entry["also"]:
        put("also", [name_text(name) for name in entry["also"]])
    check_marked(entry, foods)
    parts, strays = composition(entry, foods)
    if entry["salted"]:
        parts = salted(foods, parts)
    if parts:
        origin = ["from " + quoted(entry["parts_from"])] if entry["parts_from"] else []
        put("composition", [part.text() for part in parts] + origin)
    for field, value in (("pH", ph_line(entry, data)),
                         ("ash alkalinity", ash_line(entry, data)), ("edible", edible_line(entry, foods)),
                         ("density", density_line(entry, data)),
                         ("piece", piece_line(entry, data)),
                         ("pungency", entry["pungency"] and by_hand(entry["pungency"], "", 0))):
        if value:
            put(field, value)
    if entry["raw"]:
        hazard, *why = entry["raw"]
        put("raw", [hazard] + ["because " + quoted(reason) for reason in why])
    put("allergen", [entry["allergen"]])
    if entry["compound"]:
        lines.append("  compound")
    notes = list(entry["notes"])
    if strays:
        notes += [f"Left out, a factor of three from the rest: {name} {number(round(value, 2))} "
                  f"{unit} ({food})." for name, value, unit, food in strays]
    if any(part.is_bound() and part.high > 1 for part in parts):
        notes.append("No table has its sugars: at most the carbohydrate that is not fibre.")
    notes += filter(None, [residual_note(entry, parts)] if parts else [])
    for note in notes:
        for sentence in re.split(r"(?<=\.) (?=[A-Z])", note):
            put("note", [quoted(sentence)])
    sources = [quoted(food_id(row)) for row in foods] + [quoted(text) for text in entry["sources"]]
    if sources:
        put("source", list(dict.fromkeys(sources)))
    head = f"ingredient {name_text(entry['name'])} is {', '.join(entry['classes'])} {{"
    return "\n".join([head, *lines, "}"])


def head_of(field):
    return field.ljust(FIELD - 1) + " "


def wrapped(field, parts):
    """A statement that is too long for a line: it goes on after a comma."""
    lines, line = [], ""
    for index, part in enumerate(parts):
        piece = part + ("," if index + 1 < len(parts) else "")
        joined = f"{line} {piece}" if line else piece
        if line and len(joined) + FIELD + 2 > WIDTH:
            lines.append(line)
            line = piece
        else:
            line = joined
    lines.append(line)
    return ["  " + (head_of(field) if index == 0 else " " * FIELD) + line
            for index, line in enumerate(lines)]


# ---- Files --------------------------------------------------------------------------------------

HEADER = """\
{title}

Drawn by tools/draw_ingredients.py out of data/ and tools/ingredients_table.py: change those, not
this file. Figures are per 100 g of the edible part; a range holds what the sources say. `edible`
and `piece` are kitchen averages, good for shopping until the scales have spoken.

Sources and licences (data/SOURCES.md): USDA National Nutrient Database for Standard Reference,
Release 28, 2015, public domain. Anses 2020, Ciqual French food composition table, reuse with
attribution. McCance and Widdowson's Composition of Foods Integrated Dataset 2015, contains public
sector information licensed under the Open Government Licence v3.0. Others stand in the entries.
"""


def comment(text):
    return "\n".join(("# " + line).rstrip() for line in text.strip().split("\n"))


def declared_classes():
    text = (ROOT / "stdlib" / "classes.maslin").read_text(encoding="utf-8")
    names = re.findall(r"^class (.+?)(?= is | where | \{|$)", text, re.M)
    also = re.findall(r"\balso\s+(.+?)\s*(?:\}|$)", text, re.M)
    return names, [name for line in also for name in line.split(", ")]


def check_ash(data):
    names = {entry["name"] for entry in table.ENTRIES}
    for row in data.ash:
        if row["ingredient"] not in names:
            raise Problem(f"data/ash_alkalinity.csv: no ingredient {row['ingredient']}")


def check_names():
    classes, also = declared_classes()
    seen = {name.casefold(): "a class" for name in classes + also}
    for entry in table.ENTRIES:
        for parent in entry["classes"]:
            if parent not in classes:
                raise Problem(f"{entry['name']}: no class {parent}")
        for name in [entry["name"], *entry["also"]]:
            if name.casefold() in seen:
                raise Problem(f"{name}: names {entry['name']} and {seen[name.casefold()]}")
            seen[name.casefold()] = entry["name"]


def drawn_files(data):
    files = {}
    for topic, title in table.TOPICS.items():
        entries = [entry for entry in table.ENTRIES if entry["topic"] == topic]
        text = comment(HEADER.format(title=title)) + "\n\n"
        files[OUT / f"{topic}.maslin"] = text + "\n\n".join(
            entry_text(entry, data) for entry in entries) + "\n"
    return files


def differences(files):
    found = [path for path, text in files.items()
             if not path.exists() or path.read_text(encoding="utf-8") != text]
    return found + [path for path in sorted(OUT.glob("*.maslin")) if path not in files]


def main(arguments):
    if arguments not in ([], ["--check"]):
        print(textwrap.dedent(__doc__).strip(), file=sys.stderr)
        return 2
    try:
        check_names()
        data = Data()
        check_ash(data)
        files = drawn_files(data)
    except Problem as problem:
        print(f"draw_ingredients: {problem}", file=sys.stderr)
        return 1
    if arguments:
        for path in differences(files):
            print(f"differs from what would be drawn: {path.relative_to(ROOT)}", file=sys.stderr)
        return 1 if differences(files) else 0
    OUT.mkdir(parents=True, exist_ok=True)
    for path, text in files.items():
        path.write_text(text, encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
