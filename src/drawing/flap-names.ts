import { OUTWARD, outerScoreAt } from '../folding/corner-directions.js';
import { FLAP_NAMES, type FlapName, type Folding } from '../folding/folding.js';
import type { Point } from '../plane/point.js';
import { type Box, segmentsOf, touches } from './box.js';
import { type Drawing, lettering } from './drawing.js';
import { CAP_HEIGHT, DESCENT, type TextMeasure } from './text-measure.js';

const LARGEST = 4.2;
/** Clear paper about a name, in mm. */
const CLEAR = 1.5;
/** Where on the axis of its flap a name may stand, as parts of the flap's height from its outermost score. */
const PLACES = [0.4, 0.32, 0.48, 0.25, 0.56, 0.18, 0.64];

/**
 * The flaps' names, each on its own flap where no line of the drawing passes, and what the face shows. In the blank's
 * frame, at true size; a name that finds no room is left out.
 */
export function flapNames({ made }: Folding, drawing: Drawing, measure: TextMeasure): Drawing {
  const lines = drawing.flatMap(({ shape }) => segmentsOf(shape));
  const set = (text: string, size: number, places: readonly Point[]): Drawing => {
    const width = measure(text, size, 'bold');
    const box = ({ x, y }: Point): Box => ({
      x: x - width / 2 - CLEAR,
      y: y - size * (CAP_HEIGHT / 2 + DESCENT) - CLEAR,
      width: width + 2 * CLEAR,
      height: size * (CAP_HEIGHT + DESCENT) + 2 * CLEAR,
    });
    const free = places.find((place) => !touches(lines, box(place)));
    if (!free) return [];
    const at = { x: free.x, y: free.y - (size * CAP_HEIGHT) / 2 };
    return [lettering(text, at, size, { anchor: 'middle', weight: 'bold' })];
  };
  const onAxis = (flap: FlapName): readonly Point[] =>
    PLACES.map((part) => {
      const out = outerScoreAt(made, flap) + made.heights[flap] * part;
      const { x, y } = OUTWARD[flap];
      return { x: x === 0 ? made.faceCentre.x : x * out, y: y === 0 ? made.faceCentre.y : y * out };
    });
  // Pages of a tiled drawing often meet in the middle.
  const offCentre = { x: made.faceCentre.x, y: made.faceCentre.y + made.face.height / 4 };
  return [
    ...FLAP_NAMES.flatMap((flap) => set(flap, Math.min(LARGEST, made.heights[flap] / 6), onAxis(flap))),
    ...set('inside of the face', Math.min(LARGEST, made.face.width / 14), [offCentre]),
  ];
}
