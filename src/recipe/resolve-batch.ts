import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import type { Batch } from './batch.js';
import { isBroken, stated } from './gathered.js';
import type { Gathered } from './likes.js';
import type { Make } from './kinds/makes.js';
import type { BlockDeclaration } from './names.js';
import { missing } from './problems.js';
import type { Envelope } from './recipe.js';

/** Works out an envelope as a batch asks for it; null where it or its paper is broken, which is reported there. */
export type Orderer = (make: Make) => Envelope | null;

/** A batch as meant. Null where it, or an envelope or a paper that it names, has an error. */
export function resolveBatch(
  { node, file }: BlockDeclaration,
  gathered: Gathered | null,
  ordered: Orderer,
  tell: (finding: Diagnostic) => void,
): Batch | null {
  if (gathered === null) return null;
  const make = stated(gathered, 'make');
  if (make === null && gathered.entries.get('make')?.state !== 'broken') tell(makeMissing(node));
  if (make === null || isBroken(gathered) || file.units === 'broken') return null;
  const orders = make.value.flatMap(({ span, count, ...rest }) => {
    const envelope = ordered({ span, count, ...rest });
    return envelope === null ? [] : [{ envelope, count, span }];
  });
  if (orders.length < make.value.length) return null;
  return {
    name: node.name.text,
    span: node.name.span,
    units: file.units === 'none' ? 'mm' : file.units,
    title: stated(gathered, 'title')?.value ?? node.name.text,
    spoilage: stated(gathered, 'spoilage')?.value ?? 0,
    orders,
    ordersFrom: make.origin.kind === 'inherited' ? make.origin.from : null,
    layers: gathered.layers,
  };
}

const makeMissing = ({ name }: BlockDeclaration['node']): Diagnostic =>
  report(missing, {
    message: `\`${name.text}\` does not say what to make`,
    at: name.span,
    help: 'add a line such as `make: half-letter 40, a6-tides 25 on kraft`',
  });
