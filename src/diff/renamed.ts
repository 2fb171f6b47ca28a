import { FIGURES } from '../folding/figures.js';
import { printShort } from '../measure/number.js';
import { byText } from '../text/by-text.js';
import type { Recipe } from './difference.js';
import { envelopeStatements, papersOf, paperStatements, type Statements } from './statements.js';

/**
 * Envelopes that only one side has, paired where they are the same but for the name. Where several are alike, the first
 * by name goes with the first, and so on.
 */
export function renamed(
  removed: readonly Recipe[],
  added: readonly Recipe[],
): readonly (readonly [before: Recipe, after: Recipe])[] {
  if (removed.length === 0 || added.length === 0) return [];
  const [older, newer] = [byContent(removed), byContent(added)];
  return [...older].flatMap(([content, alike]) =>
    (newer.get(content) ?? []).flatMap((after, index) => {
      const before = alike[index];
      return before ? [[before, after] as const] : [];
    }),
  );
}

/** Recipes in order of name, those of one content together. */
function byContent(recipes: readonly Recipe[]): ReadonlyMap<string, readonly Recipe[]> {
  const contents = new Map<string, Recipe[]>();
  for (const recipe of recipes) {
    const content = contentOf(recipe);
    const alike = contents.get(content);
    if (alike) alike.push(recipe);
    else contents.set(content, [recipe]);
  }
  return contents;
}

/** All that makes an envelope what it is, but for its name; the same for all spellings. */
function contentOf({ envelope, facts }: Recipe): string {
  const expects = envelope.expects.map(({ name, compare, value, tolerance }) =>
    asText([name, compare, value, tolerance]),
  );
  return asText([
    listed(envelopeStatements(envelope)),
    [...papersOf(envelope)].map(([name, paper]) => [name, listed(paperStatements(paper))]),
    [...new Set(expects)].sort(),
    [...new Set(envelope.expectsPost.map(({ post }) => post))].sort(),
    [...FIGURES.values()].map(({ read }) => read(facts)),
  ]);
}

/** By property; `default` is as good as nothing. */
const listed = (statements: Statements) =>
  Object.fromEntries(
    [...statements]
      .filter(([, { value }]) => value !== null)
      .map(([name, { value }]) => [name, value] as const)
      .sort(([one], [other]) => byText(one, other)),
  );

const asText = (content: unknown): string =>
  JSON.stringify(content, (_, value: unknown) => (typeof value === 'number' ? printShort(value, 5) : value));
