# SPDX-License-Identifier: Apache-2.0
"""Random frameworks, baskets and kitchens as texts, most of them fit to be planned."""

CLASSES = ['onion family', 'fruit', 'sharp fruit', 'mild fruit', 'soft fruit', 'stone fruit',
           'root', 'squash', 'fruit vegetable', 'brassica', 'pod', 'stalk', 'vegetable']
SPICES = ['ground allspice', 'ground cinnamon', 'ground ginger', 'turmeric', 'mustard powder']
VINEGARS = ['cider vinegar', 'malt vinegar', 'wine vinegar', 'distilled vinegar']


class Writer:
    def __init__(self, random, things):
        self.random, self.things = random, things
        # Counted lines need a piece weight, volumes a density.
        self.produce = [each.name for each in things.ingredients
                        if 'produce' in things.classes_of(each)
                        and 'dried fruit' not in things.classes_of(each)]
        self.dried = [each.name for each in things.ingredients
                      if 'dried fruit' in things.classes_of(each)]

    def chance(self, share):
        return self.random.random() < share

    def number(self, low, high):
        form = self.random.randrange(3)
        if form == 0:
            return str(self.random.randint(low, high))
        return f'{self.random.uniform(low, high):.{form}f}'

    def range(self, low, high, unit):
        a, b = sorted([self.random.randint(low, high), self.random.randint(low, high)])
        form = self.random.randrange(8)
        if form == 0:
            return f'at most {b} {unit}', 0, b
        if form == 1:
            return f'{b} {unit}', b, b
        if form == 2:
            return f'{a} {unit} .. {b} {unit}', a, b
        return f'{a} .. {b} {unit}', a, b

    def prefer(self, low, high, unit):
        if not self.chance(0.4):
            return ''
        comma = self.random.choice(['', ','])
        return f'{comma} prefer {self.random.randint(low, high)} {unit}'

    def spelled(self, name):
        """Itself, or another name for it."""
        thing = self.things.meaning[name]
        others = [word for word, meant in self.things.meaning.items() if meant is thing]
        word = self.random.choice(others) if self.chance(0.3) else name
        reserved = {'of', 'for', 'by', 'in', 'as', 'is', 'at', 'to', 'from'}
        return f'"{word}"' if reserved & set(word.split()) else word

    # ---- The framework --------------------------------------------------------------------------

    def shares(self):
        names = self.random.sample(CLASSES, self.random.randint(2, 4))
        names += self.random.sample(self.produce, self.random.randint(0, 2))
        lines = []
        for name in names:
            text, low, high = self.range(0, 100 // len(names) + 40, '%')
            if self.chance(0.7):
                text, low, high = f'0 .. {high} %', 0, high
            narrow = ''
            if name in CLASSES and self.chance(0.15):
                members = [each.name for each in self.things.ingredients
                           if name in self.things.classes_of(each)]
                if members:
                    picked = self.random.sample(members, min(2, len(members)))
                    narrow = ' as ' + ', '.join(self.spelled(each) for each in picked)
            lines.append(f'{name}{narrow} {text}{self.prefer(low, high, "%")}')
        # Something must be able to fill the rest.
        lines.append('produce 0 .. 100 %')
        return lines

    def additions(self):
        random = self.random
        text, low, high = self.range(300, 600, 'ml')
        strength = random.choice(['', '', ', 6 % acidity', ', 5.5 % acidity'])
        vinegar = random.choice([f'vinegar {text}{self.prefer(low, high, "ml")}',
                                 'vinegar 0.4 .. 0.55 l', 'vinegar 420 .. 520 ml per kilogram'])
        lines = [vinegar + strength]
        text, low, high = self.range(150, 400, 'g')
        lines.append(random.choice([f'sugar {text}{self.prefer(low, high, "g")}', 'sugar 10 oz',
                                    'sugar 0.2 .. 0.3 kg', 'sugar 1/2 lb', 'sugar 25 g per 100 g']))
        if self.chance(0.8):
            text, low, high = self.range(0, 150, 'g')
            lines.append(f'dried fruit {text}{self.prefer(low, high, "g")}')
        lines.append(random.choice(['salt 10 g', 'salt 1.5 % of prepared produce', 'salt 2 tsp']))
        for spice in random.sample(SPICES, random.randint(0, 2)):
            lines.append(spice + random.choice([' 1 tsp', ' ½ tsp', ' 1 1/2 tsp', ' 3 g',
                                                ' 1 .. 2 tsp prefer 1 tsp']))
        if self.chance(0.5):
            lines.append(f'whole clove {random.randint(1, 4)}')
        random.shuffle(lines)
        return lines

    def substitutions(self, additions):
        random, lines = self.random, []
        if any(line.startswith('dried fruit') for line in additions) and self.chance(0.8):
            extent = random.choice(['', ' full', ' optional'])
            cap = random.choice(['', ' up to 50 %', ' up to 30 %'])
            lines.append(f'dried fruit for sugar by sugars{extent}{cap}')
        elif self.chance(0.6):
            lines.append('honey for sugar by sugars optional up to 40 %')
        if self.chance(0.5):
            lines.append(random.choice([
                'lemon juice for vinegar by acidity optional up to 10 % only bottled lemon juice',
                'bottled lemon juice for vinegar by acidity up to 1/4 %']))
        if self.chance(0.9):
            lines.append('vinegar for vinegar by acetic acid')
        return lines

    def limits(self, substitutions):
        random, lines = self.random, []
        # Dates are low-acid: what stands for sugar must be capped.
        if self.chance(0.6) or any(each.startswith('dried') for each in substitutions):
            lines.append(f'low acid <= {random.randint(30, 90)} % of prepared produce')
        if self.chance(0.6):
            lines.append(f'acetic acid >= {random.randint(5, 15)} g per kilogram of prepared produce')
        if self.chance(0.3):
            lines.append('acetic acid >= 8 g per kilogram of finished product')
        if self.chance(0.7):
            low = random.randint(20, 40)
            lines.append(random.choice([f'soluble solids {low} .. {low + 8} %',
                                        f'soluble solids >= {low} %',
                                        f'soluble solids at least {low} %']))
        if self.chance(0.3):
            lines.append(random.choice(['total solids >= 30 %', 'salt <= 2 % of finished product',
                                        'sugars 15 .. 40 % of finished product',
                                        'sugars <= 60 % of prepared produce',
                                        'fruit >= 35 g per kilogram of finished product',
                                        'squash <= 30 % of prepared produce']))
        if self.chance(0.2):
            lines.append('pH <= 4.2')
        return lines

    # ---- The basket and the kitchen -------------------------------------------------------------

    def weight(self, low, high):
        """Between these, in grams."""
        grams = self.random.randint(low, high)
        return self.random.choice([f'{grams} g', f'{grams / 1000:.2f} kg', f'{grams / 1000:.3f} kg',
                                   f'{1 + grams // 454} lb {self.random.randint(0, 15)} oz',
                                   f'{1 + grams // 1000} 1/2 kg', f'{1 + grams // 1000}¼ kg'])

    def line(self, name):
        thing = self.things.meaning[name]
        form = self.random.randrange(6)
        if form == 0 and 'piece' in thing.figures:
            return f'{self.random.randint(3, 20)} {self.spelled(name)}'
        if form == 1:
            text = f'{self.spelled(name)} to buy'
            if self.chance(0.6):
                text += f', at most {self.random.randint(2, 20) * 100} g'
            if self.chance(0.6):
                text += f', at {self.number(1, 9)} per {self.random.choice(["kg", "lb", "g"])}'
            return text + (', packs of 250 g' if self.chance(0.3) else '')
        text = f'{self.spelled(name)} {self.weight(400, 4000)}'
        if form == 2:
            text += ' prepared'
        elif form == 3:
            text += f' gross, trim {self.number(5, 40)} %'
        else:
            text += ' gross'
        if self.chance(0.2):
            text += f', spoiled {self.random.randint(1, 9) * 10} g'
        if self.chance(0.2):
            text += f', keep back {self.random.randint(1, 9) * 10} g'
        if self.chance(0.2):
            text += ', use first'
        if self.chance(0.2):
            text += ', from "the # garden; {here}"'
        return text

    def basket(self):
        names = self.random.sample(self.produce, self.random.randint(3, 9))
        names += self.random.sample(names, self.random.randint(0, 2))
        lines = [self.line(name) for name in names]
        if self.chance(0.85):
            dried = self.spelled(self.random.choice(self.dried))
            lines.append(f'{dried} {self.random.randint(100, 900)} g prepared'
                         + (', sulphited' if self.chance(0.4) else ''))
        self.random.shuffle(lines)
        return lines

    def store(self):
        random, lines = self.random, []
        for vinegar in random.sample(VINEGARS, random.randint(0, 2)):
            lines.append(f'{self.spelled(vinegar)} {random.choice(["2 l", "750 ml", "3 kg"])}, '
                         f'{random.choice(["5", "6", "5.5"])} % acidity')
        if self.chance(0.4):
            lines.append('bottled lemon juice 250 ml')
        if self.chance(0.4):
            lines.append(random.choice(['honey 454 g', 'honey 300 ml']))
        if self.chance(0.6):
            lines.append(f'sugar {random.randint(1, 4)} kg')
        if self.chance(0.3):
            lines.append('sultana 300 g; raisin 200 g, sulphited')
        if self.chance(0.3):
            lines.append('sugar to buy, at 1.20 per kg')
        return lines

    def text(self):
        def block(head, lines):
            end = self.random.choice(['\n    ', '\n    ', '; '])
            return f'{head} {{{end if end != "; " else " "}{end.join(lines)}\n  }}\n'

        additions = self.additions()
        text = '# Made at random.\nframework tried {\n  ' + block('produce', self.shares())
        text += '  ' + block('per kilogram', additions)
        substitutions = self.substitutions(additions)
        text += '  ' + block('substitute', substitutions)
        text += '  ' + block('limits', self.limits(substitutions)) + '}\n'
        text += block('basket "at random"', self.basket())
        if self.chance(0.8):
            text += 'kitchen "at random" {\n  scales to 5 g\n  ' + block('store', self.store()) + '}\n'
        return text
