import type { DxfDocument } from '@tarikjabiri/dxf';
import type { Weight } from '../../drawing/drawing.js';

/**
 * Typefaces that readers of the format have or replace by one that runs as wide. At equal capitals their figures are within
 * a twentieth as wide as the ones that the drawing was measured with.
 */
const FONT_FILES: Readonly<Record<Weight, string>> = { regular: 'arial.ttf', bold: 'arialbd.ttf' };

/** A text style for each weight, named like it. */
export function addTextStyles({ tables }: DxfDocument): void {
  for (const [weight, fontFile] of Object.entries(FONT_FILES)) {
    tables.addStyle(weight).fontFileName = fontFile;
  }
}
