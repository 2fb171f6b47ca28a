import type { DxfDocument } from '@tarikjabiri/dxf';
import type { Weight } from '../../drawing/drawing.js';

/** The typeface that the drawing was measured with; a reader that lacks it takes another. */
const FONT_FILES: Readonly<Record<Weight, string>> = {
  regular: 'SourceSans3_400Regular.ttf',
  bold: 'SourceSans3_600SemiBold.ttf',
};

/** A text style for each weight, named like it. */
export function addTextStyles({ tables }: DxfDocument): void {
  for (const [weight, fontFile] of Object.entries(FONT_FILES)) {
    tables.addStyle(weight).fontFileName = fontFile;
  }
}
