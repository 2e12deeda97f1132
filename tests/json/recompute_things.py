# SPDX-License-Identifier: Apache-2.0
"""Ingredients and classes out of the library's text, and what follows from their figures."""

from fractions import Fraction

from recompute_text import Reader

# Molar mass and number of acid groups; acetic acid is 60.052 g/mol for one.
ACIDS = {'citric acid': (192.124, 3), 'malic acid': (134.087, 2), 'tartaric acid': (150.087, 2),
         'oxalic acid': (90.034, 2), 'lactic acid': (90.078, 1), 'succinic acid': (118.088, 2)}
ACETIC = 60.052
SUGARS = ['glucose', 'fructose', 'sucrose', 'maltose', 'lactose', 'galactose']
PROPERTIES = ['soluble solids', 'total solids', 'acetic acid', 'dry weight',
              'ash alkalinity', 'sugars', 'acidity',
              'pH', 'edible', 'density', 'piece', 'weight', 'water', 'salt', 'pungency']
NONE = (Fraction(0), Fraction(0))
UNKNOWN_PH = (Fraction(14), Fraction(14))


def middle(bounds):
    return (bounds[0] + bounds[1]) / 2


def plus(*parts):
    return sum(part[0] for part in parts), sum(part[1] for part in parts)


def times(bounds, factor):
    return bounds[0] * factor, bounds[1] * factor


def equivalent(acid):
    if acid == 'organic acids':
        return Fraction(9, 10)
    molar, groups = ACIDS[acid]
    return Fraction(round(1000 * ACETIC * groups / molar), 1000)


class Ingredient:
    def __init__(self, name):
        self.name, self.parents, self.composition, self.figures = name, [], {}, {}

    def part(self, substance):
        return self.composition.get(substance, NONE)

    def sugars(self):
        kinds = [self.composition[each] for each in SUGARS if each in self.composition]
        whole = self.composition.get('sugars')
        if not kinds:
            return whole
        total = plus(*kinds)
        if whole is None:
            return total
        return min(total[0], whole[0]), max(total[1], whole[1])

    def acids(self):
        return plus(*[self.part(acid) for acid in [*ACIDS, 'organic acids']])

    def soluble_solids(self):
        if 'soluble solids' in self.figures:
            return self.figures['soluble solids']
        sugars = self.sugars()
        if sugars is None and 'salt' not in self.composition:
            return None
        low, high = plus(sugars or NONE, self.acids(), self.part('polyols'), self.part('ash'),
                         self.part('salt'))
        return low, min(high, Fraction(1))

    def total_solids(self):
        if 'total solids' in self.figures:
            return self.figures['total solids']
        if 'water' not in self.composition:
            return None
        low, high = plus(self.part('water'), self.part('acetic acid'), self.part('alcohol'))
        return max(1 - high, Fraction(0)), max(1 - low, Fraction(0))

    def acidity(self):
        return plus(self.part('acetic acid'),
                    *[times(self.part(acid), equivalent(acid))
                      for acid in [*ACIDS, 'organic acids']])

    def figure(self, name, strength=None):
        """A share by weight (a pH as such); None where no table gives it."""
        if name in ('acetic acid', 'acidity') and strength is not None:
            density = self.figures.get('density')
            return (strength / density[1], strength / density[0]) if density else None
        if name == 'weight':
            return Fraction(1), Fraction(1)
        known = {'pH': lambda: self.figures.get('pH'), 'sugars': self.sugars,
                 'acetic acid': lambda: self.part('acetic acid'), 'acidity': self.acidity,
                 'soluble solids': self.soluble_solids, 'total solids': self.total_solids,
                 'water': lambda: self.composition.get('water'), 'salt': lambda: self.part('salt')}
        return known[name]() if name in known else None

    def needs_strength(self):
        return self.part('acetic acid')[1] >= Fraction(2, 100)


class Class:
    def __init__(self, name):
        self.name, self.parents, self.conditions, self.usually = name, [], [], None


def property_of(statement):
    for name in PROPERTIES:
        if statement.words(*name.split()):
            return name
    raise AssertionError(f'a property is missing at {statement.peek()}')


class Things:
    """What every name means."""

    def __init__(self, units):
        self.reader, self.meaning, self.classes, self.ingredients = Reader(units), {}, [], []
        self.member_cache = {}

    def read(self, statements):
        self.member_cache = {}
        for statement in statements:
            if statement.words('class'):
                self.read_class(statement)
            elif statement.words('ingredient'):
                self.read_ingredient(statement)

    def call(self, name, thing):
        assert name not in self.meaning, f'{name} is there twice'
        self.meaning[name] = thing

    def read_class(self, statement):
        found = Class(statement.name())
        self.call(found.name, found)
        self.classes.append(found)
        if statement.words('is'):
            found.parents = statement.names()
        while statement.words('where') or statement.words('and'):
            end = statement.take().value
            name = property_of(statement)
            sign = statement.take().value
            sign += statement.take().value if statement.peek().value == '=' else ''
            value = self.reader.measure(statement).value
            found.conditions.append((end, name, sign, value))
        for line in statement.block or []:
            if line.words('also'):
                for other in line.names():
                    self.call(other, found)
            elif line.words('usually'):
                found.usually = line.name()

    def read_ingredient(self, statement):
        found = Ingredient(statement.name())
        self.call(found.name, found)
        self.ingredients.append(found)
        if statement.words('is'):
            found.parents = statement.names()
        for line in statement.block:
            if line.words('also'):
                for other in line.names():
                    self.call(other, found)
            elif line.words('composition'):
                self.read_composition(line, found)
            elif line.peek().value not in ('raw', 'allergen', 'made', 'compound', 'note',
                                               'source'):
                self.read_figures(line, found)

    def read_composition(self, line, found):
        while not line.done():
            if line.words('from'):
                line.take()
            else:
                name = line.name()
                low, high, _ = self.reader.range(line)
                found.composition[name] = (low / 100, high / 100)
            line.comma()

    def read_figures(self, line, found):
        while not line.done():
            if line.words('from'):
                line.take()
            else:
                name = property_of(line)
                low, high, _ = self.reader.range(line)
                found.figures['piece' if name == 'weight' else name] = (low, high)
            line.comma()

    def classes_of(self, ingredient):
        if ingredient.name not in self.member_cache:
            found, waiting = set(), list(ingredient.parents)
            while waiting:
                parent = self.meaning[waiting.pop()]
                if parent.name not in found:
                    found.add(parent.name)
                    waiting += parent.parents
            # One class by figures may stand on another, so this goes on until nothing is new.
            grown = True
            while grown:
                more = {each.name for each in self.classes
                        if each.name not in found and self.qualifies(each, ingredient, found)}
                found |= more
                grown = bool(more)
            self.member_cache[ingredient.name] = found
        return self.member_cache[ingredient.name]

    def qualifies(self, each, ingredient, found):
        if not each.conditions:
            return False
        if not all(self.meaning[parent].name in found for parent in each.parents):
            return False
        return all(self.meets(ingredient, *condition) for condition in each.conditions)

    @staticmethod
    def meets(ingredient, end, name, sign, value):
        figure = ingredient.figure(name)
        if figure is None and name == 'pH':
            figure = UNKNOWN_PH
        if figure is None:
            return False
        have = figure[1] if end == 'highest' else figure[0]
        return {'<=': have <= value, '<': have < value,
                '>=': have >= value, '>': have > value}[sign]

    def takes(self, target, ingredient):
        """`target` is a name and, where it is narrowed, the names that it is narrowed to."""
        name, narrowed = target
        thing = self.meaning[name]
        if isinstance(thing, Class):
            good = thing.name in self.classes_of(ingredient)
        else:
            good = thing is ingredient
        return good and (not narrowed or any(self.takes((each, []), ingredient)
                                             for each in narrowed))
