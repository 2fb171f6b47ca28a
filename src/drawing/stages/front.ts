import { closedPose } from '../../folding/pose.js';
import type { Folding } from '../../folding/folding.js';
import { frontZones } from '../../folding/front-zones.js';
import { apartFrom } from '../../plane/apart-from.js';
import { hiddenParts } from '../../plane/hidden-parts.js';
import type { Point3 } from '../../plane/point3.js';
import { bounds, edgesOf, type Polygon } from '../../plane/polygon.js';
import type { Envelope } from '../../recipe/recipe.js';
import { segmentsOf } from '../box.js';
import { type Drawing, type Layer, lettering, line } from '../drawing.js';
import { CAP_HEIGHT } from '../text-measure.js';
import { paperScene } from './paper-scene.js';
import { drawScene } from './scene.js';
import { fromAbove, type Pen, type Stage } from './stage.js';
import { frontView, seenFrom } from './view.js';

/** On the page, in mm. */
const NAME = 2.3;
const CLEAR = 0.5;

/** The front of the closed envelope as it is read: flaps behind it dashed, and where address and stamp go. */
export function front(folding: Folding, envelope: Envelope): Stage {
  const { up, address, stamp } = frontZones(envelope, folding);
  const view = frontView(up);
  const panels = [
    { words: 'address', zone: address },
    { words: 'stamp', zone: stamp },
  ].flatMap(({ words, zone }) => (zone ? [{ words, corners: flat(zone.outline).map(seenFrom(view)) }] : []));
  const paper = drawScene(paperScene(folding, closedPose(folding.made)), view, 'dashed');
  const lines = [
    ...withoutBehind(
      paper,
      panels.map(({ corners }) => corners),
    ),
    ...panels.flatMap(({ corners }) => panelLines(corners, paper)),
  ];
  return fromAbove(panels.length > 0 ? 'The front: room for address and stamp.' : 'The front.', (pen) => [
    ...lines,
    ...panels.flatMap(({ words, corners }) => named(words, corners, pen)),
  ]);
}

const flat = (polygon: Polygon): readonly Point3[] => polygon.map(({ x, y }) => ({ x, y, z: 0 }));

/** A narrow line, as pictures are small. */
const NARROW: Layer = 'raised-zone';

/** The outline of a panel where it does not run along an edge of the paper. */
function panelLines(corners: Polygon, paper: Drawing): Drawing {
  const edges = paper.flatMap(({ layer, shape }) => (layer === 'edge' ? segmentsOf(shape) : []));
  return edgesOf(corners)
    .flatMap((side) => apartFrom(side, edges))
    .map(({ from, to }) => ({ ...line('zone', from, to), like: NARROW }));
}

/** A panel's name in its middle, where there is room. */
function named(words: string, corners: Polygon, { scale, measure }: Pen): Drawing {
  const { min, max } = bounds(corners);
  const wide = measure(words, NAME, 'regular') + 2 * CLEAR;
  if (wide > (max.x - min.x) * scale || NAME + 2 * CLEAR > (max.y - min.y) * scale) return [];
  const middle = { x: (min.x + max.x) / 2, y: (min.y + max.y) / 2 - (NAME * CAP_HEIGHT) / 2 / scale };
  return [lettering(words, middle, NAME, { anchor: 'middle' })];
}

/** The drawing without its dashed edges behind panels: they stay clear. */
const withoutBehind = (paper: Drawing, panels: readonly Polygon[]): Drawing =>
  paper.flatMap((mark) =>
    mark.layer === 'hidden'
      ? segmentsOf(mark.shape).flatMap((segment) =>
          hiddenParts(segment, panels).seen.map(({ from, to }) => line('hidden', from, to)),
        )
      : [mark],
  );
