import { describe, expect, test } from 'vitest';
import { restate } from '../../src/recipe/restate.js';
import { envelopesOf } from '../support/resolve-text.js';

const INCH = 25.4;
const only = (text: string) => envelopesOf(text)('e');

describe('what is left out', () => {
  test('in a house that works in inches', () => {
    const envelope = only('units in\nenvelope e { card: 8 1/2 x 5 1/2 }');
    expect(envelope.ease.value).toEqual({ width: INCH / 4, height: INCH / 4 });
    expect(envelope.face.value.width).toBeCloseTo(8.75 * INCH, 9);
    expect(envelope.face.value.height).toBeCloseTo(5.75 * INCH, 9);
    expect(envelope.seam.value).toBe(INCH / 2);
    expect(envelope.step.value).toBe(INCH / 16);
    expect(envelope.tolerance.value).toBe(INCH / 32);
    expect(envelope.units).toBe('in');
  });

  test.each(['mm', 'cm'])('in one that works in %s', (units) => {
    const envelope = only(`units ${units}\nenvelope e { card: A6 }`);
    expect(envelope).toMatchObject({
      units,
      title: { value: 'e' },
      note: { value: [] },
      tags: { value: [] },
      card: { value: { width: 148, height: 105 } },
      face: { value: { width: 153, height: 110 } },
      ease: { value: { width: 5, height: 5 } },
      seam: { value: 12 },
      step: { value: 0.5 },
      tolerance: { value: 0.8 },
      tape: { value: 6 },
      bulk: { value: 1 },
      depth: { value: 0 },
      shift: { value: 0 },
      contents: { value: null },
      blank: { value: null },
      sideMarks: { value: null },
      sealMark: { value: null },
      bottomMark: { value: null },
      flap: { value: null },
      bottom: { value: null },
      sides: { value: null },
      opens: { value: 'side' },
      fasten: { value: 'glue' },
      corners: { value: { bottom: 'folded', seal: 'notched' } },
      paper: { value: null },
      caliper: { value: 0.15, basis: 'assumed' },
      liner: { value: null },
      linerPaper: { value: null },
      expects: [],
    });
  });

  test('a file without units shows mm, and sizes by name need none', () => {
    expect(only('envelope e { card: A6 }')).toMatchObject({ units: 'mm', seam: { value: 12 } });
  });
});

describe('ease', () => {
  const easeOf = (entries: string): number => only(`units mm\nenvelope e { ${entries} }`).ease.value.width;

  test('is 2 % of a large card’s longer side', () => {
    expect(easeOf('card: A3')).toBeCloseTo(8.4, 9);
    expect(easeOf('card: 250 x 100')).toBeCloseTo(5, 9);
  });

  test('grows with what a thick card has over its walls, by 2 mm at most', () => {
    expect(easeOf('card: A6\nbulk: 1')).toBe(5);
    expect(easeOf('card: A6\nbulk: 2.5')).toBe(6.5);
    expect(easeOf('card: A6\nbulk: 9')).toBe(7);
    expect(easeOf('card: A6\nbulk: 9\ndepth: 7.5')).toBe(5.5);
    expect(easeOf('card: A6\nbulk: 4\ndepth: 6')).toBe(5);
  });

  test('as a size is first along the hinge, however the card is written', () => {
    for (const card of ['105 x 148', '148 x 105']) {
      const side = only(`units mm\nenvelope e { card: ${card}\nease: 4 x 6 }`);
      expect(side.face.value).toEqual({ width: 152, height: 111 });
      const end = only(`units mm\nenvelope e { card: ${card}\nease: 4 x 6\nopens: end }`);
      expect(end.face.value).toEqual({ width: 109, height: 154 });
    }
  });

  test('follows from a fixed face, which is turned like a card', () => {
    for (const face of ['160 x 115', '115 x 160']) {
      const envelope = only(`units mm\nenvelope e { card: A6\nface: ${face}\nopens: end }`);
      expect(envelope.face.value).toEqual({ width: 115, height: 160 });
      expect(envelope.ease).toMatchObject({ value: { width: 10, height: 12 }, origin: { kind: 'default' } });
    }
  });
});

describe('seam', () => {
  const seamOf = (entries: string, units = 'mm'): number =>
    only(`units ${units}\nenvelope e { ${entries} }`).seam.value;

  test('is an eighth of a small face’s shorter side', () => {
    expect(seamOf('card: 90 x 63')).toBe(68 / 8);
  });

  test('is never less than the tape needs', () => {
    // tape/2 + 1 mm + 1.5 × 0.8 mm + 0.75 × 0.5 mm
    expect(seamOf('card: 50 x 35')).toBeCloseTo(3 + 1 + 1.2 + 0.375, 9);
    expect(seamOf('card: 50 x 35\ntape: 9 mm')).toBeCloseTo(4.5 + 1 + 1.2 + 0.375, 9);
    expect(seamOf('card: A6\ntape: 25 mm')).toBeCloseTo(12.5 + 1 + 1.2 + 0.375, 9);
  });

  test('with a fixed blank is what that leaves', () => {
    // A box 1/4 in deep for the quarter-letter card from an 8 1/4 in square: 2·seam = 8.25 − (5.75 + 4.5 + 0.5)/√2 = 0.6486 in.
    expect(seamOf('card: quarter letter\ndepth: 1/4\nblank: 8 1/4', 'in')).toBeCloseTo(
      (0.6486 / 2) * INCH,
      2,
    );
    // 2·seam = 200 − (153 + 110 + 2·10)/√2
    expect(seamOf('card: A6\nblank: 200\nshift: 10')).toBeCloseTo((200 - 283 / Math.SQRT2) / 2, 9);
    expect(seamOf('card: A6\nblank: 198 x 202\nshift: 10')).toBeCloseTo((200 - 283 / Math.SQRT2) / 2, 9);
    expect(seamOf('card: A6\nblank: 150')).toBeLessThan(0);
  });
});

test('a card and its face are turned by how the envelope opens, not by how they are written', () => {
  for (const card of ['A6', '105 x 148', '148 x 105']) {
    expect(only(`units mm\nenvelope e { card: ${card} }`).card.value).toEqual({ width: 148, height: 105 });
    expect(only(`units mm\nenvelope e { card: ${card}\nopens: end }`).card.value).toEqual({
      width: 105,
      height: 148,
    });
  }
});

describe('lining', () => {
  const PAPERS = 'paper kraft { caliper: 150 um }\npaper tissue { weight: 20 gsm }\n';
  const lined = (entries: string) => only(`units mm\n${PAPERS}envelope e { card: A6\n${entries} }`);

  test('is cut from the envelope’s own paper', () => {
    const { liner, linerPaper, linerCaliper } = lined('paper: kraft\nliner: inset 4');
    expect(liner.value).toBe(4);
    expect(linerPaper).toMatchObject({ value: { name: 'kraft' }, origin: { kind: 'default' } });
    expect(linerCaliper).toEqual({ value: 0.15, basis: 'stated' });
  });

  test('or from a paper of its own, with that paper’s caliper', () => {
    const { paper, linerPaper, linerCaliper } = lined('paper: kraft\nliner: inset 4\nliner-paper: tissue');
    expect(paper.value?.name).toBe('kraft');
    expect(linerPaper).toMatchObject({ value: { name: 'tissue' }, origin: { kind: 'written' } });
    expect(linerCaliper.basis).toBe('estimated');
  });

  test('comes from a style, and may be put back', () => {
    const styled = (entries: string) =>
      only(
        `units mm\n${PAPERS}style house { liner: inset (2 * 2)\nliner-paper: tissue }\nenvelope e like house { card: A6\n${entries} }`,
      );
    expect(styled('')).toMatchObject({
      liner: { value: 4, origin: { kind: 'inherited', from: 'house' } },
      linerPaper: { value: { name: 'tissue' }, origin: { kind: 'inherited' } },
    });
    expect(styled('liner: default').liner.value).toBeNull();
    expect(styled('paper: kraft\nliner-paper: default').linerPaper.value?.name).toBe('kraft');
  });

  test('stays what it is when something else is stated anew', () => {
    const papers = 'paper: kraft\nliner: inset 4\nliner-paper: tissue';
    const anew = restate(lined(papers), { seam: 10 });
    expect(anew).toMatchObject({ seam: { value: 10 }, liner: { value: 4 } });
    expect(anew.linerPaper.value?.name).toBe('tissue');
    expect(restate(lined(papers), { liner: null }).liner.value).toBeNull();
  });
});

describe('caliper and corners', () => {
  const on = (paper: string, entries = '') =>
    only(`units mm\npaper p { ${paper} }\nenvelope e { card: A6\npaper: p\n${entries} }`);

  test('a stated caliper wins, one is estimated from the weight, else it is assumed', () => {
    expect(on('weight: 120 gsm\ncaliper: 150 um').caliper).toEqual({ value: 0.15, basis: 'stated' });
    // 120 g/m² at 1.3 cm³/g (uncoated papers run about 1.2 to 1.4, from memory)
    expect(on('weight: 120 gsm').caliper.value).toBeCloseTo(0.156, 9);
    expect(on('weight: 120 gsm').caliper.basis).toBe('estimated');
    expect(on('grain: long').caliper).toEqual({ value: 0.15, basis: 'assumed' });
  });

  test('thick paper and boxes are notched', () => {
    expect(on('caliper: 0.2').corners.value.bottom).toBe('folded');
    expect(on('caliper: 0.21').corners.value.bottom).toBe('notched');
    expect(on('weight: 160 gsm').corners.value.bottom).toBe('notched');
    expect(on('caliper: 0.1', 'depth: 3').corners.value).toEqual({ bottom: 'notched', seal: 'notched' });
    expect(on('caliper: 0.5', 'corners: folded').corners.value).toEqual({ bottom: 'folded', seal: 'folded' });
    expect(on('caliper: 0.1', 'corners: notched, folded').corners.value).toEqual({
      bottom: 'notched',
      seal: 'folded',
    });
  });
});
