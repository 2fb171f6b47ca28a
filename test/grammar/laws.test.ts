import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from '../../grammar/parser.js';
import type { FileNode, StatementNode } from '../../src/syntax/ast.js';
import { applyEdits } from '../../src/text/edit.js';
import { source } from '../../src/text/source.js';
import type { Span } from '../../src/text/span.js';
import { texts } from '../support/texts.js';

const seed = { seed: 1 };
const read = (text: string) => parse(source('recipe.plica', text));

test('parsing never throws, for any text and for any good recipe with a piece cut, put in, doubled or moved', () => {
  fc.assert(
    fc.property(texts, (text) => {
      expect(read(text).file.kind).toBe('file');
    }),
    { ...seed, numRuns: 1000 },
  );
});

test('spans lie in the text, and a child within its parent', () => {
  fc.assert(
    fc.property(texts, (text) => {
      const { file, diagnostics } = read(text);
      expect(strayChildren(file)).toEqual([]);
      for (const { primary, related, fix } of diagnostics) {
        const spans = [
          primary.span,
          ...related.map(({ span }) => span),
          ...(fix ?? []).map(({ span }) => span),
        ];
        expect(spans.filter((span) => !within(span, file.span))).toEqual([]);
      }
    }),
    { ...seed, numRuns: 1000 },
  );
});

test('findings come in the order of the text', () => {
  fc.assert(
    fc.property(texts, (text) => {
      const starts = read(text).diagnostics.map(({ primary }) => primary.span.start);
      expect(starts).toEqual(starts.toSorted((a, b) => a - b));
    }),
    { ...seed, numRuns: 1000 },
  );
});

test('every number of the tree is a number', () => {
  fc.assert(
    fc.property(texts, (text) => {
      expect(numbersOf(read(text).file).filter((value) => !Number.isFinite(value))).toEqual([]);
    }),
    { ...seed, numRuns: 1000 },
  );
});

test('what cannot be read is never passed over in silence', () => {
  fc.assert(
    fc.property(texts, (text) => {
      const { file, diagnostics } = read(text);
      if (diagnostics.length === 0) expect(file.statements.flatMap(partsLost)).toEqual([]);
    }),
    { ...seed, numRuns: 1000 },
  );
});

describe('a fix mends what it is offered for', () => {
  const folder = 'test/rejected/syntax';
  const names = readdirSync(folder).filter((name) => name.endsWith('.plica'));
  test.each(names)('%s', (name) => {
    const text = readFileSync(join(folder, name), 'utf8');
    const { diagnostics } = read(text);
    for (const { fix } of diagnostics) {
      if (fix === null) continue;
      const mended = read(applyEdits(text, fix));
      expect(mended.diagnostics).toHaveLength(diagnostics.length - 1);
    }
  });

  test.each(names)('%s: all of them together', (name) => {
    const text = readFileSync(join(folder, name), 'utf8');
    const { diagnostics } = read(text);
    const edits = diagnostics.flatMap(({ fix }) => fix ?? []);
    const left = diagnostics.filter(({ fix }) => fix === null);
    expect(read(applyEdits(text, edits)).diagnostics).toHaveLength(left.length);
  });
});

const within = (inner: Span, outer: Span): boolean =>
  inner.start <= inner.end && outer.start <= inner.start && inner.end <= outer.end;

/** Lets, properties and expects that came without what they state. */
function partsLost(statement: StatementNode): readonly string[] {
  if (statement.kind === 'let') return statement.value === null ? [statement.name.text] : [];
  if (!('entries' in statement)) return [];
  return statement.entries
    .filter((entry) => entry.kind !== 'expect-post')
    .filter((entry) => (entry.kind === 'expect' ? entry.value === null : entry.values.length === 0))
    .map((entry) => (entry.kind === 'section' ? entry.title.value : entry.name.text));
}

/** The spans of nodes that reach out of the node they are part of. */
function strayChildren(node: FileNode): Span[] {
  const strays: Span[] = [];
  visit(node, (child, parent) => {
    if (parent !== null && !within(child, parent)) strays.push(child);
  });
  return strays;
}

function numbersOf(file: FileNode): number[] {
  const numbers: number[] = [];
  const look = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if ('kind' in value && value.kind === 'number')
      numbers.push((value as unknown as { value: number }).value);
    for (const [name, part] of Object.entries(value)) if (name !== 'span' && name !== 'source') look(part);
  };
  look(file);
  return numbers;
}

function visit(
  value: unknown,
  see: (span: Span, parent: Span | null) => void,
  parent: Span | null = null,
): void {
  if (typeof value !== 'object' || value === null) return;
  const span = 'span' in value ? (value.span as Span) : parent;
  if ('span' in value) see(value.span as Span, parent);
  for (const [name, part] of Object.entries(value)) {
    if (name !== 'span' && name !== 'source') visit(part, see, span);
  }
}
