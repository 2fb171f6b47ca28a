import type { Ruler } from '../../src/measure/ruler.js';

/** A length found in a text: what it says, in mm, and how far the truth may lie from it. */
export interface Read {
  readonly text: string;
  readonly mm: number;
  readonly within: number;
}

const MM_PER: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4 };

const NUMBER = String.raw`-?(?:\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?)`;
const LENGTH = new RegExp(String.raw`(?<![\d.\/])(?:(${NUMBER}) × )?(${NUMBER}) (mm|cm|in)(?![a-z²])`, 'g');

/** Half of the last decimal of a length in the other system, in mm: 0.1 mm, or 0.01 in. */
const OTHER_WITHIN: Readonly<Record<string, number>> = { mm: 0.05, in: 0.005 * 25.4 };

/**
 * The lengths that a text states, `11 1/4 in` or either side of `140 × 107 mm`. In the ruler's own units each is true to
 * half a step, in the other system to half its last decimal.
 */
export const readLengths = (text: string, { units, step }: Ruler): readonly Read[] =>
  [
    ...text
      .replaceAll(/[\u00a0\u202f]/g, ' ')
      .replaceAll('\u2044', '/')
      .matchAll(LENGTH),
  ].flatMap(([found, first, second, unit = 'mm']) =>
    [first, second].flatMap((number) =>
      number === undefined
        ? []
        : [
            {
              text: found,
              mm: valueOf(number) * (MM_PER[unit] ?? 1),
              within: (unit === units ? step / 2 : (OTHER_WITHIN[unit] ?? 0)) + 1e-6,
            },
          ],
    ),
  );

/** `11 1/4`, `3/8`, `-0.65` */
function valueOf(number: string): number {
  const [, sign, whole, numerator, denominator] = /^(-?)(?:(\d+) )?(\d+)\/(\d+)$/.exec(number) ?? [];
  if (denominator === undefined) return Number(number);
  return (sign ? -1 : 1) * (Number(whole ?? 0) + Number(numerator) / Number(denominator));
}
