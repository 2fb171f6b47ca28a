import type { TextMeasure } from '../drawing/text-measure.js';
import type { EmitOptions } from './emitter.js';
import { openDocument } from './pdf/document.js';

const known = new WeakMap<EmitOptions['fonts'], Promise<TextMeasure>>();

/** Widths of text in the fonts that a build was handed, for drawings that are not PDF; each pair of fonts is read once. */
export function fontMeasure(options: Pick<EmitOptions, 'date' | 'fonts'>): Promise<TextMeasure> {
  const measure =
    known.get(options.fonts) ?? openDocument(options, { title: '' }).then((document) => document.measure);
  known.set(options.fonts, measure);
  return measure;
}
