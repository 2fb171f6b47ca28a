import fc from 'fast-check';
import { scan } from '../../grammar/scan.js';
import { SPELLINGS } from '../../grammar/spellings.js';
import { EXPECT_NAMES } from '../../src/recipe/expect-names.js';
import { PROPERTIES } from '../../src/recipe/properties.js';
import { postClassNames } from '../../src/stock/post-classes.js';
import { exchange, slip } from '../support/texts.js';

/** One way to make another text of one, with a second one at hand. */
type Mutation = (text: string, other: string) => string;

/** Words and signs that mean something somewhere, and figures at the edge of what is allowed. */
const WORDS = [
  ...SPELLINGS.flatMap((spelling) => ('signs' in spelling ? spelling.signs : [])),
  ...Object.keys(PROPERTIES),
  ...EXPECT_NAMES.keys(),
  ...postClassNames(),
  ...'in mm cm um mil pt g oz lb gsm "text" half folded letter A6 us-a6 SRA3 default none'.split(' '),
  ...'pointed rounded blunt inset notched glue tuck seal side end long short tagged on page'.split(' '),
  ...'0 1 -1 1/0 0.001 1/64 3 1/2 99 1000 10000 20000 1e9 999999999999999999999'.split(' '),
];

const place = fc.nat();

/** One token of a text changed for a word, left out, or with a word put before it. */
const byToken = (anew: (image: string, word: string) => string): fc.Arbitrary<Mutation> =>
  fc.tuple(place, fc.constantFrom(...WORDS)).map(
    ([at, word]) =>
      (text) =>
        withToken(text, at, (image) => anew(image, word)),
  );

/** One token of a text changed for one of the other. */
const borrowed: fc.Arbitrary<Mutation> = fc.tuple(place, place).map(
  ([at, from]) =>
    (text, other) =>
      withToken(text, at, (image) => pick(scan(other).tokens, from)?.image ?? image),
);

function withToken(text: string, at: number, anew: (image: string) => string): string {
  const token = pick(scan(text).tokens, at);
  if (!token) return text;
  const { startOffset, image } = token;
  return text.slice(0, startOffset) + anew(image) + text.slice(startOffset + image.length);
}

/** Some lines of the other put in, or in the place of one line. */
const lines: fc.Arbitrary<Mutation> = fc
  .tuple(place, place, fc.integer({ min: 1, max: 6 }), fc.nat(1))
  .map(([at, from, count, less]) => (text, other) => {
    const [own, theirs] = [text, other].map((each) => each.split('\n')) as [string[], string[]];
    const start = from % theirs.length;
    return own.toSpliced(at % (own.length + 1), less, ...theirs.slice(start, start + count)).join('\n');
  });

/** The start of one and the end of the other. */
const graft: fc.Arbitrary<Mutation> = fc.tuple(place, place).map(
  ([at, from]) =>
    (text, other) =>
      text.slice(0, at % (text.length + 1)) + other.slice(from % (other.length + 1)),
);

/** One character turned into another. */
const character: fc.Arbitrary<Mutation> = fc
  .tuple(place, fc.oneof(fc.nat(127), fc.nat(0xffff)))
  .map(([place, code]) => (text) => {
    const at = place % (text.length + 1);
    return text.slice(0, at) + String.fromCharCode(code) + text.slice(at + 1);
  });

const mutation = fc.oneof(
  slip,
  exchange,
  byToken((_, word) => word),
  byToken((image, word) => `${word} ${image}`),
  byToken(() => ''),
  borrowed,
  lines,
  graft,
  character,
);

const pick = <T>(list: readonly T[], at: number): T | undefined => list[at % list.length];

/** Makes a text of a list of them. */
export type Step = (texts: readonly string[]) => string;

/** No text grows longer: short ones run faster, and tell more plainly what they reach. */
const LONGEST = 1500;

/** Two texts are drawn and the shorter one is changed, a few times over. */
export const anyStep: fc.Arbitrary<Step> = fc
  .tuple(place, place, place, fc.array(mutation, { minLength: 1, maxLength: 4 }))
  .map(([one, two, three, mutations]) => (texts) => {
    const [first = '', second = '', other = ''] = [one, two, three].map((at) => pick(texts, at));
    const parent = first.length < second.length ? first : second;
    return mutations.reduce((text, mutate) => mutate(text, other), parent).slice(0, LONGEST);
  });
