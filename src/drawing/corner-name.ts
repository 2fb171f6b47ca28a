import type { FlapName, FlapRecord } from '../folding/folding.js';
import type { Point } from '../plane/point.js';
import { type Lettering, lettering, type Mark } from './drawing.js';
import { CAP_HEIGHT, type TextMeasure } from './text-measure.js';

/** The em of a corner's name, and its distance from the extension lines beside it, in mm. */
const NAME = 3.2;
const CLEAR = 1.6;

/** The name of a corner of a blank that lies square to the page, in the quarter outside it that both of its edges leave free. */
export function cornerName(flap: FlapName, corner: Point): Mark {
  const [rightwards, upwards] = QUARTERS[flap];
  const at = {
    x: corner.x + rightwards * CLEAR,
    y: corner.y + (upwards > 0 ? CLEAR : -CLEAR - NAME * CAP_HEIGHT),
  };
  const anchor: Lettering['anchor'] = rightwards > 0 ? 'start' : 'end';
  return lettering(flap, at, NAME, { anchor, weight: 'bold' }, 'dimension');
}

/** How far it reaches to the side of its corner, in mm on the page. */
export const cornerNameReach = (flap: FlapName, measure: TextMeasure): number =>
  CLEAR + measure(flap, NAME, 'bold');

const QUARTERS: FlapRecord<readonly [rightwards: 1 | -1, upwards: 1 | -1]> = {
  bottom: [-1, -1],
  right: [1, -1],
  seal: [1, 1],
  left: [-1, 1],
};
