import type { parse } from '../../grammar/parser.js';
import type { FileNode, StatementNode } from '../../src/syntax/ast.js';
import type { Span } from '../../src/text/span.js';

/** What must hold of the tree and the findings of any text: what speaks against it is listed. */
export const TREE_LAWS: Readonly<Record<string, (read: ReturnType<typeof parse>) => readonly unknown[]>> = {
  'spans lie in the text, and a child within its parent': ({ file, diagnostics }) => [
    ...strayChildren(file),
    ...diagnostics
      .flatMap(({ primary, related, fix }) => [primary, ...related, ...(fix ?? [])].map(({ span }) => span))
      .filter((span) => !within(span, file.span)),
  ],
  'findings come in the order of the text': ({ diagnostics }) =>
    diagnostics.filter(
      ({ primary }, index) => primary.span.start < (diagnostics[index - 1]?.primary.span.start ?? 0),
    ),
  'every number of the tree is a number': ({ file }) =>
    numbersOf(file).filter((value) => !Number.isFinite(value)),
  'what cannot be read is never passed over in silence': ({ file, diagnostics }) =>
    diagnostics.length === 0 ? file.statements.flatMap(partsLost) : [],
};

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
