import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { expect } from 'vitest';
import { compile } from '../../src/compile.js';
import { renderText } from '../../src/diagnostics/render-text.js';
import type { Reader } from '../../src/recipe/reader.js';
import { lineText, position, source } from '../../src/text/source.js';

/** The recipes of a folder, by name; those in folders below are only there to be used. */
export const recipesIn = (folder: string): readonly string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.plica'))
    .sort()
    .map((name) => join(folder, name));

/** Every recipe that is laid down to be refused: of the language, of writing, and of every rule. */
export const refusedRecipes = (): readonly string[] =>
  ['test/rejected', 'test/rules'].flatMap((room) =>
    readdirSync(room, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .flatMap(({ name }) => recipesIn(join(room, name)))
      .filter((path) => !basename(path).startsWith('accepted-')),
  );

/**
 * Compiles one recipe and expects two things: a finding of each problem that a comment names on its line, and no other
 * (`blank: 10 # creases-cross`, `# missing, range`); and the findings as people see them, in NAME.findings.txt.
 */
export async function expectFindings(path: string): Promise<void> {
  const text = readFileSync(path, 'utf8');
  const written = source(basename(path), text);
  const { diagnostics } = compile([{ id: path, source: written }], readBeside(dirname(path)));
  const found = diagnostics
    .filter(({ primary }) => primary.span.source === written)
    .map(({ primary, problem }) => `${position(written, primary.span.start).line}: ${problem.name}`);
  expect(found.sort(), 'what is found, where the comments at the ends of lines name it').toEqual(
    expected(text).sort(),
  );
  await expect(renderText(diagnostics)).toMatchFileSnapshot(path.replace(/\.plica$/, '.findings.txt'));
}

function expected(text: string): string[] {
  const written = source('', text);
  return written.lineStarts.flatMap((_, index) => {
    const names = /#\s*([a-z]+(?:-[a-z]+)*(?:, [a-z]+(?:-[a-z]+)*)*)$/.exec(
      lineText(written, index + 1),
    )?.[1];
    return names ? names.split(', ').map((name) => `${index + 1}: ${name}`) : [];
  });
}

/** Reads the files of the folder; what lies above it is outside the project. */
const readBeside =
  (root: string): Reader =>
  (path, from) => {
    const id = join(dirname(from), path);
    if (!id.startsWith(root)) return { kind: 'outside-root' };
    try {
      return { kind: 'source', id, source: source(id.slice(root.length + 1), readFileSync(id, 'utf8')) };
    } catch {
      return { kind: 'unreadable', reason: 'there is no such file' };
    }
  };
