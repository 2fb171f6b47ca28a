import { card } from './card/card.js';
import { cutSheetPdf } from './cut-sheet/cut-sheet-pdf.js';
import { dxf } from './dxf/dxf.js';
import type { Emitter } from './emitter.js';
import { fold } from './fold/fold.js';
import { print } from './print-pdf/print-pdf.js';
import { steps } from './steps/steps.js';
import { svg } from './svg/svg.js';
import { template } from './template-pdf/template-pdf.js';

/** Every kind of file that a build writes, in the order in which they are named. */
export const EMITTERS: readonly Emitter[] = [cutSheetPdf, template, svg, steps, card, dxf, fold, print];
