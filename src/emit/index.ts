import { card } from './card.js';
import { cutSheetPdf } from './cut-sheet/cut-sheet-pdf.js';
import { dxf } from './dxf/dxf.js';
import type { Emitter } from './emitter.js';
import { fold } from './fold/fold.js';
import { print } from './print-pdf/print-pdf.js';
import { steps } from './steps.js';
import { svg } from './svg/svg.js';
import { template } from './template-pdf/template-pdf.js';

/** What writes each kind of file, in the order in which kinds.ts names them. */
export const EMITTERS: readonly Emitter[] = [cutSheetPdf, template, svg, steps, card, dxf, fold, print];
