import { describe, expect, test } from 'vitest';
import { lex } from '../../grammar/lexer.js';
import type { Token } from '../../grammar/token.js';
import { Eol } from '../../grammar/tokens.js';
import { lineText, position, type Source, source } from '../../src/text/source.js';
import { languageFindings } from '../support/language-findings.js';
import { specs } from '../support/specs.js';

const recipes = Object.entries(specs()).map(([path, text]) => source(path, text));

describe.each(recipes.map((recipe) => [recipe.name, recipe] as const))('%s', (_, recipe) => {
  const { tokens, comments } = lex(recipe);
  const ends = tokens.filter(({ tokenType }) => tokenType === Eol);
  const afterComment = new Set(comments.map(({ span }) => span.end));

  test('a token taken out is missed where it stood, once, or not at all', () => {
    const taken = tokens.filter(({ tokenType }) => tokenType !== Eol);
    expect(taken.flatMap((token) => wrongly(recipe, token))).toEqual([]);
  });

  // A line end that closes a comment joins the next line to that comment: what is then missing is the whole line.
  test('a line end taken out is missed on the line that came of it, once, or not at all', () => {
    const taken = ends.filter(({ startOffset }) => !afterComment.has(startOffset));
    expect(taken.flatMap((token) => wrongly(recipe, token))).toEqual([]);
  });
});

/**
 * What is said in a wrong place, or too much of it, when a token is taken out. Right places are its line and the next one
 * with something on it; at the end of a file, where none follows, the last one with something on it.
 */
function wrongly(recipe: Source, { startOffset, image }: Token): readonly string[] {
  const { name, text } = recipe;
  const cut = source(name, text.slice(0, startOffset) + text.slice(startOffset + image.length));
  const [first, ...more] = languageFindings(cut);
  if (first === undefined) return [];
  const { line } = position(cut, startOffset);
  const after = nextLine(cut, line, 1) ?? nextLine(cut, line, -1);
  const found = first.primary.span.source === cut ? position(cut, first.primary.span.start).line : 0;
  if ((found === line || found === after) && more.length === 0) return [];
  const said = [first, ...more].map(({ message }) => message).join('; ');
  return [`${position(recipe, startOffset).line} without \`${image}\`: ${found}: ${said}`];
}

/** The next line, that way, on which more than a comment stands. */
function nextLine(recipe: Source, from: number, step: 1 | -1): number | null {
  for (let line = from + step; line >= 1 && line <= recipe.lineStarts.length; line += step) {
    if (!/^\s*(?:#.*)?$/.test(lineText(recipe, line))) return line;
  }
  return null;
}
