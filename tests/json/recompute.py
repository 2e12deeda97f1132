# SPDX-License-Identifier: Apache-2.0
"""python3 recompute.py PROGRAM STDLIB FOLDER [COUNT] [SEED]

A second way from the text to the model. Reads what `plan --to blend` prints for random inputs and
works out every row, bound, coefficient and objective again from the texts of the library and the
input. Prints what differs; the exit code says whether anything does."""

import json
import pathlib
import random
import subprocess
import sys
from fractions import Fraction

sys.dont_write_bytecode = True

from recompute_inputs import Writer  # noqa: E402
from recompute_model import Model  # noqa: E402
from recompute_rows import Rows  # noqa: E402
from recompute_text import read_units, statements_of, tokens_of  # noqa: E402
from recompute_things import Things  # noqa: E402

CLOSE = 1e-9
AIMS = [('most', None), ('most', None), ('prepared', Fraction(2)), ('finished', Fraction(3))]


def statements_in(path_or_text):
    text = path_or_text
    if isinstance(path_or_text, pathlib.Path):
        text = path_or_text.read_text(encoding='utf-8')
    return statements_of(tokens_of(text))[0]


def read_library(folder):
    things = Things(read_units(statements_in(folder / 'units.maslin')))
    things.read(statements_in(folder / 'classes.maslin'))
    for path in sorted((folder / 'ingredients').glob('*.maslin')):
        things.read(statements_in(path))
    return things


def is_close(have, want):
    if isinstance(want, set):
        return any(is_close(have, each) for each in want)
    if have is None or want is None:
        return have is want
    want = float(want)
    return abs(have - want) <= CLOSE * max(abs(have), abs(want))


class Comparison:
    """One blend as printed against one as worked out here."""

    def __init__(self, blend, text, rows):
        self.blend, self.text, self.want, self.problems = blend, text, rows, []
        self.numbers = 0
        self.supplies = [self.supply_key(each) for each in blend['supplies']]
        self.columns = self.column_keys()
        self.compare_supplies()
        self.compare_columns()
        self.compare_statements()
        self.compare_rows()
        self.compare_objectives()
        self.compare_names()

    def differ(self, what, have, want):
        self.problems.append(f'{what}: printed {have}, worked out {want}')

    def number(self, what, have, want):
        self.numbers += 1
        if not is_close(have, want):
            shown = float(want) if isinstance(want, Fraction) else want
            self.differ(what, have, shown)

    @staticmethod
    def supply_key(each):
        def exact(name, per):
            value = each.get(name)
            return None if value is None else round(value / per, 12)
        return (each['ingredient'], each['origin'], exact('acidity_g_per_100_ml', 100),
                each['use_first'], each['sulphited'], exact('price_per_kg', 1000))

    @staticmethod
    def rounded(key):
        name, origin, acidity, first, sulphited, price = key
        return (name, origin, None if acidity is None else round(float(acidity), 12), first,
                sulphited, None if price is None else round(float(price), 12))

    def wanted_column(self, key):
        role, slot, supply = key
        weight = role in ('produce', 'addition', 'substitute')
        return role, slot, self.rounded(supply) if weight else supply

    def column_keys(self):
        keys, deviations = [], {}
        for each in self.blend['columns']:
            role = each['role']
            if role in ('total', 'evaporated'):
                keys.append((role, '', None))
            elif role == 'deviation':
                number = deviations.get(each['name'], 0)
                deviations[each['name']] = number + 1
                keys.append((role, each['name'], number))
            elif role == 'credit':
                keys.append((role, each['slot'], None))
            else:
                keys.append((role, each['slot'], self.supplies[each['supply']]))
        return keys

    def compare_supplies(self):
        want = {self.rounded(key): supply for key, supply in self.want.model.supplies.items()}
        used = {self.columns[i][2] for i, each in enumerate(self.blend['columns'])
                if 'supply' in each}
        have = dict(zip(self.supplies, self.blend['supplies']))
        for key in set(want) ^ set(have):
            if key in used or key in want:
                self.differ('supply', key in have, f'{key} {key in want}')
        for key in set(want) & set(have):
            available = want[key].available
            self.number(f'{key} available', have[key].get('available_g'), available)

    def compare_columns(self):
        want = [self.wanted_column(key) for key in self.want.model.columns]
        want += [('total', '', None)] + ([('evaporated', '', None)] if self.want.boiled else [])
        want += [('credit', part.slot, None) for part in self.want.framework.substitutions
                 if part.donor != part.replaced]
        want += [('deviation', f'{side} {name}', i) for name, count in self.want.deviations.items()
                 for i in range(count) for side in ('above', 'below')]
        if sorted(map(str, want)) != sorted(map(str, self.columns)):
            self.differ('columns', sorted(map(str, set(self.columns) - set(want))),
                        sorted(map(str, set(want) - set(self.columns))))
        for each in self.blend['columns']:
            self.number(f'{each["name"]} from below', each.get('lower'), Fraction(0))
            self.number(f'{each["name"]} from above', each.get('upper'), None)

    def compare_statements(self):
        raw = self.text.encode()
        for each in self.blend['statements']:
            place = each['place']
            here = raw[place['begin']['offset']:place['end']['offset']].decode()
            if each['text'] != ' '.join(here.split()):
                self.differ('the text of a statement', each['text'], here)

    def statement_of(self, row):
        if 'statement' not in row:
            return None
        found = self.blend['statements'][row['statement']]
        begin = found['place']['begin']
        return found['kind'], (begin['line'], begin['column'])

    def terms_of(self, terms):
        result = {}
        for term in terms:
            key = self.columns[term['column']]
            result[key] = result.get(key, 0) + term['coefficient']
        return {key: value for key, value in result.items() if value}

    def compare_terms(self, what, have, want):
        want = {self.wanted_column(key): value for key, value in want.items()}
        for key in {**have, **want}:
            self.number(f'{what}, {key}', have.get(key, 0), want.get(key, Fraction(0)))

    def compare_rows(self):
        have = {}
        for row in self.blend['rows']:
            number = 0
            while (row['name'], self.statement_of(row), number) in have:
                number += 1
            have[(row['name'], self.statement_of(row), number)] = row
        want = self.want.rows
        for key in set(have) ^ set(want):
            self.differ('row', key in have, f'{key} {key in want}')
        for key in set(have) & set(want):
            low, high, terms = want[key]
            self.number(f'{key} from below', have[key].get('lower'), low)
            self.number(f'{key} from above', have[key].get('upper'), high)
            self.compare_terms(str(key), self.terms_of(have[key]['terms']), terms)

    def compare_objectives(self):
        have = self.blend['objectives'][:-1]
        names = [(each['name'], each['direction']) for each in have]
        wanted = [(name, direction) for name, direction, _ in self.want.objectives]
        if names != wanted:
            self.differ('objectives', names, wanted)
            return
        for each, (name, _, terms) in zip(have, self.want.objectives):
            self.compare_terms(name, self.terms_of(each['terms']), terms)

    def compare_names(self):
        """The last objective takes earlier names first: every weight once, by its rank."""
        last = self.blend['objectives'][-1]
        weights = [i for i, key in enumerate(self.columns) if len(key) == 3
                   and key[0] in ('produce', 'addition', 'substitute')]
        ranked = sorted(((term['coefficient'], term['column']) for term in last['terms']
                         if term['column'] in weights))
        names = [self.blend['columns'][column]['name'] for _, column in ranked]
        if sorted(column for _, column in ranked) != weights or names != sorted(
                names, key=lambda name: name.encode()):
            self.differ('by name', names, 'sorted')
        rest = [(self.columns[term['column']], term['coefficient']) for term in last['terms']
                if term['column'] not in weights]
        if rest != ([(('evaporated', '', None), 2)] if self.want.boiled else []):
            self.differ('by name', rest, 'twice what is boiled off')
        for rank, (coefficient, _) in enumerate(ranked, 1):
            self.number('rank', coefficient, Fraction(rank, len(weights)))


def altered(blend, chosen):
    """With one of its numbers changed by a millionth: the comparison must see it."""
    copy = json.loads(json.dumps(blend))
    places = [(row, side) for row in copy['rows'] for side in ('lower', 'upper') if row.get(side)]
    places += [(term, 'coefficient') for row in copy['rows'] for term in row['terms']]
    places += [(term, 'coefficient') for each in copy['objectives'] for term in each['terms']]
    places += [(each, 'available_g') for each in copy['supplies'] if each.get('available_g')]
    holder, name = chosen.choice([each for each in places if each[0][each[1]] != 0])
    holder[name] *= 1 + 1e-6
    return copy


def try_one(program, things, writer, folder, aim):
    """The comparison, or None where the program refuses the input."""
    text = writer.text()
    (folder / 'tried.maslin').write_text(text, encoding='utf-8')
    command = [program, 'plan', 'tried.maslin', '--to', 'blend']
    if aim[0] != 'most':
        command += ['--aim', f'{aim[1]} kg {aim[0]}']
    ran = subprocess.run(command, cwd=folder, capture_output=True, check=False)
    answer = json.loads(ran.stdout)
    if 'blend' not in answer:
        return None, text, [each['code'] for each in answer['diagnostics']]
    rows = Rows(Model(things, statements_in(text), aim))
    comparison = Comparison(answer['blend'], text, rows)
    if not Comparison(altered(answer['blend'], writer.random), text, rows).problems:
        comparison.problems.append('a number was altered, and the comparison did not see it')
    return comparison, text, []


def main():
    program, library, folder = sys.argv[1:4]
    count = int(sys.argv[4]) if len(sys.argv) > 4 else 200
    seed = int(sys.argv[5]) if len(sys.argv) > 5 else 20261010
    things = read_library(pathlib.Path(library))
    compared, tried, numbers, refused = 0, 0, 0, {}
    while compared < count and tried < 10 * count:
        chosen = random.Random(f'{seed} {tried}')
        writer = Writer(chosen, things)
        tried += 1
        aim = chosen.choice(AIMS)
        comparison, text, codes = try_one(program, things, writer, pathlib.Path(folder), aim)
        for code in codes:
            refused[code] = refused.get(code, 0) + 1
        if comparison is None:
            continue
        compared += 1
        numbers += comparison.numbers
        if comparison.problems:
            print(text, f'number {tried} of seed {seed}, aim {aim[0]}:',
                  *comparison.problems[:20], sep='\n')
            return 1
    print(f'{compared} of {tried} inputs compared, {numbers} numbers; refused: {refused}')
    return 0 if compared >= count else 1


if __name__ == '__main__':
    sys.exit(main())
