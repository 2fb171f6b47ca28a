/*
 * What follows for a maker from a folded envelope, reasoned from the paper: where marks, tips and offcuts lie, how thick
 * and heavy it is, what room is left, and what an unsteady hand may cost. Lengths in mm.
 */
import { describe, expect, test } from 'vitest';
import { blankWords } from '../../src/folding/blank-words.js';
import { closedPiece } from '../../src/folding/closed-piece.js';
import { copiesOf } from '../../src/folding/copies.js';
import { figureWords } from '../../src/folding/figure-words.js';
import { FIGURES } from '../../src/folding/figures.js';
import { fold } from '../../src/folding/fold.js';
import { FLAP_NAMES, type FlapName, type Folding } from '../../src/folding/folding.js';
import { markedScores } from '../../src/folding/marked-scores.js';
import { measure } from '../../src/folding/measure.js';
import { waste } from '../../src/folding/waste.js';
import { area, type Polygon } from '../../src/plane/polygon.js';
import type { Point } from '../../src/plane/point.js';
import { regionArea } from '../../src/plane/region.js';
import type { Envelope, Paper } from '../../src/recipe/recipe.js';
import { envelope, type Wishes } from '../support/envelopes.js';

const NOTCHED = { bottom: 'notched', seal: 'notched' } as const;
const FOLDED = { bottom: 'folded', seal: 'folded' } as const;
const CUT_50 = { kind: 'blunt', cut: 50, radius: 0 } as const;

const made = (wishes: Wishes, more: Partial<Envelope> = {}) => {
  const stated = { ...envelope(wishes), ...more };
  const folding = fold(stated);
  return { stated, folding, facts: measure(stated, folding) };
};

const paper = (weight: number, sheet: { width: number; height: number } | null = null): Paper => {
  const { origin, value } = envelope({}).contents;
  return {
    name: 'laid',
    span: envelope({}).span,
    title: 'Laid',
    sheet: sheet && { origin, value: sheet },
    weight: { origin, value: weight },
    caliper: null,
    grain: null,
    price: null,
    stock: value,
    layers: [],
  };
};

describe('what an unsteady hand may cost', () => {
  const lost = (wishes: Wishes) => {
    const { margins, worst, flapStop } = made(wishes).facts;
    return {
      crossing: margins.crossing - worst.crossing,
      seamOverlap: margins.seamOverlap - worst.seamOverlap,
      closure: margins.closure - worst.closure,
      roomWidth: margins.roomWidth - worst.roomWidth,
      roomHeight: margins.roomHeight - worst.roomHeight,
      roomDepth: worst.roomDepth === null ? null : (margins.roomDepth ?? NaN) - worst.roomDepth,
      flapStop: flapStop - worst.flapStop,
    };
  };
  const pointed = {
    flap: { kind: 'pointed' },
    bottom: { kind: 'pointed' },
    sides: { kind: 'pointed' },
  } as const;
  const close = (value: number) => expect.closeTo(value, 6);

  // A mark off by δ moves its score by δ/√2: crossing takes two marks and an edge, room the diagonal and two scores.
  test.each([0.5, 1, 2])('%d mm of inaccuracy, with pointed flaps', (tolerance) => {
    expect(lost({ ...pointed, tolerance })).toEqual({
      crossing: close(3 * tolerance),
      seamOverlap: close(3 * tolerance),
      closure: close(4.242640687 * tolerance),
      roomWidth: close(2.828427125 * tolerance),
      roomHeight: close(2.828427125 * tolerance),
      roomDepth: null,
      flapStop: close(3.535533906 * tolerance),
    });
  });

  test('each tip that is cut may be off once more', () => {
    const blunt = { kind: 'blunt', cut: 5, radius: 0 } as const;
    expect(lost({ ...pointed, flap: blunt, tolerance: 1 }).closure).toBeCloseTo(5.242640687, 9);
    expect(lost({ ...pointed, flap: blunt, bottom: blunt, tolerance: 1 }).closure).toBeCloseTo(
      6.242640687,
      9,
    );
    // The seal flap’s is the way that is shortest, and its tip is cut.
    const stop = lost({
      ...pointed,
      face: { width: 160, height: 90 },
      flap: blunt,
      bottom: blunt,
      tolerance: 1,
    });
    expect(stop.flapStop).toBeCloseTo(4.535533906, 9);
  });

  test('the wall of a box lies between two marks', () => {
    const box = lost({ ...pointed, depth: 10, corners: NOTCHED, tolerance: 1 });
    expect(box.roomDepth).toBeCloseTo(Math.SQRT2, 9);
  });
});

describe('thickness, room and weight', () => {
  test('flat: the card, and every sheet of paper that lies over one place', () => {
    const { facts } = made({ bulk: 2, caliper: 0.2 });
    expect(facts.layers).toBeGreaterThan(1);
    expect(facts.thickness).toBeCloseTo(2 + (1 + facts.layers) * 0.2, 9);
  });

  test('a box that stands is as thick as its walls, and the paper of its front', () => {
    const { facts } = made({ depth: 20, bulk: 3, caliper: 0.2, corners: NOTCHED });
    expect(facts.depth).toBeGreaterThan(19);
    expect(facts.thickness).toBeCloseTo(facts.depth + 0.2, 9);
    expect(facts.margins.roomDepth).toBeCloseTo(facts.depth - facts.layers * 0.2 - 3, 9);
  });

  test('a thick card bends the paper round its edges: room is lost on both sides', () => {
    const { facts } = made({ card: { width: 150, height: 100 }, bulk: 2, caliper: 0.2 });
    expect(facts.margins.roomWidth).toBeCloseTo(facts.face.width - 150 - 2 - 0.4, 9);
    expect(facts.margins.roomHeight).toBeCloseTo(facts.face.height - 100 - 2 - 0.4, 9);
    // The lining lies in front of the card, and with the seal flap behind it.
    const lined = made({
      card: { width: 150, height: 100 },
      bulk: 2,
      caliper: 0.2,
      liner: 4,
      linerCaliper: 0.1,
    });
    expect(lined.facts.margins.roomWidth).toBeCloseTo(lined.facts.face.width - 150 - 2.2 - 0.4, 9);
  });

  test('in a box only what stands above its walls does', () => {
    const box = (bulk: number) =>
      made({ card: { width: 150, height: 100 }, depth: 4, bulk, caliper: 0.2, corners: NOTCHED }).facts;
    expect(box(3).margins.roomWidth).toBeCloseTo(box(3).face.width - 150 - 0.4, 9);
    expect(box(6).margins.roomWidth).toBeCloseTo(box(6).face.width - 150 - (6 - box(6).depth) - 0.4, 9);
  });

  test('paper as it is cut, and what goes in; unknown where the paper’s weight is', () => {
    const contents = { ...envelope({}).contents, value: 8 };
    const { facts } = made({ paper: paper(120) }, { contents });
    expect(facts.mass).toBeCloseTo((facts.area * 120) / 1e6 + 8, 9);
    expect(facts.mass).toBeGreaterThan(8 + 4);
    expect(made({ paper: paper(120) }).facts.mass).toBeCloseTo((facts.area * 120) / 1e6, 9);
    expect(made({}).facts.mass).toBeNull();
    expect(made({ paper: { ...paper(120), weight: null } }).facts.mass).toBeNull();
  });

  test('a closed envelope as a post measures it', () => {
    const flat = made({ paper: paper(120) }).facts;
    expect(closedPiece(flat)).toEqual({
      sides: [flat.face.width, flat.face.height],
      thickness: flat.thickness,
      mass: flat.mass,
      uneven: false,
    });
    expect(closedPiece(made({ depth: 6, corners: NOTCHED }).facts).uneven).toBe(true);
  });
});

describe('how many are cut from a sheet', () => {
  test('whichever way round yields more, in plain rows', () => {
    expect(copiesOf({ width: 200, height: 200 }, { width: 600, height: 400 })).toBe(6);
    expect(copiesOf({ width: 200.1, height: 200.1 }, { width: 600, height: 400 })).toBe(2);
    // Two beside each other and two above, turned; as it stands only three beside each other.
    expect(copiesOf({ width: 100, height: 150 }, { width: 300, height: 200 })).toBe(4);
    expect(copiesOf({ width: 150, height: 100 }, { width: 300, height: 200 })).toBe(4);
    expect(copiesOf({ width: 700, height: 100 }, { width: 600, height: 400 })).toBe(0);
  });

  test('of an envelope’s paper, where its sheet is known', () => {
    const sheet = { width: 640, height: 450 };
    const blank = { width: 210, height: 210 };
    expect(made({ blank, paper: paper(120, sheet) }).facts.sheet).toEqual({
      paper: 'laid',
      ...sheet,
      copies: 6,
    });
    expect(made({ blank, paper: paper(120) }).facts.sheet).toBeNull();
    expect(made({ blank }).facts.sheet).toBeNull();
  });
});

describe('tips that nobody stated', () => {
  const tips = (width: number, height: number) => {
    const { face, heights } = made({ face: { width, height }, step: 0.1 }).folding.made;
    return { face, heights };
  };
  /** As high as may be, or less by what the ruler's next mark takes, which lies on a slanted edge. */
  const within = (height: number, most: number): void => {
    expect(height).toBeLessThanOrEqual(most + 1e-9);
    expect(height).toBeGreaterThan(most - 0.1 / Math.SQRT2);
  };

  test('on a long face the seal flap covers two thirds, the bottom flap stops a tenth short, or 6 mm', () => {
    const long = tips(300, 90);
    within(long.heights.seal, (long.face.height * 2) / 3);
    within(long.heights.bottom, long.face.height * 0.9);
    const low = tips(160, 50);
    within(low.heights.bottom, low.face.height - 6);
  });

  test('on a face that opens at the end, side flaps pass the middle by half the seam', () => {
    const {
      face,
      first,
      heights: tall,
    } = made({ face: { width: 110, height: 160 }, step: 0.1 }).folding.made;
    const whole = first.left.fromCorner;
    // Marks on one edge pass by the seam of 24 mm, which is 24/√2 across the face.
    expect(whole).toBeGreaterThan(face.width / 2 + 24 / Math.SQRT2);
    within(tall.left, face.width / 2 + 24 / Math.SQRT2);
    const narrow = tips(30, 160);
    within(narrow.heights.left, narrow.face.width - 6);
  });

  test('a flap that stays on the face even in an unsteady hand keeps its point', () => {
    const { tips, first, heights: tall } = made({ face: { width: 150, height: 140 } }).folding.made;
    for (const flap of ['seal', 'bottom', 'left', 'right'] as const) {
      expect(tips[flap].shape).toBe('pointed');
      expect(tall[flap]).toBe(first[flap].fromCorner);
    }
    // A hair less than what the flap may lose, 5/√2 of the tolerance: it is cut.
    const bold = (tolerance: number) => {
      const {
        face,
        first: scores,
        tips: cut,
      } = made({ face: { width: 160, height: 120 }, tolerance }).folding.made;
      return { spare: face.height - scores.seal.fromCorner, shape: cut.seal.shape };
    };
    const { spare } = bold(0.1);
    expect(bold((spare * Math.SQRT2) / 5 - 0.01).shape).toBe('pointed');
    expect(bold((spare * Math.SQRT2) / 5 + 0.01).shape).toBe('blunt');
  });

  test('a stated cut is measured from the tip, and its mark along the edge', () => {
    const { tips, heights: tall, first } = made({ flap: { kind: 'blunt', cut: 10, radius: 0 } }).folding.made;
    expect(tips.seal).toMatchObject({ shape: 'blunt', cut: 10, byDefault: false });
    expect(tips.seal.cutMark).toBeCloseTo(14.142135624, 8);
    expect(tall.seal).toBeCloseTo(first.seal.fromCorner - 10, 9);
    const stubby = made({ face: { width: 300, height: 90 } }).folding.made.tips.seal;
    expect(stubby).toMatchObject({ shape: 'blunt', byDefault: true });
  });
});

describe('marks and scores', () => {
  test('a score runs from mark to fellow mark, as far from its corner as the ruler says', () => {
    const { made: scores } = fold(
      envelope({ blank: { width: 210, height: 210 }, sideMarks: [100, 100], sealMark: 120 }),
    );
    const half = scores.diagonal / 2;
    const [score, ...others] = markedScores(scores, 'left');
    expect(others).toEqual([]);
    expect(score?.order).toBe('first');
    // An edge slants by 45°: a mark 100 mm from the left corner lies 100/√2 to its right, and as much above or below.
    for (const { x } of [score?.from, score?.to] as Point[])
      expect(x).toBeCloseTo(100 / Math.SQRT2 - half, 6);
    const ys = ([score?.from, score?.to] as Point[]).map(({ y }) => y).sort((a, b) => a - b);
    expect(ys[0]).toBeCloseTo(-100 / Math.SQRT2, 6);
    expect(ys[1]).toBeCloseTo(100 / Math.SQRT2, 6);
    const [seal] = markedScores(scores, 'seal');
    expect(seal?.from.y).toBeCloseTo(half - 120 / Math.SQRT2, 6);
  });

  test('a box has two of each flap', () => {
    const { made: scores } = fold(envelope({ depth: 10, corners: NOTCHED }));
    expect(markedScores(scores, 'bottom').map(({ order }) => order)).toEqual(['first', 'second']);
  });

  test('a shift makes the seal flap longer, and the bottom flap shorter by as much', () => {
    const { first, shift } = made({ shift: 5, step: 0.001 }).folding.made;
    expect(shift).toBeCloseTo(5, 2);
    expect(first.seal.fromCorner - first.bottom.fromCorner).toBeCloseTo(10, 2);
    expect(first.left.fromCorner).toBeCloseTo(first.right.fromCorner, 9);
  });

  test('side marks that differ move the face off the middle by half of it', () => {
    const { first, faceCentre } = made({ blank: { width: 210, height: 210 }, sideMarks: [96, 100] }).folding
      .made;
    expect(faceCentre.x).toBeCloseTo((first.left.fromCorner - first.right.fromCorner) / 2, 9);
    expect(faceCentre.x).toBeCloseTo(-4 / Math.SQRT2 / 2, 9);
  });

  test('of flaps whose marks differ the tighter side decides the seam and the crossing', () => {
    const { margins } = made({
      blank: { width: 210, height: 210 },
      sideMarks: [96, 100],
      sealMark: 125,
      bottomMark: 130,
    }).facts;
    // Marks on one edge pass by what they come to beyond it: 96 + 130 − 210, and 96 + 125 − 210.
    expect(margins.seamOverlap).toBeCloseTo(16, 9);
    expect(margins.crossing).toBeCloseTo(11, 9);
  });
});

describe('creases', () => {
  const kinds = (wishes: Wishes, of: FlapName) =>
    fold(envelope(wishes))
      .creases.filter(({ flap }) => flap === of)
      .map(({ order, sense }) => `${order} ${sense}`);

  test('a notched corner has none: each flap folds at one score, and a box at two', () => {
    for (const flap of FLAP_NAMES) {
      expect(kinds({ corners: NOTCHED }, flap)).toEqual(['first valley']);
      expect(kinds({ corners: NOTCHED, depth: 8 }, flap)).toEqual(['first valley', 'second valley']);
    }
  });

  test('a folded corner has four: the score of the side runs on through it, the end’s folds the other way there', () => {
    const corners = { bottom: 'folded', seal: 'notched' } as const;
    expect(kinds({ corners }, 'left')).toEqual(['first valley', 'first valley']);
    expect(kinds({ corners }, 'seal')).toEqual(['first valley']);
    expect(kinds({ corners }, 'bottom')).toEqual(['first valley', 'first mountain', 'first mountain']);
  });

  test('at a notch the side’s score runs on to where the notch’s round end leaves paper', () => {
    const { made: scores, creases } = fold(envelope({ corners: NOTCHED, caliper: 0.5 }));
    const side = creases.find(({ flap }) => flap === 'left');
    const seal = scores.diagonal / 2 - scores.first.seal.fromCorner;
    // A notch stands two calipers back, 1 mm here, and its round end has a radius of 0.75 mm.
    expect(Math.max(side?.from.y ?? 0, side?.to.y ?? 0)).toBeCloseTo(seal - 0.25, 6);
  });
});

test('a lower seam runs from the face’s corner to the middle of its height, a shift further', () => {
  const seam = (wishes: Wishes) => made({ ...wishes, step: 1e-6 }).facts.seamLength;
  // Along an edge that slants by 45°: √2 times half of the face’s 110 mm, and of the shift.
  expect(seam({})).toBeCloseTo(55 * Math.SQRT2, 3);
  expect(seam({ shift: 5 })).toBeCloseTo(60 * Math.SQRT2, 3);
  // On a tall face it ends in the middle of the width.
  const sides = { kind: 'pointed' } as const;
  expect(seam({ face: { width: 100, height: 110 }, sides })).toBeCloseTo(50 * Math.SQRT2, 3);
});

test('the edges of a blank that is not square are as long as they are stated', () => {
  const { blankOutline } = fold(envelope({ blank: { width: 210, height: 200 } }));
  const edges = blankOutline.map((from, index) => {
    const to = blankOutline[(index + 1) % 4] as Point;
    return Math.hypot(to.x - from.x, to.y - from.y);
  });
  expect(edges.map((edge) => Number(edge.toFixed(6))).sort()).toEqual([200, 200, 210, 210]);
});

test('what the card was, and what was cut off each tip', () => {
  const { facts } = made({
    card: { width: 150, height: 100 },
    bulk: 2,
    flap: { kind: 'blunt', cut: 10, radius: 0 },
  });
  expect(facts).toMatchObject({ construction: 'diagonal', card: { width: 150, height: 100, bulk: 2 } });
  expect(facts.flaps.seal.trimmed).toBeCloseTo(10, 9);
  expect(facts.flaps.bottom.trimmed).toBe(0);
});

describe('what trimming takes off', () => {
  const kinds = (wishes: Wishes) =>
    waste(fold(envelope(wishes)))
      .map(({ kind }) => kind)
      .sort();
  const pointed = {
    flap: { kind: 'pointed' },
    bottom: { kind: 'pointed' },
    sides: { kind: 'pointed' },
  } as const;
  const folded = { bottom: 'folded', seal: 'folded' } as const;

  test('nothing from a whole square; a tip where a flap is cut, a notch at each notched corner', () => {
    expect(kinds({ ...pointed, corners: folded })).toEqual([]);
    expect(kinds({ ...pointed, corners: folded, flap: { kind: 'blunt', cut: 8, radius: 0 } })).toEqual([
      'tip',
    ]);
    expect(kinds({ ...pointed, corners: { bottom: 'folded', seal: 'notched' } })).toEqual(['notch', 'notch']);
    expect(kinds({ ...pointed, corners: NOTCHED })).toEqual(['notch', 'notch', 'notch', 'notch']);
  });

  test('what is cut off and what is kept are the blank', () => {
    const folding = fold(envelope({ flap: { kind: 'blunt', cut: 8, radius: 0 }, corners: NOTCHED }));
    const off = waste(folding).reduce((sum, { outline }) => sum + area(outline), 0);
    const { width, height } = folding.made.blank;
    const facts = measure(
      envelope({ flap: { kind: 'blunt', cut: 8, radius: 0 }, corners: NOTCHED }),
      folding,
    );
    expect(off + facts.area).toBeCloseTo(width * height, -1);
    // A tip cut 8 mm below its point is a right angle with legs of 8√2: 64 mm².
    const tip = waste(folding).find(({ kind }) => kind === 'tip');
    expect(area(tip?.outline ?? [])).toBeCloseTo(64, 3);
  });
});

describe('the back', () => {
  /** By its edges to the right of a point. */
  const isIn = (polygon: Polygon, { x, y }: Point): boolean =>
    polygon.filter((from, index) => {
      const to = polygon[(index + 1) % polygon.length] as Point;
      return from.y > y !== to.y > y && x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x);
    }).length %
      2 ===
    1;

  /** How much of the back lies under so many pieces, in mm², by points half a millimetre apart. */
  function areasByLayers({ made: { face, faceCentre }, pieces }: Folding): ReadonlyMap<number, number> {
    const STEP = 0.5;
    const over = pieces.flatMap(({ folded }) => (folded ? [folded] : []));
    const areas = new Map<number, number>();
    for (let x = STEP / 2; x < face.width; x += STEP)
      for (let y = STEP / 2; y < face.height; y += STEP) {
        const at = { x: faceCentre.x - face.width / 2 + x, y: faceCentre.y - face.height / 2 + y };
        const layers = over.filter((piece) => isIn(piece, at)).length;
        areas.set(layers, (areas.get(layers) ?? 0) + STEP * STEP);
      }
    return areas;
  }

  test.each<readonly [string, Wishes]>([
    ['side flaps cut far back', { sides: { kind: 'blunt', cut: 45, radius: 0 } }],
    [
      'a shift, and a bottom flap cut short',
      {
        shift: 6,
        bottom: { kind: 'blunt', cut: 60, radius: 0 },
        sides: { kind: 'blunt', cut: 50, radius: 0 },
      },
    ],
    [
      'side marks that differ',
      {
        blank: { width: 210, height: 210 },
        sideMarks: [88, 98],
        sides: { kind: 'blunt', cut: 40, radius: 0 },
      },
    ],
  ])('what no flap covers is as large as a grid of points says: %s', (_, wishes) => {
    const { folding, facts } = made(wishes);
    const { face, faceCentre } = folding.made;
    const bare = areasByLayers(folding).get(0) ?? 0;
    expect(bare).toBeGreaterThan(50);
    expect(Math.abs(facts.margins.bareArea - bare)).toBeLessThan(bare * 0.02 + 5);
    expect(regionArea(folding.bare)).toBeCloseTo(facts.margins.bareArea, 6);
    for (const { x, y } of folding.bare.flat()) {
      expect(Math.abs(x - faceCentre.x)).toBeLessThan(face.width / 2 + 1e-3);
      expect(Math.abs(y - faceCentre.y)).toBeLessThan(face.height / 2 + 1e-3);
    }
  });

  test.each<[string, Wishes, number]>([
    ['pointed flaps', {}, 3],
    [
      'sides cut so short that no flap lies over two others',
      { shift: 8, sides: CUT_50, corners: NOTCHED },
      2,
    ],
    [
      'the same with ears, each between its side flap and the flap over both',
      { shift: 8, sides: CUT_50, corners: FOLDED },
      3,
    ],
  ])('as many layers as a grid of points says: %s', (_, wishes, layers) => {
    const { folding, facts } = made(wishes);
    const deep = [...areasByLayers(folding)].filter(([, area]) => area > 1).map(([count]) => count);
    expect(Math.max(...deep)).toBe(layers);
    expect(facts.layers).toBe(layers);
  });

  test('two seams and the flap: as many layers as lie over each other', () => {
    const pointed = {
      flap: { kind: 'pointed' },
      bottom: { kind: 'pointed' },
      sides: { kind: 'pointed' },
    } as const;
    // Without any seam the flaps of a square only meet.
    expect(
      made({ face: { width: 100, height: 100 }, seam: 0, step: 1e-6, corners: FOLDED, ...pointed }).facts
        .layers,
    ).toBe(1);
    expect(
      made({ face: { width: 100, height: 100 }, seam: 12, corners: FOLDED, ...pointed }).facts.layers,
    ).toBe(4);
  });
});

describe('in words', () => {
  test('a blank, in both systems; one that is not square by both sides', () => {
    const ruler = { units: 'mm', step: 0.5 } as const;
    expect(blankWords(fold(envelope({ blank: { width: 210, height: 210 } })), ruler)).toBe(
      'Blank 210 mm square (8.27 in)',
    );
    expect(blankWords(fold(envelope({ blank: { width: 210, height: 205 } })), ruler)).toMatch(
      /^Blank 210 × 205 mm/,
    );
  });

  test('figures, by their public names', () => {
    expect(figureWords('seal-mark')).toBe('seal mark');
    expect(figureWords('second-side-mark')).toBe('second side mark');
    expect(figureWords('bare')).toBe('back left bare');
  });

  test('each figure is the one that it is called', () => {
    const sheet = { width: 640, height: 450 };
    const { facts } = made({
      blank: { width: 210, height: 210 },
      sideMarks: [96, 100],
      depth: 6,
      corners: NOTCHED,
      paper: paper(120, sheet),
      liner: 4,
    });
    const read = (name: string) => FIGURES.get(name)?.read(facts);
    const both = (value: (flap: FlapName) => number | undefined) => [value('left'), value('right')];
    expect(read('blank')).toEqual([210, 210]);
    expect(read('side-mark')).toEqual([96, 100]);
    expect(read('side-score')).toEqual(both((flap) => facts.scores[flap][0]?.fromCorner));
    expect(read('second-side-mark')).toEqual(both((flap) => facts.scores[flap][1]?.alongEdge));
    expect(read('side-flap')).toEqual(both((flap) => facts.flaps[flap].height));
    expect(read('per-sheet')).toEqual([6]);
    expect(read('liner-width')).toEqual([facts.liner?.width]);
    expect(read('liner-height')).toEqual([facts.liner?.height]);
    const flat = made({}).facts;
    for (const name of ['second-side-mark', 'second-seal-mark', 'per-sheet', 'liner-width', 'liner-height'])
      expect(FIGURES.get(name)?.read(flat)[0], name).toBeNull();
  });
});
