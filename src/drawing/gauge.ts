import { FLAP_NAMES, type AsMade, type FlapName } from '../folding/folding.js';
import { otherLength, readLength, type Ruler } from '../measure/ruler.js';
import { sameLength } from '../measure/slack.js';
import { type Drawing, lettering, line, type Mark, polyline, rectangle } from './drawing.js';
import { stretches } from './stretches.js';
import { CAP_HEIGHT, type TextMeasure } from './text-measure.js';

/** A strip to lay along the blank's edges from a corner. */
export interface Gauge {
  /** The corners from which it may be laid: their marks are alike. */
  readonly corners: readonly FlapName[];
  /** Longest first. */
  readonly marks: readonly GaugeMark[];
}

/** A mark to copy from the gauge onto the blank's edge, in mm. */
export interface GaugeMark {
  readonly words: string;
  /** From the corner, along the edge. */
  readonly alongEdge: number;
}

/** One strip for each kind of corner, in the order in which flaps are named; corners with equal marks share one. */
export function gauges(made: AsMade): readonly Gauge[] {
  const kinds: FlapName[][] = [];
  for (const flap of FLAP_NAMES) {
    const same = kinds.find(([other]) => other && sameMarks(made, flap, other));
    if (same) same.push(flap);
    else kinds.push([flap]);
  }
  return kinds.map((corners) => ({ corners, marks: marksOf(made, corners) }));
}

function sameMarks({ first, second }: AsMade, one: FlapName, other: FlapName): boolean {
  const alike = (scores: AsMade['first'] | null): boolean =>
    !scores || sameLength(scores[one].alongEdge, scores[other].alongEdge);
  return alike(first) && alike(second);
}

function marksOf({ first, second, tips }: AsMade, corners: readonly FlapName[]): readonly GaugeMark[] {
  const [corner = 'left'] = corners;
  const cuts = corners.filter((flap) => tips[flap].cutMark > 0);
  const oneCut = cuts.every((flap) => sameLength(tips[flap].cutMark, tips[cuts[0] ?? flap].cutMark));
  const cutGroups = oneCut ? (cuts.length > 0 ? [cuts] : []) : cuts.map((flap) => [flap]);
  const all = [
    { words: second ? 'first score' : 'score', alongEdge: first[corner].alongEdge },
    ...(second ? [{ words: 'second score', alongEdge: second[corner].alongEdge }] : []),
    ...cutGroups.map((flaps) => ({
      words: flaps.length === corners.length ? 'tip cut off' : `tip cut off, ${flaps.join(' and ')}`,
      alongEdge: tips[flaps[0] ?? corner].cutMark,
    })),
  ];
  return all.filter(({ alongEdge }) => alongEdge > 0).sort((a, b) => b.alongEdge - a.alongEdge);
}

/** A strip, or a part of one that is longer than the page: drawn from (0, 0) to (width, height). */
export interface Strip {
  readonly drawing: Drawing;
  readonly width: number;
  readonly height: number;
}

const FIGURE = 2.7;
const ROW = 4.2;
/** Graduations stand this tall at both long edges: either edge may be laid along the paper. */
const GRADUATION = 4;
/** The strip runs on past its longest mark. */
const PAST = 8;
/** Parts of a strip show so much of each other; they are joined in its middle. */
const PART_OVERLAP = 20;
/** Lettering keeps this far from a strip's end. */
const INSIDE = 5;

/** A gauge's strips, none wider than the page allows; `name` is printed on each. */
export function strips(
  { corners, marks }: Gauge,
  name: string,
  widest: number,
  ruler: Ruler,
  measure: TextMeasure,
): readonly Strip[] {
  const title = `${name}: ${corners.join(', ')}`;
  const longest = Math.max(0, ...marks.map(({ alongEdge }) => alongEdge));
  const shortest = Math.min(widest, measure(title, FIGURE, 'bold') + 2 * PAST);
  const parts = stretches(Math.max(longest + PAST, shortest), widest, PART_OVERLAP);
  const height = 2 * GRADUATION + (marks.length + 1) * ROW + 2;
  const end = Math.max(longest + PAST, shortest);
  return parts.map((part, index) => {
    const { from } = part;
    const width = Math.min(part.to, end) - from;
    const joins = [index > 0 ? from : null, parts[index + 1]?.from ?? null].map((at) =>
      at === null ? null : at + PART_OVERLAP / 2 - from,
    );
    const [left, right] = [joins[0] ?? 0, joins[1] ?? width];
    const here = marks.filter(({ alongEdge }) => alongEdge - from > left && alongEdge - from <= right);
    const rowAt = (row: number): number =>
      height - GRADUATION - 1 - (row + 1) * ROW + (ROW - FIGURE * CAP_HEIGHT) / 2;
    const partOf = parts.length > 1 ? `, part ${index + 1} of ${parts.length}` : '';
    return {
      width,
      height,
      drawing: [
        rectangle('cut', 0, 0, width, height),
        ...(index === 0 ? cornerSign(height) : []),
        lettering(title + partOf, { x: left + INSIDE, y: rowAt(0) }, FIGURE, { weight: 'bold' }),
        ...here.flatMap((mark) =>
          gaugeMark(mark, mark.alongEdge - from, rowAt(marks.indexOf(mark) + 1), {
            left,
            right,
            height,
            ruler,
            measure,
          }),
        ),
        ...joins.flatMap((x) => (x === null ? [] : [line('join', { x, y: 0 }, { x, y: height })])),
      ],
    };
  });
}

interface MarkPlace {
  /** Between which lettering must stay. */
  readonly left: number;
  readonly right: number;
  readonly height: number;
  readonly ruler: Ruler;
  readonly measure: TextMeasure;
}

/** A mark: a graduation at either edge, and between them its words in a row of their own, beside a third. */
function gaugeMark(
  { words, alongEdge }: GaugeMark,
  x: number,
  baseline: number,
  { left, right, height, ruler, measure }: MarkPlace,
): readonly Mark[] {
  const text = `${words} ${readLength(alongEdge, ruler)} (${otherLength(alongEdge, ruler)})`;
  const wide = measure(text, FIGURE, 'regular');
  const before = x - 1 - wide >= left + INSIDE || x + 1 + wide > right - 1;
  return [
    line('mark', { x, y: 0 }, { x, y: GRADUATION }),
    line('mark', { x, y: height - GRADUATION }, { x, y: height }),
    line('mark', { x, y: baseline - 0.6 }, { x, y: baseline + FIGURE * CAP_HEIGHT + 0.6 }),
    lettering(text, { x: before ? x - 1 : x + 1, y: baseline }, FIGURE, { anchor: before ? 'end' : 'start' }),
  ];
}

/** An arrow head at the end that is laid at the corner. */
const cornerSign = (height: number): readonly Mark[] => [
  polyline('mark', [
    { x: 3.2, y: height / 2 + 1.8 },
    { x: 1, y: height / 2 },
    { x: 3.2, y: height / 2 - 1.8 },
  ]),
];
