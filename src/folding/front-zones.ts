import { fits } from '../measure/slack.js';
import type { Point } from '../plane/point.js';
import type { Polygon } from '../plane/polygon.js';
import type { Envelope, Size } from '../recipe/recipe.js';
import type { Folding } from './folding.js';

/** A rectangle on the front, in mm from the front's edges as it is read. */
export interface FrontZone extends Size {
  readonly fromTop: number;
  readonly fromRight: number;
  /** The same on the flat blank, counter-clockwise in the blank's frame. */
  readonly outline: Polygon;
}

/** The show side of the face, as it is read: width along the lines of writing, height across them. */
export interface FrontZones extends Size {
  /** Where the seal flap's hinge lies for the reader. */
  readonly hinge: 'top' | 'left';
  /**
   * The reader's up, a unit vector in the blank's frame. That frame is seen from the inside, where the front is mirrored:
   * the reader's right lies a quarter turn counter-clockwise from up.
   */
  readonly up: Point;
  /** Where the post reads the address, and what it leaves for stamps and postmarks; null on a front smaller than it takes. */
  readonly address: FrontZone | null;
  readonly stamp: FrontZone | null;
}

/** What a post asks of the front of a letter, in mm. */
export interface Practice {
  readonly smallest: Size;
  /** The address keeps these distances from the front's edges, and lies within the last of the right one. */
  readonly address: Readonly<Record<'top' | 'right' | 'bottom' | 'left' | 'withinOfRight', number>>;
  /** In the corner at the top right. */
  readonly stamp: Size;
}

/**
 * Smallest front and address zone: standardized items of the Universal Postal Union, as restated by Korea Post ("Size and
 * weight of letter-post items", https://www.koreapost.go.kr/eng/subIndex/4424.do, undated). The corner for stamps and
 * postmarks, and the address clear of the left edge: Australia Post ("Envelope zones",
 * https://auspost.com.au/sending/guidelines/addressing-guidelines/envelope-zones, undated), which else asks the same.
 */
export const LETTER: Practice = {
  smallest: { width: 140, height: 90 },
  address: { top: 40, right: 15, bottom: 15, left: 15, withinOfRight: 140 },
  stamp: { width: 90, height: 40 },
};

/** Where address and stamp go on the front of the closed envelope. */
export function frontZones({ card }: Envelope, { made }: Folding, practice: Practice = LETTER): FrontZones {
  const { face, faceCentre } = made;
  // One that opens at the end is read along its long side. Its hinge lies left (our choice), so that stamp and postmark
  // meet the closed end, as does a sorting machine, which draws letters in by the right edge (from memory).
  const turned = card.value.height > card.value.width;
  const front = turned
    ? { width: face.height, height: face.width, hinge: 'left' as const, up: { x: -1, y: 0 } }
    : { ...face, hinge: 'top' as const, up: { x: 0, y: 1 } };
  const zone = (fromTop: number, fromRight: number, { width, height }: Size): FrontZone => {
    const [right, top] = [front.width / 2 - fromRight, front.height / 2 - fromTop];
    const at = (along: number, above: number): Point => ({
      x: faceCentre.x + front.up.x * above - front.up.y * along,
      y: faceCentre.y + front.up.y * above + front.up.x * along,
    });
    const [left, bottom] = [right - width, top - height];
    // Clockwise for the reader.
    const outline = [at(right, top), at(right, bottom), at(left, bottom), at(left, top)];
    return { fromTop, fromRight, width, height, outline };
  };
  const { smallest, address, stamp } = practice;
  if (!fits(smallest.width, front.width) || !fits(smallest.height, front.height))
    return { ...front, address: null, stamp: null };
  return {
    ...front,
    address: zone(address.top, address.right, {
      width: Math.min(address.withinOfRight, front.width - address.left) - address.right,
      height: front.height - address.top - address.bottom,
    }),
    stamp: zone(0, 0, stamp),
  };
}
