import type { Point } from '../plane/point.js';
import type { Polygon } from '../plane/polygon.js';
import type { Envelope, Size } from '../recipe/recipe.js';
import type { Folding } from './folding.js';

/** A rectangle on the front, in mm from the front's edges as it is read. */
export interface FrontZone {
  readonly fromTop: number;
  readonly fromRight: number;
  readonly width: number;
  readonly height: number;
  /** The same on the flat blank, counter-clockwise in the blank's frame. */
  readonly outline: Polygon;
}

/** The front of the envelope as it is read: the show side of the face. */
export interface FrontZones {
  /** Width along the lines of writing, height across them. */
  readonly size: Size;
  /** Where the seal flap's hinge lies when the front is read. */
  readonly hinge: 'top' | 'left';
  /**
   * The reader's up, as a unit vector in the blank's frame. The blank is seen from the inside, so the front is mirrored
   * there: the reader's right lies a quarter turn counter-clockwise from up.
   */
  readonly up: Point;
  /** Both null where the front is smaller than any post takes: there is no zone for it. */
  readonly address: FrontZone | null;
  readonly stamp: FrontZone | null;
}

/** What a post leaves for address and stamp, in mm from the edges of the front. */
interface Practice {
  readonly smallest: Size;
  readonly address: {
    readonly fromTop: number;
    readonly fromRight: number;
    readonly fromBottom: number;
    readonly fromLeft: number;
    /** Its far side lies no further than this from the right edge. */
    readonly within: number;
  };
  readonly stamp: Size;
}

/**
 * Standardized items of the Universal Postal Union: the smallest front and the address zone as restated by Korea Post
 * (size and weight of letter-post items, https://www.koreapost.go.kr/eng/subIndex/4424.do, undated). The zone for stamps
 * and postmarks, and 15 mm free on the left, from Australia Post (envelope zones,
 * https://auspost.com.au/sending/guidelines/addressing-guidelines/envelope-zones, undated), whose address zone is else
 * the same.
 */
export const LETTER: Practice = {
  smallest: { width: 140, height: 90 },
  address: { fromTop: 40, fromRight: 15, fromBottom: 15, fromLeft: 15, within: 140 },
  stamp: { width: 90, height: 40 },
};

/** Where the address and the stamp go on the front of the closed envelope. */
export function frontZones({ card }: Envelope, { made }: Folding, practice: Practice = LETTER): FrontZones {
  const { face, faceCentre } = made;
  // Read along the longer side. Of one that opens at the end the hinge lies left, so that the stamp and its postmark meet
  // the closed end, and so does a sorting machine, which draws letters in by the right edge (our judgement; from memory).
  const turned = card.value.height > card.value.width;
  const size = turned ? { width: face.height, height: face.width } : face;
  const up = turned ? { x: -1, y: 0 } : { x: 0, y: 1 };
  const zone = (fromTop: number, fromRight: number, width: number, height: number): FrontZone => {
    const at = (right: number, top: number): Point => {
      const [along, above] = [size.width / 2 - right, size.height / 2 - top];
      return {
        x: faceCentre.x + up.x * above - up.y * along,
        y: faceCentre.y + up.y * above + up.x * along,
      };
    };
    const [right, bottom] = [fromRight + width, fromTop + height];
    return {
      fromTop,
      fromRight,
      width,
      height,
      outline: [
        at(fromRight, fromTop),
        at(fromRight, bottom),
        at(right, bottom),
        at(right, fromTop),
      ].reverse(),
    };
  };
  const front = { size, hinge: turned ? ('left' as const) : ('top' as const), up };
  if (size.width < practice.smallest.width || size.height < practice.smallest.height)
    return { ...front, address: null, stamp: null };
  const { address, stamp } = practice;
  return {
    ...front,
    address: zone(
      address.fromTop,
      address.fromRight,
      Math.min(address.within, size.width - address.fromLeft) - address.fromRight,
      size.height - address.fromTop - address.fromBottom,
    ),
    stamp: zone(0, 0, stamp.width, stamp.height),
  };
}
