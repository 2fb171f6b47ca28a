import type { Batch } from '../recipe/batch.js';
import { byText } from '../text/by-text.js';
import type { BatchChange, Side } from './difference.js';
import { batchStatements } from './statements.js';
import { statementsThatDiffer } from './written.js';

/**
 * Batches that differ, by name. One that a side states and that did not compile there is passed over: its mistakes are told, and
 * what became of it cannot be.
 */
export function batchChanges(before: Side, after: Side): readonly BatchChange[] {
  const [older, newer] = [named(before), named(after)];
  return [...new Set([...older.keys(), ...newer.keys()])]
    .sort(byText)
    .flatMap((name): readonly BatchChange[] => {
      const [was, is] = [older.get(name), newer.get(name)];
      if (was && is) {
        const written = statementsThatDiffer(batchStatements(was), batchStatements(is), was.units, is.units);
        return written.length > 0 ? [{ kind: 'changed', name, at: is.span, written }] : [];
      }
      if (is) return states(before, name) ? [] : [{ kind: 'added', name, at: is.span, written: [] }];
      if (was) return states(after, name) ? [] : [{ kind: 'removed', name, at: was.span, written: [] }];
      return [];
    });
}

const named = ({ batches = [] }: Side): ReadonlyMap<string, Batch> =>
  new Map(batches.map(({ batch }) => [batch.name, batch]));

/** Whether a text of a side has the header of that batch. */
const states = ({ texts = [] }: Side, name: string): boolean =>
  texts.some((text) => [...text.matchAll(HEADER)].some(([, stated]) => stated === name));

const HEADER = /^[ \t]*batch[ \t]+([a-z][a-z0-9-]*)/gim;
