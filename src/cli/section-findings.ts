import { basename, dirname } from 'node:path';
import { parse } from '../../grammar/parser.js';
import type { CheckedRecipe } from '../compile.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Host } from '../host/host.js';
import { isInside, type PlacedFile, reader } from '../host/reader.js';
import { STATED_IN } from '../recipe/catalogue.js';
import { resolve } from '../recipe/resolve.js';
import { unknownTakes } from '../recipe/section-names.js';

/**
 * What sections of catalogues take that no envelope below their folder has. Asked for whole folders only: of some files nobody knows
 * what else there is.
 */
export function sectionFindings(
  folders: readonly string[],
  files: readonly PlacedFile[],
  recipes: readonly CheckedRecipe[],
  host: Host,
): readonly Diagnostic[] {
  const whole = folders.map((folder) => host.realPath(folder) ?? folder);
  return files
    .filter(({ input: { id } }) => basename(id) === STATED_IN && whole.some((folder) => isInside(folder, id)))
    .flatMap((file) => {
      const [catalogue] = resolve([file.input], reader(host, [file])).catalogues;
      if (catalogue === undefined) return [];
      const below = files.filter(({ input }) => isInside(dirname(file.input.id), input.id));
      const sources = new Set(below.map(({ input }) => input.source.name));
      const own = recipes.filter(({ envelope }) => sources.has(envelope.span.source.name));
      const names = new Set(below.flatMap(envelopesIn));
      const tags = new Set(own.flatMap(({ envelope }) => envelope.tags.value));
      return unknownTakes(catalogue, { names, tags: own.length < names.size ? null : tags });
    });
}

/** The envelopes that a file states, broken ones too. */
const envelopesIn = ({ input }: PlacedFile): readonly string[] =>
  parse(input.source).file.statements.flatMap((statement) =>
    statement.kind === 'block' && statement.type === 'envelope' ? [statement.name.text] : [],
  );
