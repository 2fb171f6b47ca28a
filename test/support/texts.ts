import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { specs } from './specs.js';

const goodRecipes = [readFileSync('test/support/kitchen-sink.plica', 'utf8'), ...Object.values(specs())];

/** Texts made of what the language is made of, in any order. */
const pieces = fc.constantFrom(
  ...[
    'units',
    'use',
    'let',
    'paper',
    'style',
    'envelope',
    'like',
    'expect',
    'card',
    'half',
    'letter',
    'x',
    'X',
    'in',
    'mm',
  ],
  ...[
    '5',
    '1/2',
    '5 1/2',
    '½',
    '51/2',
    '5,5',
    '12.',
    '"',
    '"a"',
    '“',
    '”',
    "'",
    '″',
    '\\',
    '{',
    '}',
    '(',
    ')',
    ':',
    ',',
    ';',
    '=',
  ],
  ...[
    '<=',
    '==',
    '+-',
    '±',
    '+',
    '-',
    '−',
    '*',
    '/',
    '%',
    '#',
    '@',
    ' ',
    '\t',
    '\n',
    '\r\n',
    '\u00a0',
    '\ufeff',
    '\ud800',
    'é',
    '潮',
  ],
);
const likelyText = fc
  .array(fc.oneof(pieces, fc.constant(' ')), { maxLength: 60 })
  .map((parts) => parts.join(''));
const anyText = fc.string({ unit: 'binary', maxLength: 200 });
const cutRecipe = fc
  .tuple(fc.constantFrom(...goodRecipes), fc.nat(), fc.nat(40))
  .map(([text, at, length]) => text.slice(0, at % text.length) + text.slice((at % text.length) + length));
const crossedRecipe = fc
  .tuple(fc.constantFrom(...goodRecipes), fc.nat(), pieces)
  .map(([text, at, piece]) => text.slice(0, at % text.length) + piece + text.slice(at % text.length));
/** A stretch written twice, or two stretches that stand side by side changed over. */
const restitchedRecipe = fc
  .tuple(fc.constantFrom(...goodRecipes), fc.nat(), fc.nat(40), fc.nat(40), fc.boolean())
  .map(([text, at, one, two, double]) => {
    const start = at % text.length;
    const first = text.slice(start, start + one);
    const second = double ? first : text.slice(start + one, start + one + two);
    return text.slice(0, start) + second + first + text.slice(start + one + (double ? 0 : two));
  });
/** The same with the line ends, and perhaps the mark at the start, of another system. */
const foreignRecipe = fc
  .tuple(fc.oneof(cutRecipe, crossedRecipe), fc.constantFrom('', '\ufeff'))
  .map(([text, mark]) => mark + text.replaceAll('\n', '\r\n'));

/** Any text at all, and good recipes with a piece cut, put in, doubled or moved. */
export const texts = fc.oneof(anyText, likelyText, cutRecipe, crossedRecipe, restitchedRecipe, foreignRecipe);
