import { describe, expect, test } from 'vitest';
import { sizeNamed, sizeNames, usNamesake } from '../../src/stock/sizes.js';
import { compileText } from '../support/compile-text.js';

/** From a visiting card folded small to A3 (ISO 216), from square to one by three. */
const SMALLEST = { long: 50, short: 35 };
const LARGEST = { long: 420, short: 297 };
const MOST_OBLONG = 3;

const INCH = 25.4;

const serves = (long: number, short: number): boolean =>
  long >= SMALLEST.long &&
  short >= SMALLEST.short &&
  long <= LARGEST.long &&
  short <= LARGEST.short &&
  long <= MOST_OBLONG * short + 1e-9;

const named = [...sizeNames()].filter((name) => {
  const size = sizeNamed(name);
  return size !== undefined && serves(size.long, size.short);
});

/** Cards without a name, in whole millimetres or quarters of an inch, spread over the range. */
function unnamed(units: string): readonly string[] {
  const step = units === 'in' ? INCH / 4 : 1;
  const cards: string[] = [];
  for (let long = SMALLEST.long; long <= LARGEST.long; long *= 1.07) {
    for (const ratio of [1, 1.1, 1.25, Math.SQRT2, 1.6, 1.75, 2, 2.3, 2.6, MOST_OBLONG]) {
      const [first, second] = [Math.floor(long / step), Math.ceil(long / ratio / step)];
      if (first >= second && serves(first * step, second * step)) {
        cards.push(units === 'in' ? `${first / 4} x ${second / 4}` : `${first} x ${second}`);
      }
    }
  }
  return cards;
}

describe.each(['mm', 'in'])('units %s', (units) => {
  describe.each(['side', 'end'])('opens %s', (opens) => {
    // Under inches, a plain ISO A name is asked whether the US size was meant; the same size is there as `iso-a6`.
    const plain = named.filter((name) => units !== 'in' || usNamesake(name) === undefined);
    const cards = [...plain, ...unnamed(units)];

    test(`nothing but the card stated, nothing to find fault with: ${cards.length} cards`, () => {
      const text = cards
        .map((card, index) => `envelope e${index} {\n  card: ${card}\n  opens: ${opens}\n}\n`)
        .join('\n');
      const { recipes, diagnostics } = compileText(`units ${units}\n${text}`);
      const findings = diagnostics.filter(({ severity }) => severity !== 'note');
      expect(findings.map(({ message, why }) => `${message}: ${why}`)).toEqual([]);
      expect(recipes.map(({ facts }) => facts.margins.bareArea)).toEqual(cards.map(() => 0));
    });
  });
});
