import { blankCorners } from '../folding/blank.js';
import type { FlapName, Folding } from '../folding/folding.js';
import { otherLength, readLength, type Ruler } from '../measure/ruler.js';
import { distance, type Point } from '../plane/point.js';
import type { Envelope, Size } from '../recipe/recipe.js';
import { drawBlank } from './draw-blank.js';
import { type Drawing, type Lettering, lettering, line, type Mark } from './drawing.js';
import { place } from './place.js';
import { CAP_HEIGHT, DESCENT, type TextMeasure } from './text-measure.js';

/** Sizes on the page, in mm. */
const FIGURE = 2.9;
const OTHER = 2.5;
const NAME = 3.2;
const LEVEL = 7;
/** An extension line starts this far off the edge and runs as far past its dimension line. */
const EXTENSION_GAP = 0.8;
const STROKE = 0.9;
/** Between a dimension line and its figures, and between a line and any other lettering. */
const CLEAR = 0.9;
/** Between a corner and a name beside it. */
const NAME_GAP = 3;
const HATCH = 1.2;
const TICK = 1.6;

/** A drawing with its box: from (0, 0) to (width, height), in mm on the page. */
export interface Figure extends Size {
  readonly drawing: Drawing;
  /** How large the blank is drawn: 0.5 is half size. */
  readonly scale: number;
}

/**
 * The blank as a diamond seen from the inside, as large as a box allows, with its marks dimensioned from their corners
 * along the edges (each flap's on the edge that follows its corner counter-clockwise; both edges are alike), the edges
 * themselves, the corners' names and the face. Figures as the ruler reads them, the other system beneath.
 */
export function dimensions(folding: Folding, envelope: Envelope, box: Size, measure: TextMeasure): Figure {
  const { made } = folding;
  const ruler: Ruler = { units: envelope.units, step: envelope.step.value };
  const most = Math.max(...AROUND.map(({ flap }) => lengths(folding, flap).length));
  const reach = (most * LEVEL + EXTENSION_GAP) / Math.SQRT2 + FIGURE;
  const beside = Math.max(reach, NAME_GAP + measure('bottom', NAME, 'bold'));
  const above = Math.max(reach, measure('bottom', NAME, 'bold') / 2 + CLEAR + NAME);
  const scale = Math.max(
    1e-6,
    Math.min((box.width - 2 * beside) / made.diagonal, (box.height - 2 * above) / made.diagonal),
  );
  const [width, height] = [made.diagonal * scale + 2 * beside, made.diagonal * scale + 2 * above];
  const centre = { x: width / 2, y: height / 2 };
  const corners = blankCorners({ width: made.blank.width * scale, height: made.blank.height * scale });
  const blank = drawBlank(folding, envelope, { hatchSpacing: HATCH / scale, markLength: TICK / scale });
  const notes = [
    ...AROUND.flatMap(({ flap, next }) =>
      edgeDimensions(corners[flap], corners[next], lengths(folding, flap), { ruler, measure, scale }),
    ),
    ...AROUND.map(({ flap }) => cornerName(flap, corners[flap], measure)),
    ...faceSize(folding, ruler, scale, measure),
  ];
  return {
    drawing: [...place(blank, { scale, ...centre }), ...place(notes, centre)],
    width,
    height,
    scale,
  };
}

/** The corners in the order of the outline, each with the one after it, and the side of the blank between them. */
const AROUND: readonly {
  readonly flap: FlapName;
  readonly next: FlapName;
  readonly side: 'width' | 'height' | null;
}[] = [
  { flap: 'bottom', next: 'right', side: 'width' },
  { flap: 'right', next: 'seal', side: null },
  { flap: 'seal', next: 'left', side: null },
  { flap: 'left', next: 'bottom', side: 'height' },
];

/** What is dimensioned along the edge after a corner, from that corner, shortest first, in mm of the blank. */
function lengths({ made }: Folding, flap: FlapName): readonly number[] {
  const side = AROUND.find((edge) => edge.flap === flap)?.side;
  const all = [
    made.tips[flap].cutMark,
    made.second?.[flap].alongEdge ?? 0,
    made.first[flap].alongEdge,
    side ? made.blank[side] : 0,
  ];
  return all.filter((length) => length > 0);
}

interface Measures {
  readonly ruler: Ruler;
  readonly measure: TextMeasure;
  readonly scale: number;
}

/** Dimension lines one outside the other along the edge from `start` to `end`, both on the page. */
function edgeDimensions(
  start: Point,
  end: Point,
  all: readonly number[],
  { ruler, measure, scale }: Measures,
): readonly Mark[] {
  const edge = distance(start, end) || 1;
  const along = { x: (end.x - start.x) / edge, y: (end.y - start.y) / edge };
  const out = { x: along.y, y: -along.x };
  const at = (t: number, off: number): Point => ({
    x: start.x + along.x * t + out.x * off,
    y: start.y + along.y * t + out.y * off,
  });
  // Read from the left, whichever way the edge runs; figures stand on the upper side of their line.
  const forwards = along.x > 0;
  const angleDegrees = (Math.atan2(along.y, along.x) * 180) / Math.PI + (forwards ? 0 : 180);
  const upwards = forwards ? -1 : 1;
  const outermost = all.length * LEVEL;
  const stops = [...all.map((length) => length * scale), edge].filter((t) => t <= edge + 1e-6);
  return [
    line('dimension', at(0, EXTENSION_GAP), at(0, outermost + EXTENSION_GAP)),
    ...all.flatMap((length, level): readonly Mark[] => {
      const off = (level + 1) * LEVEL;
      const to = length * scale;
      const [reading, other] = [readLength(length, ruler), otherLength(length, ruler)];
      const wide = Math.max(measure(reading, FIGURE, 'regular'), measure(other, OTHER, 'regular'));
      const inside = wide + 2 * CLEAR + 2 * STROKE <= to;
      // Too short for its figures: they stand beyond, in the first gap between extension lines that holds them.
      const from = roomAfter(to, stops, wide + 2 * (CLEAR + STROKE)) + CLEAR + STROKE;
      const text = (words: string, size: number, aside: number): Mark =>
        lettering(words, at(inside ? to / 2 : from, off + upwards * aside), size, {
          anchor: inside ? 'middle' : forwards ? 'start' : 'end',
          angleDegrees,
        });
      return [
        line('dimension', at(to, EXTENSION_GAP), at(to, off + EXTENSION_GAP)),
        line('dimension', at(0, off), at(inside ? to : from + wide, off)),
        stroke(at, 0, off),
        stroke(at, to, off),
        text(reading, FIGURE, CLEAR),
        text(other, OTHER, -CLEAR - OTHER * CAP_HEIGHT),
      ];
    }),
  ];
}

/** Where the first gap of a width starts at or after `from`, between stops in order; past them all where none does. */
function roomAfter(from: number, stops: readonly number[], width: number): number {
  const starts = stops.filter((stop) => stop >= from - 1e-6);
  const free = starts.find((start, index) => (starts[index + 1] ?? Infinity) - start >= width);
  return free ?? from;
}

/** The end of a dimension line: an oblique stroke. */
const stroke = (at: (t: number, off: number) => Point, t: number, off: number): Mark =>
  line('dimension', at(t - STROKE / 2, off - STROKE / 2), at(t + STROKE / 2, off + STROKE / 2));

/**
 * A corner's name outside it. Extension lines run out of the corner at 45° to either side, so a name above or below it
 * keeps half its width off.
 */
function cornerName(flap: FlapName, corner: Point, measure: TextMeasure): Mark {
  const capitals = NAME * CAP_HEIGHT;
  const off = measure(flap, NAME, 'bold') / 2 + CLEAR;
  const places: Readonly<Record<FlapName, readonly [x: number, y: number, anchor: Lettering['anchor']]>> = {
    left: [-NAME_GAP, -capitals / 2, 'end'],
    right: [NAME_GAP, -capitals / 2, 'start'],
    seal: [0, off, 'middle'],
    bottom: [0, -off - capitals, 'middle'],
  };
  const [x, y, anchor] = places[flap];
  return lettering(flap, { x: corner.x + x, y: corner.y + y }, NAME, { anchor, weight: 'bold' });
}

/** The face's size in its middle, along its longer side; left out where not even that holds it. */
function faceSize({ made }: Folding, ruler: Ruler, scale: number, measure: TextMeasure): readonly Mark[] {
  const { width, height } = made.face;
  const sized = (read: (mm: number, ruler: Ruler) => string): string =>
    `${read(width, ruler).replace(/ [a-z]+$/, '')} × ${read(height, ruler)}`;
  const rows: readonly (readonly [string, number])[] = [
    ['face', NAME],
    [sized(readLength), FIGURE],
    [sized(otherLength), OTHER],
  ];
  const spacing = FIGURE * 1.35;
  const upright = width >= height;
  const [long, short] = [Math.max(width, height) * scale, Math.min(width, height) * scale];
  const wide = Math.max(...rows.map(([text, size]) => measure(text, size, 'bold')));
  if (wide + 2 * CLEAR > long || rows.length * spacing + 2 * CLEAR > short) return [];
  const middle = { x: made.faceCentre.x * scale, y: made.faceCentre.y * scale };
  return rows.map(([text, size], row) => {
    const down =
      (row - (rows.length - 1) / 2) * spacing + (FIGURE * (CAP_HEIGHT + DESCENT)) / 2 - FIGURE * DESCENT;
    const at = upright ? { x: middle.x, y: middle.y - down } : { x: middle.x + down, y: middle.y };
    return lettering(text, at, size, {
      anchor: 'middle',
      angleDegrees: upright ? 0 : 90,
      weight: row === 0 ? 'bold' : 'regular',
    });
  });
}
