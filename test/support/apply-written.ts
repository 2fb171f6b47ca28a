import { parse } from '../../grammar/parser.js';
import type { Place, WrittenChange } from '../../src/diff/difference.js';
import { ALTERNATIVES } from '../../src/recipe/properties.js';
import { merged } from '../../src/recipe/likes.js';
import type { Envelope } from '../../src/recipe/recipe.js';
import type { BlockNode } from '../../src/syntax/ast.js';
import { source } from '../../src/text/source.js';

/**
 * An older file's text with an envelope changed as is said: each value written into the envelope's own block, or into that
 * of the paper; `default` where the newer side leaves a property out. `units` are changed too, `expect`s are left alone.
 */
export function applyWritten(text: string, older: Envelope, changes: readonly WrittenChange[]): string {
  const { statements } = parse(source('recipe.plica', text)).file;
  const edits = statements.flatMap((statement) => {
    if (statement.kind === 'block') {
      const kept = statement.name.text === older.name ? hidden(older, changes) : [];
      return [...taken(statement, older.name, changes), ...put(statement, older.name, changes, kept)];
    }
    const units = changes.find(({ property }) => property === 'units')?.after;
    return statement.kind === 'units' && units ? [{ ...statement.unit.span, text: units.text }] : [];
  });
  return edits
    .sort((a, b) => b.start - a.start)
    .reduce((whole, { start, end, text: put }) => whole.slice(0, start) + put + whole.slice(end), text);
}

/** What a style states that something nearer says otherwise: it must not come back when that goes. */
function hidden({ layers }: Envelope, changes: readonly WrittenChange[]): readonly string[] {
  const [own] = layers;
  const holding = merged(layers);
  return ALTERNATIVES.flat(2).filter(
    (name) =>
      holding.get(name)?.state !== 'stated' &&
      !own?.entries.has(name) &&
      !changes.some(({ property }) => property === name),
  );
}

/** A block without the lines that a change speaks of. */
const taken = ({ name, entries }: BlockNode, envelope: string, changes: readonly WrittenChange[]) =>
  entries
    .filter((entry) =>
      changes.some(
        ({ property, before, after }) =>
          entry.kind !== 'section' &&
          entry.kind !== 'expect-post' &&
          property === entry.name.text &&
          [before, after].some((value) => blockOf(value?.place, envelope) === name.text),
      ),
    )
    .map(({ span }) => ({ ...span, text: '' }));

/** The lines that belong into a block instead, after its brace. */
function put(
  { name, span }: BlockNode,
  envelope: string,
  changes: readonly WrittenChange[],
  kept: readonly string[],
) {
  const lines = changes
    .filter(
      ({ property, before, after }) =>
        !/^(units$|expect )/.test(property) && blockOf((after ?? before)?.place, envelope) === name.text,
    )
    .map(({ property, after }) => `\n  ${property}: ${after ? (after.reading ?? after.text) : 'default'}`);
  const start = span.source.text.indexOf('{', span.start) + 1;
  return [
    {
      start,
      end: start,
      text: [...new Set(lines), ...kept.map((property) => `\n  ${property}: default`)].join(''),
    },
  ];
}

const blockOf = (place: Place | undefined, envelope: string): string | null =>
  place === undefined ? null : place.kind === 'paper' ? place.name : envelope;
