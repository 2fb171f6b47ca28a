import type { FileNode } from '../../src/syntax/ast.js';

/** A tree as nested brackets, a statement or entry a line: `(property (word "card") [(number 5 null)])`. */
export function printTree({ statements, comments }: FileNode): string {
  const lines = statements.flatMap((statement) => {
    if (!('entries' in statement)) return [printNode(statement)];
    return [
      printNode({ ...statement, entries: [] }),
      ...statement.entries.map((entry) => `  ${printNode(entry)}`),
    ];
  });
  return `${[...lines, `${comments.length} comments`].join('\n')}\n`;
}

/** A node without its place. */
export function printNode(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(printNode).join(' ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).filter(([name]) => name !== 'kind' && name !== 'span');
  const { kind } = value as { readonly kind: string };
  return `(${[kind, ...fields.map(([, field]) => printNode(field))].join(' ')})`;
}
