# SPDX-License-Identifier: Apache-2.0
"""From a framework, a basket and a kitchen as texts to the rows of the linear programme, in exact
fractions, by what the language means and not by how the program does it."""

from fractions import Fraction

from recompute_things import Class, middle, property_of

THOUSAND = 1000
ALWAYS_COMPUTED = {'soluble solids', 'total solids', 'sugars', 'salt'}
PROPERTIES_OF_LIMITS = ALWAYS_COMPUTED | {'acetic acid', 'acidity', 'pH', 'water activity'}


class Part:
    """A share, an addition, a substitution or a limit."""

    def __init__(self, place, **fields):
        self.place = place
        self.__dict__.update(fields)


class Framework:
    def __init__(self, reader, statement):
        self.reader = reader
        self.place = (statement.peek().line, statement.peek().column)
        self.name = statement.name()
        self.shares, self.additions, self.substitutions, self.limits = [], [], [], []
        readers = {'produce': self.read_share, 'per': self.read_addition,
                   'substitute': self.read_substitution, 'limits': self.read_limit}
        for section in statement.block:
            for line in section.block or []:
                readers[section.peek().value](line)

    @staticmethod
    def target(line):
        name = line.name()
        return name, line.names() if line.words('as') else []

    def preferred(self, line):
        line.comma()
        return self.reader.measure(line) if line.words('prefer') else None

    def read_share(self, line):
        target = self.target(line)
        low, high, _ = self.reader.range(line)
        prefer = self.preferred(line)
        self.shares.append(Part(line.place, target=target, low=low or Fraction(0),
                                high=Fraction(1) if high is None else high,
                                prefer=prefer.value if prefer else None))

    @staticmethod
    def form(measure):
        """How it is measured, and how many g, ml or pieces one base unit of it is."""
        if measure.dimension == 'mass':
            return ('weight', THOUSAND) if measure.per == 'mass' else ('weight', 1)
        if measure.dimension == 'volume':
            return ('volume', THOUSAND) if measure.per == 'mass' else ('volume', 1)
        return ('weight', THOUSAND) if measure.whole else ('count', 1)

    def read_addition(self, line):
        target = self.target(line)
        low, high, measure = self.reader.range(line)
        how, factor = self.form(measure)
        prefer = self.preferred(line)
        strength = Fraction(5, 100)
        line.comma()
        if line.peek().kind == 'number':
            strength = self.reader.measure(line).value
        self.additions.append(Part(line.place, target=target, how=how, strength=strength,
                                   low=(low or 0) * factor, high=high * factor,
                                   prefer=prefer.value * factor if prefer else None))

    def read_substitution(self, line):
        donor = line.name()
        assert line.words('for')
        replaced = line.name()
        assert line.words('by')
        part = Part(line.place, donor=donor, replaced=replaced, by=property_of(line), full=False,
                    cap=Fraction(1), only=[])
        while not line.done():
            if line.words('full'):
                part.full = True
            elif line.words('up', 'to'):
                part.cap = self.reader.measure(line).value
            elif line.words('only'):
                part.only = line.names()
            else:
                assert line.comma() or line.words('optional')
        part.slot = f'{donor} for {replaced}'
        self.substitutions.append(part)

    def read_limit(self, line):
        words = []
        while line.peek().kind == 'word' and line.peek().value != 'at':
            words.append(line.take().value)
        name = ' '.join(words)
        sign = ''
        while line.peek().value in ('<', '=', '>', '<=', '>='):
            sign += line.take().value
        if sign:
            measure = self.reader.measure(line)
            low = measure.value if '>' in sign else None
            high = measure.value if '<' in sign else None
        else:
            low, high, measure = self.reader.range(line)
        self.limits.append(Part(line.place, name=name, low=low, high=high, whole=measure.whole,
                                is_property=name in PROPERTIES_OF_LIMITS))


class Supply:
    def __init__(self, key, place):
        self.key, self.place, self.available = key, place, Fraction(0)
        self.name, self.origin, self.acidity, self.first, self.sulphited, self.price = key


class Line:
    """A line of a basket or a store."""

    def __init__(self, model, line):
        self.reader, self.line, self.place = model.reader, line, line.place
        self.weight, self.gross, self.trim, self.spoiled, self.kept = None, False, None, 0, 0
        self.first = self.sulphited = self.to_buy = False
        self.most = self.price = self.acidity = None
        count = line.take().value if line.peek().kind == 'number' else None
        if count is not None:
            self.place = (line.peek().line, line.peek().column)
        self.ingredient = model.things.meaning[line.name()]
        if count is not None:
            self.weight = count * middle(self.ingredient.figures['piece'])
        elif line.words('to', 'buy'):
            self.to_buy = True
        else:
            self.weight = self.grams()
            self.gross = line.words('gross')
            if not self.gross:
                line.words('prepared')
        while not line.done():
            if not line.comma():
                self.clause()

    def grams(self):
        measure = self.reader.quantity(self.line)
        if measure.dimension == 'volume':
            return measure.value * middle(self.ingredient.figures['density'])
        return measure.value

    def clause(self):
        line = self.line
        if line.words('trim'):
            self.trim = self.reader.measure(line).value
            self.gross = True
        elif line.words('spoiled'):
            self.spoiled = self.grams()
        elif line.words('keep', 'back'):
            self.kept = self.grams()
        elif line.words('at', 'most'):
            self.most = self.grams()
        elif line.words('at'):
            price = line.take().value
            assert line.words('per')
            self.price = price / self.reader.unit(line).factor
        elif line.words('packs', 'of'):
            self.grams()
        elif line.words('use', 'first'):
            self.first = True
        elif line.words('sulphited'):
            self.sulphited = True
        elif line.words('to', 'buy'):
            self.to_buy = True
        elif line.words('from'):
            line.take()
        else:
            self.acidity = self.reader.measure(line).value
            assert line.words('acidity'), line.peek()

    def edible(self):
        figure = self.ingredient.figures.get('edible')
        return middle(figure) if figure else Fraction(1)

    def prepared(self):
        left = self.weight - self.spoiled - self.kept
        if not self.gross:
            return left
        return left * (self.edible() if self.trim is None else 1 - self.trim)


class Model:
    def __init__(self, things, statements, aim):
        self.things, self.reader, self.aim = things, things.reader, aim
        self.supplies, self.framework = {}, None
        for statement in statements:
            if statement.words('framework'):
                self.framework = Framework(self.reader, statement)
            elif statement.words('basket'):
                self.add_lines(statement.block, 'basket')
        for statement in statements:
            if statement.words('kitchen'):
                for line in statement.block:
                    if line.words('store'):
                        self.add_lines(line.block, 'store')
        self.columns = {}
        self.make_columns()

    # ---- Supplies -------------------------------------------------------------------------------

    def add_lines(self, block, origin):
        for statement in block:
            line = Line(self, statement)
            if line.weight is not None:
                self.add(line, origin, line.prepared(), line.price)
            if line.to_buy:
                most = None if line.most is None else line.most * line.edible()
                price = None if line.price is None else line.price / line.edible()
                self.add(line, 'to buy', most, price)

    def add(self, line, origin, weight, price):
        key = (line.ingredient.name, origin, line.acidity, line.first, line.sulphited, price)
        supply = self.supplies.setdefault(key, Supply(key, line.place))
        unbounded = supply.available is None or weight is None
        supply.available = None if unbounded else supply.available + weight

    # ---- Columns --------------------------------------------------------------------------------

    def ingredient(self, supply):
        return self.things.meaning[supply.name]

    def taken_by(self, target):
        return [supply for supply in self.supplies.values()
                if supply.origin != 'to have' and self.things.takes(target, self.ingredient(supply))]

    def make_columns(self):
        for share in self.framework.shares:
            share.columns = [self.column('produce', share.target[0], supply)
                             for supply in self.taken_by(share.target)]
        assumed = {}
        for addition in self.framework.additions:
            found = self.taken_by(addition.target) or self.assumed(addition, assumed)
            addition.columns = [self.column('addition', addition.target[0], supply)
                                for supply in found]
        for part in self.framework.substitutions:
            part.addition = next(each for each in self.framework.additions
                                 if each.target[0] == part.replaced)
            if part.donor != part.replaced:
                for supply in self.supplies.values():
                    if self.donates(part, supply) and not self.is_in_anyway(part, supply):
                        self.column('substitute', part.slot, supply)
        self.supplies.update(assumed)

    def column(self, role, slot, supply):
        key = (role, slot, supply.key)
        self.columns[key] = supply
        return key

    def assumed(self, addition, assumed):
        thing = self.things.meaning[addition.target[0]]
        if isinstance(thing, Class):
            if thing.usually is None:
                return []
            thing = self.things.meaning[thing.usually]
        strength = addition.strength if thing.needs_strength() else None
        key = (thing.name, 'to have', strength, False, False, None)
        supply = Supply(key, None)
        supply.available = None
        assumed[key] = supply
        return [supply]

    def donates(self, part, supply):
        ingredient = self.ingredient(supply)
        return self.things.takes((part.donor, []), ingredient) and (
            not part.only or any(self.things.takes((each, []), ingredient) for each in part.only))

    def is_in_anyway(self, part, supply):
        others = [each.target for each in self.framework.additions if each is not part.addition]
        others += [each.target for each in self.framework.shares]
        return any(self.things.takes(target, self.ingredient(supply)) for target in others)

    def is_boiled(self):
        return any(self.is_computed(limit) and self.is_of_finished(limit)
                   for limit in self.framework.limits)

    @staticmethod
    def is_of_finished(limit):
        return limit.whole in (None, 'finished product', 'finished')

    def is_computed(self, limit):
        if not limit.is_property or limit.name in ALWAYS_COMPUTED:
            return True
        return limit.name in ('acetic acid', 'acidity') and not self.is_of_finished(limit)
