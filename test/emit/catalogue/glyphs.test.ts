import fc from 'fast-check';
import { expect, test } from 'vitest';
import { glyphsOf } from '../../../src/emit/catalogue/pdf/glyphs.js';
import { beginDocument } from '../../../src/emit/pdf/document.js';
import { emitOptions } from '../../support/pdf-pages.js';

const begun = await beginDocument(emitOptions(), { title: 'Tides' });
const { show } = glyphsOf(begun);

const signs = (characters: string) =>
  fc.string({ unit: fc.constantFrom(...characters), minLength: 1, maxLength: 9 });

/** As lengths stand in a line, not to be parted. */
const length = fc
  .array(
    fc.constantFrom('11', '1⁄4', '×', '8', '15⁄16', 'in', 'mm', 'cm', '(215.9', '139.7', 'mm),', 'To', 'AV'),
    {
      minLength: 1,
      maxLength: 7,
    },
  )
  .map((words) => words.join('\u00a0'));

test.each(['regular', 'bold'] as const)('figures are set as the font shapes them whole: %s', (weight) => {
  const anyFigures = fc.oneof(
    signs('0123456789'),
    signs('0123456789.,/×-() \u00a0'),
    signs('1174/'),
    signs('(1.7)'),
    length,
  );
  fc.assert(
    fc.property(anyFigures, (figures) => {
      begun.pdf.font(weight);
      const [codes, positions] = begun.pdf._font.encode(figures);
      const { operand } = show(figures, weight);
      const closer = positions.map((each) => Math.round((each.advanceWidth - each.xAdvance) * 1000) / 1000);
      expect([...operand.matchAll(/<(\w+)>/g)].map(([, code]) => code).join('')).toBe(codes.join(''));
      expect([...operand.matchAll(/>(-?[\d.]+)/g)].map(([, by]) => Number(by))).toEqual(
        closer.filter(Boolean),
      );
      const width = positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
      expect(show(figures, weight).width).toBeCloseTo(width / 1000, 9);
    }),
  );
});
