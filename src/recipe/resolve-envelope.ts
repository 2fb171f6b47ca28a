import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import type { Span } from '../text/span.js';
import { withDefaults } from './defaults.js';
import { isBroken, stated } from './gathered.js';
import type { Gathered } from './likes.js';
import type { BlockDeclaration } from './names.js';
import { onShelf, type PaperShelf } from './paper-shelf.js';
import { missing } from './problems.js';
import type { Envelope } from './recipe.js';

/** An envelope as meant. Null where it, or a paper that it names, has an error in what matters on paper. */
export function resolveEnvelope(
  { node, file }: BlockDeclaration,
  gathered: Gathered | null,
  papers: PaperShelf,
  tell: (finding: Diagnostic) => void,
): Envelope | null {
  if (gathered === null) return null;
  const card = stated(gathered, 'card');
  if (card === null && gathered.entries.get('card')?.state !== 'broken')
    tell(cardMissing(node, file.units === 'in'));
  if (card === null || isBroken(gathered) || file.units === 'broken') return null;
  const named = { paper: stated(gathered, 'paper'), linerPaper: stated(gathered, 'liner-paper') };
  const paper = onShelf(named.paper, papers);
  const linerPaper = onShelf(named.linerPaper, papers);
  if ((named.paper && paper === null) || (named.linerPaper && linerPaper === null)) return null;
  const units = file.units === 'none' ? 'mm' : file.units;
  const header = { name: node.name.text, span: node.name.span, statement: node.span, units };
  return withDefaults(header, card, { paper, linerPaper }, gathered);
}

/** The same cut from another paper, which is named at `span`. What it expects of its figures holds on its own paper only. */
export const onPaper = (
  gathered: Gathered | null,
  paper: BlockDeclaration | null,
  span: Span,
): Gathered | null =>
  gathered && paper
    ? {
        ...gathered,
        expects: [],
        entries: new Map(gathered.entries).set('paper', { state: 'stated', value: paper, span, from: null }),
      }
    : gathered;

const cardMissing = ({ name, like }: BlockDeclaration['node'], inches: boolean): Diagnostic =>
  report(missing, {
    message: `\`${name.text}\` has no \`card\``,
    at: name.span,
    why: like
      ? `neither it nor what it is like (\`${like.text}\`) states one, and everything else is derived from the card`
      : 'everything else is derived from the card',
    help: `add a line \`card: ${inches ? '8 1/2 x 5 1/2' : '148 x 105 mm'}\` with the sides of the folded card`,
  });
