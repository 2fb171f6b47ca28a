import { compile } from '../../src/compile.js';
import { applyFixes, type Mended } from '../../src/diagnostics/apply-fixes.js';
import { source } from '../../src/text/source.js';
import { readerOf } from './compile-text.js';

/** A recipe's text after every edit that serves, and what was mended. */
export function fixedText(
  text: string,
  name = 'recipe.plica',
): { readonly text: string } & Pick<Mended, 'fixed'> {
  const { sources, fixed } = applyFixes(
    [source(name, text)],
    (given) =>
      compile(
        given.map((each) => ({ id: each.name, source: each })),
        readerOf({}),
      ).diagnostics,
  );
  return { text: sources[0]?.text ?? '', fixed };
}
