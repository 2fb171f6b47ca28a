import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { compile } from '../../src/compile.js';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { RECIPE_PROBLEMS } from '../../src/recipe/problems.js';
import type { Reader } from '../../src/recipe/reader.js';
import { limit, syntax } from '../../src/syntax/problems.js';
import { position, type Source, source } from '../../src/text/source.js';

const ofLanguage = new Set([syntax, limit, ...RECIPE_PROBLEMS]);

/** The findings of language about a text, in order; the files it uses are read beside its name, from disk. */
export const languageFindings = (written: Source): readonly Diagnostic[] =>
  compile([{ id: written.name, source: written }], fromDisk).diagnostics.filter(({ problem }) =>
    ofLanguage.has(problem),
  );

/** A finding as its line and the problem's name; the line is 0 where it lies in another file. */
export const placeOf = ({ primary, problem }: Diagnostic, written: Source): string =>
  `${primary.span.source === written ? position(written, primary.span.start).line : 0}: ${problem.name}`;

const fromDisk: Reader = (path, from) => {
  const id = join(dirname(from), path);
  return { kind: 'source', id, source: source(id, readFileSync(id, 'utf8')) };
};
