# SPDX-License-Identifier: Apache-2.0
"""The rows and objectives that a model must have. A row is (low, high, terms) under its name, the
kind and the place of its statement; terms are by column."""

from fractions import Fraction

from recompute_things import middle

TOTAL = ('total', '', None)
BOILED = ('evaporated', '', None)
THOUSAND = 1000
ZERO = Fraction(0)


class Rows:
    def __init__(self, model):
        self.model, self.framework, self.things = model, model.framework, model.things
        self.rows, self.objectives, self.deviations = {}, [], {}
        self.boiled = model.is_boiled()
        self.have()
        self.add('total', None, ZERO, ZERO, {**self.ones('produce'), TOTAL: Fraction(-1)})
        self.shares()
        self.additions()
        self.substitutions()
        self.limits()
        self.goal()
        self.aims()

    def add(self, name, statement, low, high, terms):
        key, number = (name, statement, 0), 0
        while key in self.rows:
            number += 1
            key = (name, statement, number)
        self.rows[key] = (low, high, {column: each for column, each in terms.items() if each})

    def ones(self, role=None, where=lambda supply: True):
        return {column: Fraction(1) for column, supply in self.model.columns.items()
                if role in (None, column[0]) and where(supply)}

    def have(self):
        for supply in self.model.supplies.values():
            uses = self.ones(None, lambda each, supply=supply: each is supply)
            if supply.available is not None and uses:
                self.add(f'have {supply.name}', ('supply', supply.place), None,
                         supply.available / THOUSAND, uses)

    def shares(self):
        for share in self.framework.shares:
            terms = {column: Fraction(1) for column in share.columns}
            of = ('share', share.place)
            if share.low > 0:
                self.add(f'at least {share.target[0]}', of, ZERO, None,
                         {**terms, TOTAL: -share.low})
            if share.high < 1:
                self.add(f'at most {share.target[0]}', of, None, ZERO,
                         {**terms, TOTAL: -share.high})

    # What an addition comes to in kilograms, litres or thousands of pieces, credits included.
    def amount(self, addition):
        terms = {column: self.per_gram(addition, self.model.columns[column])
                 for column in addition.columns}
        for part in self.framework.substitutions:
            if part.addition is addition and part.donor != part.replaced:
                terms[('credit', part.slot, None)] = Fraction(1)
        return terms

    def per_gram(self, addition, supply):
        figures = self.model.ingredient(supply).figures
        if addition.how == 'count':
            return 1 / middle(figures['piece'])
        strength = supply.acidity / addition.strength if supply.acidity else Fraction(1)
        return strength if addition.how == 'weight' else strength / middle(figures['density'])

    def additions(self):
        for addition in self.framework.additions:
            terms = self.amount(addition)
            if not terms:
                continue
            of = ('addition', addition.place)
            name = addition.target[0]
            self.add(f'at least {name}', of, ZERO, None,
                     {**terms, TOTAL: -addition.low / THOUSAND})
            self.add(f'at most {name}', of, None, ZERO,
                     {**terms, TOTAL: -addition.high / THOUSAND})

    def worth(self, part, supply):
        figure = self.model.ingredient(supply).figure(part.by, supply.acidity)
        if figure is None:
            return ZERO
        if part.by in ('acidity', 'acetic acid'):
            volume = part.addition.how == 'volume'
            return figure[0] / part.addition.strength if volume else ZERO
        return middle(figure) if part.addition.how == 'weight' else ZERO

    def substitutions(self):
        for part in self.framework.substitutions:
            if part.donor == part.replaced:
                continue
            credit = ('credit', part.slot, None)
            brought = {credit: Fraction(-1)}
            for column, supply in self.model.columns.items():
                own = column[0] == 'addition' and column[1] == part.replaced
                other = column[0] == 'substitute' and column[1] != part.slot
                if not own and not other and self.model.donates(part, supply):
                    brought[column] = self.worth(part, supply)
            # What is put in for something else is put in only as far as it counts for that.
            put_in = {column: each for column, each in brought.items()
                      if column[0] == 'substitute'}
            if put_in:
                self.add(f'no more than counts of {part.donor}', None, None, ZERO,
                         {**put_in, credit: Fraction(-1)})
            self.add(f'brought by {part.donor}', None, ZERO, ZERO if part.full else None, brought)
            capped = {column: -part.cap * each for column, each in self.amount(part.addition).items()}
            capped[credit] += 1
            self.add(f'cap on {part.donor}', ('substitution', part.place), None, ZERO, capped)

    # ---- Limits ---------------------------------------------------------------------------------

    def share_at(self, limit, supply, high):
        """At the end that is asked for; what no table gives counts as unmet."""
        ingredient = self.model.ingredient(supply)
        if not limit.is_property:
            return Fraction(self.things.takes((limit.name, []), ingredient))
        figure = ingredient.figure(limit.name, supply.acidity)
        return Fraction(high) if figure is None else figure[high]

    def limits(self):
        for limit in self.framework.limits:
            if not self.model.is_computed(limit):
                continue
            for high, bound in ((0, limit.low), (1, limit.high)):
                if bound is None:
                    continue
                finished = self.model.is_of_finished(limit)
                terms = {column: self.share_at(limit, supply, high) - (bound if finished else 0)
                         for column, supply in self.model.columns.items()}
                terms[BOILED if finished else TOTAL] = bound if finished else -bound
                self.add('limit from above' if high else 'limit from below',
                         ('limit', limit.place), None if high else ZERO, ZERO if high else None,
                         terms)

    def goal(self):
        of = ('aim', self.framework.place)
        kind, kilograms = self.model.aim
        left = {**self.ones(), BOILED: Fraction(-1)}
        # Where no limit says how far to boil down, there is no finished weight to aim at.
        if self.boiled:
            # Solids stay, at the least their published low end.
            water = {column: 1 - (self.model.ingredient(supply).figure('total solids') or (ZERO,))[0]
                     for column, supply in self.model.columns.items()}
            self.add('what cannot boil away', None, ZERO, None, {**water, BOILED: Fraction(-1)})
        if kind == 'finished' and self.boiled:
            self.add('aim', of, kilograms, kilograms, left)
        if kind == 'prepared':
            self.add('aim', of, kilograms, kilograms, {TOTAL: Fraction(1)})

    # ---- Objectives -----------------------------------------------------------------------------

    def aims(self):
        if self.model.aim[0] == 'most':
            at_hand = self.ones('produce', lambda supply: supply.origin != 'to buy')
            self.objective('most of the basket', 'most', at_hand)
            if not at_hand:
                self.objective('most', 'most', {TOTAL: Fraction(1)})
        self.objective('use first', 'most', self.ones('produce', lambda supply: supply.first))
        self.bought()
        self.preferred()
        least = {}
        for addition in self.framework.additions:
            if addition.prefer is None:
                least.update({column: Fraction(1) for column in addition.columns})
        self.objective('least added', 'least', {**least, **self.ones('substitute')})
        for limit in self.framework.limits:
            self.finish(limit)

    def objective(self, name, direction, terms):
        if terms:
            self.objectives.append((name, direction, terms))

    def bought(self):
        terms = self.ones(None, lambda supply: supply.origin == 'to buy')
        prices = {column: self.model.columns[column].price for column in terms}
        if all(price is not None for price in prices.values()):
            terms = {column: price * THOUSAND for column, price in prices.items()}
        self.objective('bought', 'least', terms)

    def deviate(self, name):
        number = self.deviations.get(name, 0)
        self.deviations[name] = number + 1
        return ('deviation', f'above {name}', number), ('deviation', f'below {name}', number)

    def preferred(self):
        sum_of = {}
        for share in self.framework.shares:
            if share.prefer is not None and share.columns:
                terms = {column: Fraction(1) for column in share.columns}
                self.prefer(share.target[0], terms, share.prefer, Fraction(1), sum_of)
        for addition in self.framework.additions:
            if addition.prefer is not None and addition.columns:
                # Any column may stand for the rest: the comparison finds which was meant.
                scales = {1 / self.per_gram(addition, self.model.columns[column])
                          for column in addition.columns}
                self.prefer(addition.target[0], self.amount(addition), addition.prefer / THOUSAND,
                            scales, sum_of)
        self.objective('nearest to what is preferred', 'least', sum_of)

    def prefer(self, name, terms, wanted, scale, sum_of):
        above, below = self.deviate(name)
        self.add(f'prefer {name}', None, ZERO, ZERO,
                 {**terms, TOTAL: -wanted, above: Fraction(-1), below: Fraction(1)})
        sum_of[above] = sum_of[below] = scale

    def finish(self, limit):
        ends = [end for end in (limit.low, limit.high) if end is not None]
        of_solids = limit.is_property and self.model.is_of_finished(limit)
        if not ends or not of_solids or not self.model.is_computed(limit):
            return
        wanted = sum(ends) / len(ends)
        terms = {column: (self.share_at(limit, supply, 0) + self.share_at(limit, supply, 1)) / 2
                 - wanted for column, supply in self.model.columns.items()}
        above, below = self.deviate('the finish')
        self.add('finish', None, ZERO, ZERO,
                 {**terms, BOILED: wanted, above: Fraction(-1), below: Fraction(1)})
        self.objective('finish', 'least', {above: Fraction(1), below: Fraction(1)})
