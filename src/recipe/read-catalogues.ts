import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import type { CatalogueNode } from '../syntax/ast.js';
import type { Source } from '../text/source.js';
import type { Catalogue } from './catalogue.js';
import type { Context } from './place.js';
import { conflict, repeated } from './problems.js';
import { readCatalogue } from './read-catalogue.js';
import type { RecipeFile } from './uses.js';

/** The catalogues of the given files; a folder has one. */
export function readCatalogues(files: readonly RecipeFile[], context: Context): readonly Catalogue[] {
  const all = files
    .filter(({ given }) => given)
    .flatMap((file) =>
      file.node.statements.flatMap((node) =>
        node.kind === 'catalogue' ? [{ node, catalogue: readCatalogue(node, file, context) }] : [],
      ),
    );
  const firsts = new Map<Source, CatalogueNode>();
  for (const { node } of all) {
    const { source } = node.span;
    const first = firsts.get(source);
    if (first === undefined) firsts.set(source, node);
    else context.tell(secondCatalogue(node, first));
    if (first === undefined && !READ_FROM.test(source.name)) context.tell(readElsewhere(node));
  }
  return all.map(({ catalogue }) => catalogue);
}

/** Where a command looks for the statement; standard input may stand for it. */
const READ_FROM = /(?:^|\/)catalogue\.plica$|^<stdin>$/;

const secondCatalogue = ({ head }: CatalogueNode, first: CatalogueNode): Diagnostic =>
  report(repeated, {
    message: 'a file states one catalogue, and this is another',
    at: head.span,
    label: 'again here',
    related: [{ span: first.head.span, text: 'first stated here' }],
    help: 'join the two',
  });

const readElsewhere = ({ head }: CatalogueNode): Diagnostic =>
  report(conflict, {
    message: 'this catalogue is read from nowhere',
    severity: 'warning',
    at: head.span,
    why: 'the statement of a folder is that of its `catalogue.plica`',
    help: 'move it to `catalogue.plica`, at the top of the folder',
  });
