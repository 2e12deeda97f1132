# SPDX-License-Identifier: Apache-2.0
"""How an ingredient of the table is written down."""


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
    "squashes": "Squashes, gourds, pumpkin, courgette and cucumber.",
    "brassicas": "Cabbages and their kin.",
    "vegetables": "Beans, peppers, tomatoes and other vegetables.",
    "orchard_fruit": "Pome fruit and stone fruit.",
    "soft_fruit": "Berries, currants, grapes, rhubarb.",
    "citrus": "Citrus fruit, its juice and its peel.",
    "southern_fruit": "Figs, melons and other fruit of warm countries.",
    "dried_fruit": "Dried fruit.",
    "sweeteners": "Sugars, syrups and honey.",
    "acids": "Vinegars, bottled juices and citric acid.",
    "seasonings": "Salts, water, and other liquids and seasonings.",
    "spices": "Spices and herbs, dry, and fresh ginger.",
    "herbs": "Fresh herbs.",
    "nuts": "Nuts and oily seeds.",
    "thickeners": "Flours, pectin, and what else makes thick.",
}

ENTRIES = []


def ingredient(topic, name, classes, also="", keys="", pH=None, allergen="none", **more):
    entry = {
        "topic": topic, "name": name, "classes": split(classes), "also": split(also),
        "keys": split(keys), "pH": pH, "allergen": allergen, "without": [], "drop": [], "keep": [],
        "leave": [], "acid": None, "acids_from_table": True, "parts": [], "parts_from": None,
        "edible": None, "density": None, "piece": None, "raw": [], "notes": [], "sources": [],
        "pungency": None, "starch_by_difference": False, "salted": False, "rest": None,
        "compound": False,
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
SCOVILLE = "several published lists of Scoville heat units, of the dry pod"
SWEET = ("0", "100", SCOVILLE)
ANY_POD = ("0", "1463700", SCOVILLE + ", of any kind")
BITTER = "Throw away any that tastes bitter: cooking does not remove what makes it so."
SULPHITES = "Many packs are sulphited and many are not: the label says."
KERNELS = "Weights are without stones. The kernels are not for eating."
NO_PH = "No published pH is at hand, so it counts as low acid."
TRACE_ACIDS = "Ciqual's trace of acids is not believed; no acids are given."
