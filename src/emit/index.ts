import { card } from './card.js';
import { cutSheetPdf } from './cut-sheet/cut-sheet-pdf.js';
import { dxf } from './dxf/dxf.js';
import type { Emitter } from './emitter.js';
import { fold } from './fold/fold.js';
import type { KINDS } from './kinds.js';
import { print } from './print-pdf/print-pdf.js';
import { steps } from './steps.js';
import { svg } from './svg/svg.js';
import { template } from './template-pdf/template-pdf.js';

/** What writes each kind of file that kinds.ts names, in the order in which it is written. */
export const EMITTERS: readonly Emitter[] = Object.values({
  'cut-sheet': cutSheetPdf,
  template,
  svg,
  steps,
  card,
  dxf,
  fold,
  print,
} satisfies Readonly<Record<keyof typeof KINDS, Emitter>>);
