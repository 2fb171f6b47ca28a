import type { Diagnostic } from '../src/diagnostics/diagnostic.js';
import { report } from '../src/diagnostics/problem.js';
import { unseenCharacter } from '../src/syntax/problems.js';
import type { Source } from '../src/text/source.js';
import { type Span, spanText } from '../src/text/span.js';
import { characterName } from './characters.js';
import { endOf, is, type Token } from './token.js';
import { Comment, OddComment } from './tokens.js';

/** Strings and comments, each with what cannot be seen in it; of very many, the last that is told tells of the rest. */
export function reportUnseen(source: Source, tokens: readonly Token[]): readonly Diagnostic[] {
  if (PLAIN.test(source.text)) return [];
  const found = tokens
    .map((token) => ({ inside: nameOf(token), spans: unseenIn(source, token) }))
    .filter(({ spans }) => spans.length > 0);
  const told = found.slice(0, MOST_TOLD);
  const rest = found.slice(MOST_TOLD).flatMap(({ spans }) => spans);
  return told.map(({ inside, spans }, index) =>
    unseenInside(inside, index === MOST_TOLD - 1 ? [...spans, ...rest] : spans),
  );
}

/** What is on a keyboard, and nothing else: most recipes. */
const PLAIN = /^[\t\n\r -~]*$/;

/** How many strings and comments of a file are told one by one. */
const MOST_TOLD = 100;

const nameOf = (token: Token): string => (is(token, Comment, OddComment) ? 'comment' : 'string');

function unseenIn(source: Source, token: Token): readonly Span[] {
  const text = source.text.slice(token.startOffset, endOf(token));
  return [...text.matchAll(unseenOrJoining())]
    .filter(({ groups }) => groups?.['unseen'] !== undefined)
    .map(({ index, 0: { length } }) => {
      const start = token.startOffset + index;
      return { source, start, end: start + length };
    });
}

/** The alphabets in which a joiner of no width, or one that parts, belongs to the spelling (Unicode's UAX #31, 2.3; from memory). */
const JOINING =
  '[\\p{scx=Arab}\\p{scx=Syrc}\\p{scx=Mong}\\p{scx=Deva}\\p{scx=Beng}\\p{scx=Guru}\\p{scx=Gujr}\\p{scx=Orya}\\p{scx=Taml}\\p{scx=Telu}\\p{scx=Knda}\\p{scx=Mlym}\\p{scx=Sinh}\\p{scx=Khmr}\\p{scx=Mymr}]';

/**
 * What cannot be seen: control characters, line ends of other kinds, marks that turn the writing, spaces of no width, and all
 * that Unicode says is ignored where it is not known. First what joins the parts of one picture or letter, which is
 * passed over: joiners within an emoji or a word, the look of the character before, the flags of three countries. It is made
 * when it is first wanted: that costs more than most recipes take to be parsed.
 */
function unseenOrJoining(): RegExp {
  made ??= new RegExp(
    [
      '(?<=[\\p{Extended_Pictographic}\\p{Emoji_Modifier}\\ufe0f])\\u200d(?=\\p{Extended_Pictographic})',
      `(?<=${JOINING})[\\u200c\\u200d](?=${JOINING})`,
      '(?<=[\\p{L}\\p{M}\\p{N}\\p{P}\\p{S}])(?<!\\p{DI})\\p{VS}',
      '(?<=\\u{1f3f4})\\u{e0067}\\u{e0062}(?:\\u{e0065}\\u{e006e}\\u{e0067}|\\u{e0073}\\u{e0063}\\u{e0074}|\\u{e0077}\\u{e006c}\\u{e0073})\\u{e007f}',
      '(?<unseen>(?!\\t)[\\p{Cc}\\p{Cs}\\p{Zl}\\p{Zp}\\p{DI}\\ufff9-\\ufffb])',
    ].join('|'),
    'gu',
  );
  return made;
}
let made: RegExp | undefined;

function unseenInside(inside: string, spans: readonly Span[]): Diagnostic {
  const [at, ...others] = spans as [Span, ...Span[]];
  const character = spanText(at);
  const more = ['', ' with the other one'][others.length] ?? ` with the ${others.length} others`;
  return report(unseenCharacter, {
    message: `something that cannot be seen stands in this ${inside}`,
    at,
    label: `this is ${characterName(character.codePointAt(0) ?? 0)}`,
    why: TURNS.test(character)
      ? 'it turns the writing round: what is read here may not be what is written'
      : 'what is read here may not be what is written',
    help: `leave it out${more}, as \`plica check --fix\` does`,
    fix: spans.map((span) => ({ span, text: LINE_END.test(spanText(span)) ? ' ' : '' })),
  });
}

/** What ends a line elsewhere: a space parts the words that it parted. */
const LINE_END = /[\u000b\u000c\u0085\u2028\u2029]/;

/** Marks that turn the direction of writing (Unicode's Bidi_Control). */
const TURNS = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/;
