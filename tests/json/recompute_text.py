# SPDX-License-Identifier: Apache-2.0
"""A small reader of maslin texts that shares nothing with the program: only what the other files
here need, and only of texts without mistakes."""

import re
import unicodedata
from fractions import Fraction

RESERVED = set('of for by in as is at to from where refines until only version'.split())
VULGAR = {chr(c): Fraction(unicodedata.numeric(chr(c))).limit_denominator(10)
          for c in [0xBD, 0xBC, 0xBE] + list(range(0x2153, 0x215F))}
TOKEN = re.compile(r'''
    (?P<comment>\#[^\n]*) | (?P<newline>\n) | (?P<space>[ \t\r\u00a0]+) | "(?P<text>[^"\n]*)"
  | (?P<mixed>\d+[ ]+\d+/\d+) | (?P<fraction>\d+/\d+)
  | (?P<vulgar>(?:\d+(?:\.\d+)?[ ]?)?[½¼¾⅓-⅞]) | (?P<decimal>\d+(?:\.\d+)?)
  | (?P<word>[^\W\d_][\w'’-]*) | (?P<sign>\.\.|<=|>=|°C|.)''', re.VERBOSE)


class Token:
    def __init__(self, kind, value, line, column):
        self.kind, self.value, self.line, self.column = kind, value, line, column

    def __repr__(self):
        return f'{self.value!r} at {self.line}:{self.column}'


def number_of(kind, text):
    if kind == 'mixed':
        whole, part = text.split()
        return Fraction(whole) + Fraction(part)
    if kind == 'vulgar':
        whole = text[:-1].strip()
        return (Fraction(whole) if whole else 0) + VULGAR[text[-1]]
    return Fraction(text)


def tokens_of(text):
    """Words, numbers, texts and signs; `end` where a statement ends."""
    result, line, start = [], 1, 0
    for found in TOKEN.finditer(text):
        kind, raw = found.lastgroup, found.group()
        place = (line, found.start() - start + 1)
        if kind == 'newline':
            line, start = line + 1, found.end()
            # After a comma the statement goes on.
            if result and result[-1].value != ',':
                result.append(Token('end', '', *place))
        elif kind in ('mixed', 'fraction', 'vulgar', 'decimal'):
            result.append(Token('number', number_of(kind, raw), *place))
        elif kind == 'text':
            result.append(Token('text', found.group('text'), *place))
        elif kind == 'word':
            result.append(Token('word', raw.replace('’', "'"), *place))
        elif kind == 'sign':
            result.append(Token('end' if raw == ';' else 'sign', raw, *place))
    return result


class Statement:
    """Tokens up to the end of a statement, and the statements of the block that it opens."""

    def __init__(self, tokens, block):
        self.tokens, self.block, self.at = tokens, block, 0
        self.place = (tokens[0].line, tokens[0].column) if tokens else None

    def peek(self, ahead=0):
        at = self.at + ahead
        return self.tokens[at] if at < len(self.tokens) else Token('end', '', 0, 0)

    def words(self, *wanted):
        """Takes these words if they stand next."""
        if [self.peek(i).value for i in range(len(wanted))] != list(wanted):
            return False
        self.at += len(wanted)
        return True

    def take(self):
        self.at += 1
        return self.tokens[self.at - 1]

    def done(self):
        return self.at >= len(self.tokens)

    def comma(self):
        return self.words(',')

    def name(self):
        if self.peek().kind == 'text':
            return ' '.join(self.take().value.split())
        words = []
        while self.peek().kind == 'word' and self.peek().value not in RESERVED:
            words.append(self.take().value)
        assert words, f'a name is missing at {self.peek()}'
        return ' '.join(words)

    def names(self):
        result = [self.name()]
        while self.comma():
            result.append(self.name())
        return result


def statements_of(tokens, at=0):
    """The statements from `at` on to the end of the block, and where that is."""
    result, current, block = [], [], None

    def flush():
        nonlocal current, block
        if current:
            result.append(Statement(current, block))
        current, block = [], None

    while at < len(tokens):
        token = tokens[at]
        at += 1
        if token.kind == 'sign' and token.value == '{':
            block, at = statements_of(tokens, at)
            flush()
        elif token.kind == 'sign' and token.value == '}':
            break
        elif token.kind == 'end':
            flush()
        else:
            current.append(token)
    flush()
    return result, at


class Unit:
    def __init__(self, dimension, factor):
        self.dimension, self.factor = dimension, factor


class Measure:
    """A number in base units (g, ml, a plain number), what it is of, and per what."""

    def __init__(self, value, dimension, scale=Fraction(1), whole=None, per=None):
        self.value, self.dimension, self.scale = value, dimension, scale
        self.whole, self.per = whole, per


class Reader:
    """Quantities; it must know the units."""

    def __init__(self, units):
        self.units = units

    def unit(self, statement):
        """The longest run of words that is a unit, taken; nothing where none stands next."""
        for count in (3, 2, 1):
            words = [str(statement.peek(i).value) for i in range(count)]
            name = ' '.join(words)
            if name in self.units and statement.peek().kind != 'number':
                statement.at += count
                return self.units[name]
        return None

    def quantity(self, statement):
        value, dimension, scale, first = Fraction(0), 'number', Fraction(1), True
        while statement.peek().kind == 'number':
            number = statement.take().value
            unit = self.unit(statement)
            if unit is None:
                return Measure(value + number, dimension, scale)
            value += number * unit.factor
            dimension, scale = unit.dimension, unit.factor
            # A second part only of a compound: `2 lb 4 oz`.
            if not first or statement.peek(1).value != 'oz':
                break
            first = False
        return Measure(value, dimension, scale)

    def measure(self, statement):
        result = self.quantity(statement)
        if statement.words('per'):
            if statement.peek().kind == 'number':
                below = self.quantity(statement)
                value, dimension = below.value, below.dimension
            else:
                unit = self.unit(statement)
                value, dimension = unit.factor, unit.dimension
            result.value /= value
            result.scale /= value
            result.per = dimension
        if statement.words('of'):
            result.whole = statement.name()
        return result

    def range(self, statement):
        """(low, high, measure): an end that is open is None."""
        if statement.words('at', 'least'):
            measure = self.measure(statement)
            return measure.value, None, measure
        if statement.words('at', 'most'):
            measure = self.measure(statement)
            return None, measure.value, measure
        left = self.measure(statement)
        if not statement.words('..'):
            return left.value, left.value, left
        right = self.measure(statement)
        # The unit of the right side serves both.
        bare = left.dimension == 'number' and left.scale == 1 and left.per is None
        low = left.value * right.scale if bare else left.value
        return low, right.value, right


def read_units(statements):
    units = {}
    for statement in statements:
        if not statement.words('unit'):
            continue
        words = []
        while statement.peek().value not in ('=', 'is', 'could'):
            words.append(str(statement.take().value))
        name = ' '.join(words)
        if statement.words('could'):
            continue
        if statement.words('='):
            measure = Reader(units).quantity(statement)
            unit = Unit(measure.dimension, measure.value)
        else:
            statement.take()
            kind = statement.name()
            unit = Unit('number' if kind == 'ratio' else kind, Fraction(1))
        units[name] = unit
        if statement.comma() and statement.words('also'):
            for other in statement.names():
                units[other] = unit
    return units
