import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import { nearest } from '../text/nearest.js';
import type { Catalogue } from './catalogue.js';
import { unknownName } from './problems.js';
import { quote } from './quote.js';
import { anyOf } from './meant/unknown-word.js';

/** What the envelopes of a folder are called, broken ones too, and their tags; null: some are broken, and may have others. */
export interface FolderNames {
  readonly names: ReadonlySet<string>;
  readonly tags: ReadonlySet<string> | null;
}

/** What sections take that is not there: a name is an error, a tag a warning. */
export const unknownTakes = ({ sections }: Catalogue, { names, tags }: FolderNames): readonly Diagnostic[] =>
  sections
    .flatMap(({ takes }) => takes)
    .filter(({ by, word }) => (by === 'name' ? !names.has(word) : tags !== null && !tags.has(word)))
    .map(({ by, word, span }) => {
      const named = by === 'name';
      const near = nearest(word, named ? names : (tags ?? []));
      return report(unknownName, {
        message: named
          ? `${quote(span)} is no envelope of this folder`
          : `no envelope of this folder is tagged \`${word}\``,
        at: span,
        severity: named ? 'error' : 'warning',
        help: named && word === 'tagged' ? 'the tag is missing: write `tagged TAG`' : meant(near),
      });
    });

const meant = (near: readonly string[]): string =>
  near.length > 0 ? `did you mean ${anyOf(near)}?` : 'spell it as the recipes do, or leave it out';
