import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Fonts } from './host.js';

/** Reads the fonts that the build lays beside the program. */
export const fonts = (): Fonts => ({ regular: font('regular'), bold: font('bold') });

const font = (weight: keyof Fonts): Uint8Array =>
  readFileSync(join(import.meta.dirname, 'fonts', `${weight}.ttf`));
