import type { Source } from '../../src/text/source.js';
import { characterName } from '../characters.js';
import { readNumber } from '../number.js';
import { either, slip } from '../slip.js';
import { endOf, is, meantAs, readAs, spanOf, type Token } from '../token.js';
import { InchMark, NumberToken, Word } from '../tokens.js';
import type { Seen } from './look.js';

/** A number with its value, or with none and what is wrong with it. */
export function lookAtNumber(token: Token, source: Source): Seen {
  const value = readNumber(token.image);
  if (typeof value === 'number') return { reading: readAs(NumberToken, token, value) };
  const at = spanOf(source, token);
  const [only, ...others] = value.readings;
  const finding = slip({
    message: `\`${token.image}\` ${value.wrong}`,
    at,
    ...(value.why === undefined ? {} : { why: value.why }),
    help:
      only === undefined
        ? (value.help ?? 'write it as `12`, `0.5`, `1/2` or `5 1/2`')
        : `write ${either(value.readings)}`,
    ...(only !== undefined && others.length === 0 ? { fix: [{ span: at, text: only }] } : {}),
  });
  return { reading: readAs(NumberToken, token, null), finding };
}

/** Two apostrophes, curly quotes or a double prime for `"`. */
export function lookAtOddInch(token: Token, source: Source, before: Token | undefined): Seen {
  const touches = before !== undefined && endOf(before) === token.startOffset;
  const at = spanOf(source, token);
  const finding = slip({
    message: touches ? 'an inch mark is a straight `"`' : 'an inch mark touches its number',
    at,
    label: `this is ${characterName(token.image.charCodeAt(0))}`,
    help: 'write `"` right after the number, or `in`',
    ...(is(before, NumberToken)
      ? { fix: [{ span: { ...at, start: endOf(before as Token) }, text: '"' }] }
      : {}),
  });
  return { reading: meantAs(token.tokenType, token, '"'), finding };
}

/** `5'`: a foot is twelve inches, and no unit here. */
export function lookAtFeet(token: Token, source: Source, before: Token | undefined): Seen {
  const feet = Number(before?.image);
  const inches = String(Math.round(feet * 12 * 1e4) / 1e4);
  const next = source.text.slice(endOf(token)).match(/^[ \t]*[0-9]/);
  const sure = Number.isFinite(feet) && next === null;
  const finding = slip({
    message: 'feet are no unit here',
    at: spanOf(source, token),
    label: 'one mark is feet, two are inches',
    help: sure
      ? `write \`${inches} in\`, or \`${before?.image}"\` if inches are meant`
      : 'write the length in inches',
  });
  return { reading: readAs(InchMark, token, null), finding };
}

/** `80# cover` */
export function lookAtPounds(token: Token, source: Source, before: Token | undefined): Seen {
  const at = spanOf(source, token);
  const grade = /^[ \t]*([a-z]+)/i.exec(source.text.slice(endOf(token)))?.[1] ?? '';
  const finding = slip({
    message: 'pounds of paper are written `lb`, because `#` begins a comment',
    at,
    help: `write \`${before?.image} lb ${grade}\``,
    fix: [{ span: at, text: source.text[at.end] === ' ' ? ' lb' : ' lb ' }],
  });
  return { reading: meantAs(Word, token, 'lb', null), finding };
}

/** `250 g/m²` */
export function lookAtGrammage(token: Token, source: Source, before: Token | undefined): Seen {
  const at = spanOf(source, token);
  const touches = before !== undefined && endOf(before) === token.startOffset;
  const finding = slip({
    message: 'grams for a square metre are written `gsm`',
    at,
    help: `write \`${before?.image} gsm\``,
    fix: [{ span: at, text: touches ? ' gsm' : 'gsm' }],
  });
  return { reading: meantAs(Word, token, 'gsm'), finding };
}

/** `5 in.` */
export function lookAtPoint(token: Token, source: Source, before: Token | undefined): Seen {
  const at = spanOf(source, token);
  const finding = slip({
    message: 'no point follows a unit',
    at,
    help: `write \`${before?.image}\``,
    fix: [{ span: at, text: '' }],
  });
  return { reading: null, finding };
}
