import { segmentsOf } from '../../src/drawing/box.js';
import type { Drawing, Lettering } from '../../src/drawing/drawing.js';
import type { Figure } from '../../src/drawing/figure.js';
import type { TextMeasure } from '../../src/drawing/text-measure.js';
import { clipSegment, halfPlanesOf } from '../../src/plane/clip.js';
import type { Point } from '../../src/plane/point.js';
import type { Polygon } from '../../src/plane/polygon.js';

/** The box about a line of text: from the foot of its descenders to the top of its capitals. */
export function boxOf(
  { text, at, size, anchor, angleDegrees, weight }: Lettering,
  measure: TextMeasure,
): Polygon {
  const width = measure(text, size, weight);
  const start = { start: 0, middle: -width / 2, end: -width }[anchor];
  const angle = (angleDegrees * Math.PI) / 180;
  const turn = ({ x, y }: Point): Point => ({
    x: at.x + x * Math.cos(angle) - y * Math.sin(angle),
    y: at.y + x * Math.sin(angle) + y * Math.cos(angle),
  });
  // Figures and names here have descenders only in "g" and "p"; a fifth of the em covers those.
  const [low, high] = [-0.2 * size, 0.68 * size];
  return [
    { x: start, y: low },
    { x: start + width, y: low },
    { x: start + width, y: high },
    { x: start, y: high },
  ].map(turn);
}

/** The lines of text of a drawing. */
export const letteringOf = (drawing: Drawing): readonly Lettering[] =>
  drawing.flatMap(({ shape }) => (shape.kind === 'text' ? [shape] : []));

/** Pairs of texts, and of a text and a line, that lie on each other. */
export function collisions(drawing: Drawing, measure: TextMeasure): readonly string[] {
  const texts = letteringOf(drawing).map((shape) => ({ words: shape.text, box: boxOf(shape, measure) }));
  const lines = drawing.flatMap(({ layer, shape }) =>
    segmentsOf(shape).map((segment) => ({ layer, segment })),
  );
  return texts.flatMap(({ words, box }, index) => {
    const inside = halfPlanesOf(box);
    const hit = lines.filter(({ segment }) => clipSegment(segment, inside)).map(({ layer }) => layer);
    const met = texts.slice(index + 1).filter((other) =>
      [
        [box, other.box],
        [other.box, box],
      ].some(([one, another]) =>
        segmentsOf({ kind: 'polyline', points: [...(one as Polygon), (one as Polygon)[0] as Point] }).some(
          (edge) => clipSegment(edge, halfPlanesOf(another as Polygon)),
        ),
      ),
    );
    return [...hit, ...met.map((other) => other.words)].map((other) => `${words} on ${other}`);
  });
}

/** Numeric noise, in mm. */
const NOISE = 1e-6;

/** The points of lines and lettering that lie outside a figure's own box. */
export function strays({ drawing, width, height }: Figure, measure: TextMeasure): readonly Point[] {
  const points = [
    ...letteringOf(drawing).flatMap((words) => boxOf(words, measure)),
    ...drawing.flatMap(({ shape }) => segmentsOf(shape).flatMap(({ from, to }) => [from, to])),
  ];
  return points.filter(({ x, y }) => x < -NOISE || x > width + NOISE || y < -NOISE || y > height + NOISE);
}
