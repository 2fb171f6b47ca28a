import { type CompiledRecipe, compileEnvelope } from '../../compile.js';
import type { FileLeaves, Row } from '../../emit/catalogue/leaf.js';
import { rowOf } from '../../emit/catalogue/row.js';
import { type Found, found } from '../../emit/json/found.js';
import type { Host, Written } from '../../host/host.js';
import { type PlacedFile, reader } from '../../host/reader.js';
import { resolve } from '../../recipe/resolve.js';
import { position } from '../../text/source.js';

/** A leaf that is kept, or what kept it from being so. */
export type Kept = Pick<Row, 'leaf' | 'pages'> | NotWritten;

export type NotWritten = Extract<Written, { readonly kind: 'unwritable' }>;

/** Makes the leaf of a sound recipe, or finds it where it was kept. */
export type Keep = (recipe: CompiledRecipe) => Kept;

/** Some of a file's envelopes: those of one of so many equal parts. */
export interface Part {
  readonly part: number;
  readonly parts: number;
}

export const WHOLE: Part = { part: 0, parts: 1 };

/**
 * What a recipe file comes to, compiled by itself, one envelope after the other. Places are named as the file's source is, so that
 * should be called what the catalogue calls it. What the language finds is told with the first part.
 */
export function fileLeaves(
  file: PlacedFile,
  host: Host,
  keep: Keep,
  { part, parts }: Part = WHOLE,
): FileLeaves | NotWritten {
  const { envelopes, diagnostics } = resolve([file.input], reader(host, [file]));
  const rows: Row[] = [];
  const findings: Found[] = part === 0 ? diagnostics.map((diagnostic) => found(diagnostic)) : [];
  const [from, until] = [part, part + 1].map((edge) => Math.floor((envelopes.length * edge) / parts));
  const some = envelopes.slice(from, until);
  for (const envelope of some) {
    const recipe = compileEnvelope(envelope);
    if (recipe.diagnostics.some(({ severity }) => severity === 'error')) {
      findings.push(...recipe.diagnostics.map((diagnostic) => found(diagnostic)));
      continue;
    }
    const kept = keep(recipe);
    if ('reason' in kept) return kept;
    rows.push(rowOf(recipe, { file: envelope.span.source.name, ...kept }));
  }
  const names = some.map(({ name, span }) => ({ name, ...position(span.source, span.start) }));
  return { file: file.input.source.name, rows, findings, names };
}
