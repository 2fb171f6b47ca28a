import type { FlapName } from '../folding/folding.js';
import type { ShapedFlap } from './remedy.js';

/** The property that shapes each flap's tip. */
export const SHAPED_BY: Readonly<Record<FlapName, ShapedFlap>> = {
  left: 'sides',
  right: 'sides',
  seal: 'flap',
  bottom: 'bottom',
};

/** Each property that shapes tips, with one of its flaps (the side flaps are alike but for their marks) and its name. */
export const SHAPED_FLAPS: readonly {
  readonly property: ShapedFlap;
  readonly flaps: readonly FlapName[];
  readonly name: string;
}[] = [
  { property: 'flap', flaps: ['seal'], name: 'seal flap' },
  { property: 'bottom', flaps: ['bottom'], name: 'bottom flap' },
  { property: 'sides', flaps: ['left', 'right'], name: 'side flaps' },
];
