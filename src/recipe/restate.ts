import type { Envelope } from './recipe.js';

/** Properties that can be stated anew when a remedy is tried. */
type Restated =
  | 'seam'
  | 'blank'
  | 'face'
  | 'ease'
  | 'depth'
  | 'shift'
  | 'sideMarks'
  | 'sealMark'
  | 'bottomMark'
  | 'flap'
  | 'bottom'
  | 'sides'
  | 'corners'
  | 'tape';

/** Other values for some properties; null puts one back as if it had been left out everywhere. */
export type Statements = { readonly [Name in Restated]?: Envelope[Name]['value'] | null };

/** Properties that say one thing twice: stating the one takes the others' place. */
export const PARTNERS: Readonly<Record<Restated, readonly Restated[]>> = {
  seam: ['blank'],
  blank: ['seam'],
  face: ['ease'],
  ease: ['face'],
  depth: [],
  shift: ['sealMark', 'bottomMark'],
  sideMarks: [],
  sealMark: [],
  bottomMark: [],
  flap: [],
  bottom: [],
  sides: [],
  corners: [],
  tape: [],
};

/** The envelope as it would be with these statements in its own block, every default derived anew. */
export function restate(envelope: Envelope, statements: Statements): Envelope {
  return {
    ...envelope,
    ...Object.fromEntries(
      Object.entries(statements).map(([n, value]) => [n, { value, origin: envelope.span }]),
    ),
  } as Envelope;
}
