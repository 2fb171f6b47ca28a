import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { scan } from '../../grammar/scan.js';
import { endOf, is, type Token } from '../../grammar/token.js';
import {
  CloseBrace,
  CloseBracket,
  Colon,
  Comma,
  Eol,
  Equals,
  InchMark,
  Minus,
  OpenBrace,
  OpenBracket,
  Percent,
  Slash,
} from '../../grammar/tokens.js';
import { referenceExamples } from '../support/reference-examples.js';
import { specs } from '../support/specs.js';

/** Recipes in whose writing nothing is wrong. */
export const goodRecipes: readonly string[] = [
  readFileSync('test/support/kitchen-sink.plica', 'utf8'),
  ...Object.values(specs()),
  ...referenceExamples.filter(({ right }) => right).map(({ text }) => text),
];

/** What the language lets stand before a token. */
type Gap = 'nothing' | 'blanks' | 'blanks or nothing' | 'blanks or lines' | 'anything' | 'lines';

/** A token, what may stand before it, and how many lines end there as its recipe is written. */
interface Spaced {
  readonly image: string;
  readonly gap: Gap;
  readonly lineEnds: number;
}

/** Marks that need no space about them. */
const LOOSE = [Colon, Comma, Equals, OpenBracket, CloseBracket, Percent];

const spacedRecipes = fc.constantFrom(...goodRecipes.map(spacedTokens));

const blanks = fc.constantFrom(' ', ' ', '  ', '\t', ' \t ');
const blanksOrNothing = fc.oneof(fc.constant(''), blanks);
const comment = fc.constantFrom(
  '#',
  '# cut first  ',
  '#\t{ no brace }, "no string',
  '# card: A6 # twice\t',
  '#潮',
);
const commentOrNothing = fc.oneof(fc.constant(''), comment);

/** Good recipes with spaces, tabs, empty lines, comments and line ends put in wherever the language allows them. */
export const looseLayouts: fc.Arbitrary<string> = fc
  .tuple(
    spacedRecipes,
    fc.constantFrom(
      fc.constant('\n'),
      fc.constant('\r\n'),
      fc.constant('\r'),
      fc.constantFrom('\n', '\r\n', '\r'),
    ),
  )
  .chain(([tokens, lineEnd]) => {
    const line = textOf(blanksOrNothing, commentOrNothing, lineEnd);
    const lines = textOf(fc.array(line, { minLength: 1, maxLength: 4 }), blanksOrNothing);
    const between: Readonly<Record<Gap, fc.Arbitrary<string>>> = {
      nothing: fc.constant(''),
      blanks,
      'blanks or nothing': blanksOrNothing,
      'blanks or lines': fc.oneof(blanks, lines),
      anything: fc.oneof(blanksOrNothing, lines),
      lines,
    };
    const spaced = tokens.map(({ image, gap }) => textOf(between[gap], fc.constant(image)));
    return textOf(...spaced, between.anything, commentOrNothing);
  });

/** Good recipes without their comments, and the same with other spaces and tabs; lines end where they do. */
export const respacedRecipes: fc.Arbitrary<readonly [text: string, respaced: string]> = spacedRecipes.chain(
  (tokens) => {
    const respaced = (some: fc.Arbitrary<string>, any: fc.Arbitrary<string>): fc.Arbitrary<string> =>
      textOf(
        ...tokens.flatMap(({ image, gap, lineEnds }) => [
          ...Array.from({ length: lineEnds }, () => textOf(any, fc.constant('\n'))),
          gap === 'nothing' ? fc.constant('') : gap.startsWith('blanks') ? some : any,
          fc.constant(image),
        ]),
      );
    return fc.tuple(respaced(fc.constant(' '), fc.constant('')), respaced(blanks, blanksOrNothing));
  },
);

/** The texts that some arbitraries come to, one after another. */
const textOf = (...parts: readonly fc.Arbitrary<string | readonly string[]>[]): fc.Arbitrary<string> =>
  fc.tuple(...parts).map((texts) => texts.flat().join(''));

function spacedTokens(text: string): readonly Spaced[] {
  const { tokens } = scan(text);
  const visible = tokens.filter((token) => !is(token, Eol));
  return visible.map((token, index) => {
    const before = visible[index - 1];
    const start = before === undefined ? 0 : endOf(before);
    const between = tokens.filter(
      ({ startOffset }) => startOffset >= start && startOffset < token.startOffset,
    );
    return { image: token.image, gap: gapBetween(text, before, token), lineEnds: between.length };
  });
}

function gapBetween(text: string, before: Token | undefined, token: Token): Gap {
  if (before === undefined || is(before, OpenBrace) || is(token, OpenBrace, CloseBrace)) return 'anything';
  if (is(before, Comma)) return 'blanks or lines';
  const gap = text.slice(endOf(before), token.startOffset);
  if (is(before, CloseBrace) || /[\r\n]/.test(gap)) return 'lines';
  if (is(token, InchMark) || (is(before, Minus) && gap === '')) return 'nothing';
  if (is(before, Minus, Slash) || is(token, Slash)) return 'blanks';
  return gap === '' || is(before, ...LOOSE) || is(token, ...LOOSE) ? 'blanks or nothing' : 'blanks';
}
