import type { Drawing, Lettering, Mark, Shape } from '../../drawing/drawing.js';
import { lineKindOf } from '../../drawing/line-kinds.js';
import type { TextMeasure } from '../../drawing/text-measure.js';
import { printShort } from '../../measure/number.js';
import type { Point } from '../../plane/point.js';
import type { Run } from '../catalogue/page.js';
import { arcCurves } from './arc-curves.js';
import { POINTS_PER_MM } from './document.js';
import { stretches } from './paint.js';

/** A drawing as a page of PDF takes it: its lines as content operators (ISO 32000-1, 8.5), its lettering apart. In points, y up. */
export interface Operators {
  readonly operators: string;
  readonly runs: readonly Run[];
}

/** A drawing, in mm from a corner, as operators: what `paint` paints, written once for many pages. */
export function operatorsOf(drawing: Drawing, measure: TextMeasure): Operators {
  const lines: string[] = [];
  const runs: Run[] = [];
  const say = sayingChanges(lines);
  for (const mark of drawing) {
    const { shape } = mark;
    if (shape.kind === 'text') runs.push(runOf(shape, measure));
    else lines.push(...painted(mark, shape, say));
  }
  return { operators: lines.join('\n'), runs };
}

/** Says an operator of the graphics state only where it changes something. */
function sayingChanges(lines: string[]): (operator: string, operands: string) => void {
  const state = new Map<string, string>();
  return (operator, operands) => {
    if (state.get(operator) === operands) return;
    state.set(operator, operands);
    lines.push(`${operands} ${operator}`);
  };
}

function painted(
  mark: Mark,
  shape: Exclude<Shape, Lettering>,
  say: (operator: string, operands: string) => void,
): readonly string[] {
  const { width, dashes, ink } = lineKindOf(mark);
  if (width === 0) {
    say('rg', colour(ink.screen));
    return [...traced(shape), 'f'];
  }
  say('w', length(width));
  say('d', `[${dashes.map(length).join(' ')}] 0`);
  return [...traced(shape), 'S'];
}

/** A shape's outline as the current path. */
function traced(shape: Exclude<Shape, Lettering>): readonly string[] {
  if (shape.kind === 'line') return [`${at(shape.from)} m`, `${at(shape.to)} l`];
  if (shape.kind === 'polyline')
    return shape.points.map((point, index) => `${at(point)} ${index === 0 ? 'm' : 'l'}`);
  const { path } = shape;
  const sides = stretches(path).flatMap(([from, stretch]) =>
    stretch.kind === 'line'
      ? [`${at(stretch.to)} l`]
      : arcCurves(from, stretch).map(({ first, second, to }) => `${at(first)} ${at(second)} ${at(to)} c`),
  );
  return [`${at(path.start)} m`, ...sides, 'h'];
}

const SHIFT: Readonly<Record<Lettering['anchor'], number>> = { start: 0, middle: -0.5, end: -1 };

function runOf(
  { text, at: place, size, anchor, angleDegrees, weight }: Lettering,
  measure: TextMeasure,
): Run {
  const along = SHIFT[anchor] * (anchor === 'start' ? 0 : measure(text, size, weight));
  const angle = (angleDegrees * Math.PI) / 180;
  const run = {
    text,
    x: points(place.x + along * Math.cos(angle)),
    y: points(place.y + along * Math.sin(angle)),
    size: points(size),
    weight,
    ink: 'full' as const,
  };
  return angleDegrees === 0 ? run : { ...run, angleDegrees };
}

/** Thousandths of a point: finer than any printer. */
const points = (mm: number): number => Math.round(mm * POINTS_PER_MM * 1000) / 1000;

const length = (mm: number): string => printShort(mm * POINTS_PER_MM, 3);

const at = ({ x, y }: Point): string => `${length(x)} ${length(y)}`;

/** `#rrggbb` as three parts of 1. */
const colour = (screen: string): string =>
  [1, 3, 5].map((from) => printShort(Number.parseInt(screen.slice(from, from + 2), 16) / 255, 3)).join(' ');
