import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The rows of a table in test/reference, each by its column names. */
export function referenceTable(name: string): readonly Readonly<Record<string, string>>[] {
  const [header = '', ...rows] = readFileSync(join(import.meta.dirname, '../reference', name), 'utf8')
    .trimEnd()
    .split('\n');
  const columns = header.split('\t');
  return rows.map((row) => {
    const cells = row.split('\t');
    return Object.fromEntries(columns.map((column, index) => [column, cells[index] ?? '']));
  });
}
