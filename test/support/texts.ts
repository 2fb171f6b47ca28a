import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { referenceExamples } from './reference-examples.js';
import { specs } from './specs.js';

/** What the language is made of, right and nearly right, and what has no place in it. */
const PIECES = [
  ...'units use let paper style envelope like expect default card half letter x X in mm lb cover gsm'.split(
    ' ',
  ),
  ...'5 1/2 51/2 5,5 12. ½ 0 1e9 99999 " "a" “ ” \' ″ \\ { } ( ) : , ; = <= == +- ± + - − * / % # @ é 潮'.split(
    ' ',
  ),
  ...[
    '5 1/2',
    ' ',
    '\t',
    '\n',
    '\r',
    '\r\n',
    '\0',
    '\u001b[31m',
    '\u00a0',
    '\u2028',
    '\u202e',
    '\ufeff',
    '\ud800',
  ],
];
const piece = fc.constantFrom(...PIECES);

const fromBytes = fc
  .oneof(fc.uint8Array({ maxLength: 80 }), fc.array(fc.nat(127), { maxLength: 80 }))
  // A file that is not UTF-8 is refused before this; here what is none becomes the replacement character.
  .map((bytes) => Buffer.from(bytes).toString('utf8'));
/** Any UTF-16, whole characters or not. */
const fromUnits = fc
  .array(fc.oneof(fc.nat(0xffff), fc.integer({ min: 0xd7f0, max: 0xe00f }), fc.nat(127)), { maxLength: 60 })
  .map((units) => String.fromCharCode(...units));
const fromPieces = fc
  .array(fc.oneof(piece, fc.constant(' ')), { maxLength: 60 })
  .map((pieces) => pieces.join(''));

/** Text that nobody meant as a recipe. */
export const anyText = fc.oneof(fromBytes, fromUnits, fromPieces);

/** One way to spoil a text. */
type Spoil = (text: string) => string;

const place = fc.nat();
const stretch = fc.nat(40);

/** A piece cut out, put in, written twice, or changed over with what follows it; another system's line ends. */
export const slip: fc.Arbitrary<Spoil> = fc.oneof(
  fc.tuple(place, stretch).map(([at, length]) => stitch(at, [length], () => '')),
  fc.tuple(place, piece).map(([at, put]) => stitch(at, [0], () => put)),
  fc.tuple(place, stretch).map(([at, length]) => stitch(at, [length], (found) => found + found)),
  fc
    .tuple(place, stretch, stretch)
    .map(([at, one, two]) => stitch(at, [one, two], (first, second) => second + first)),
  fc.constantFrom<Spoil>(
    (text) => text.replaceAll('\n', '\r\n'),
    (text) => `\ufeff${text}`,
  ),
);

/** Puts what `anew` makes of some stretches, one after the other, in their place. */
const stitch =
  (place: number, lengths: readonly number[], anew: (first: string, second: string) => string): Spoil =>
  (text) => {
    const at = place % (text.length + 1);
    const [one = 0, two = 0] = lengths;
    const [first, second] = [text.slice(at, at + one), text.slice(at + one, at + one + two)];
    return text.slice(0, at) + anew(first, second) + text.slice(at + one + two);
  };

const NUMBER = /\d+(?:[ ./]\d+)*/g;
const UNIT = /(?<=\d ?)(?:[a-z]+|["%])/g;
const WORD = /[a-z]+(?:-[a-z0-9]+)*/g;

/** Two numbers, units or words of a text changed over. */
export const exchange: fc.Arbitrary<Spoil> = fc
  .tuple(fc.constantFrom(NUMBER, UNIT, WORD), place, place)
  .map(([kind, one, other]) => (text) => {
    const found = [...text.matchAll(kind)];
    const chosen = [found[one % found.length], found[other % found.length]].filter(
      (match) => match !== undefined,
    );
    const [first, second] = chosen.sort((a, b) => a.index - b.index);
    if (first === undefined || second === undefined || first === second) return text;
    const between = text.slice(first.index + first[0].length, second.index);
    return (
      text.slice(0, first.index) +
      second[0] +
      between +
      first[0] +
      text.slice(second.index + second[0].length)
    );
  });

/** The end of another recipe in the place of a text's own. */
const graft = (recipes: readonly string[]): fc.Arbitrary<Spoil> =>
  fc.tuple(fc.constantFrom(...recipes), place, place).map(
    ([other, at, from]) =>
      (text) =>
        text.slice(0, at % (text.length + 1)) + other.slice(from % other.length),
  );

/** Good recipes, each spoilt one to three times. */
const spoilt = (recipes: readonly string[], spoil: fc.Arbitrary<Spoil>): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...recipes), fc.array(spoil, { minLength: 1, maxLength: 3 }))
    .map(([recipe, spoils]) => spoils.reduce((text, spoil) => spoil(text), recipe));

const files = specs();
const wholeFiles = [readFileSync('test/support/kitchen-sink.plica', 'utf8'), ...Object.values(files)];

/** Any text, and whole files with slips in them. */
export const texts = fc.oneof(anyText, { weight: 2, arbitrary: spoilt(wholeFiles, slip) });

/** Each envelope of the recipes that come with plica, in a file of its own. */
const envelopesAlone = Object.values(files).flatMap((text) => {
  const head = (text.match(/^(?:units|use) .*\n/gm) ?? []).join('');
  return (text.match(/^(?:let .*\n\n)?envelope [^}]*^}\n/gm) ?? []).map((envelope) => head + envelope);
});

/** Good recipes of one envelope or two, some of which use the files that come with plica. */
export const shortRecipes: readonly string[] = [
  ...referenceExamples.filter(({ right }) => right).map(({ text }) => text),
  ...envelopesAlone,
];

/** Short recipes with slips in them, and torn in two and joined to another. */
export const slipped = spoilt(shortRecipes, fc.oneof({ weight: 5, arbitrary: slip }, graft(shortRecipes)));

/** Short recipes with their numbers, units and words changed over: most of them can be read, and fold badly. */
export const exchanged = spoilt(shortRecipes, exchange);
