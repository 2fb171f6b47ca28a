/*
 * post/: whether a class of post takes a piece, limit by limit.
 * In: what is known of a piece, and a class of stock/post-classes.ts. Out: accepted, refused or unknown, with every reason's numbers.
 * Refuses to know: recipes, and how a reason is worded.
 */
import { fits } from '../measure/slack.js';
import type { Bounds, PostClass } from '../stock/post-classes.js';

/** A closed piece of post. Lengths mm, mass g; null: not known. */
export interface PostPiece {
  /** Its two sides, in any order. */
  readonly sides: readonly [number, number];
  readonly thickness: number;
  readonly mass: number | null;
  /** Walled, or thicker in one place than in another. */
  readonly uneven: boolean;
}

/** What a class limits: lengths and the sum of all three in mm, mass in g, the longer side to the shorter as a ratio. */
export type PostMeasure = 'length' | 'height' | 'thickness' | 'mass' | 'ratio' | 'sum';

/** A limit that a piece does not keep. */
export type PostReason =
  | {
      readonly measure: PostMeasure;
      readonly value: number;
      readonly limit: number;
      readonly bound: 'least' | 'most';
    }
  | { readonly measure: 'uneven' };

/** What a class of post says to a piece. */
export interface PostStanding {
  readonly class: PostClass;
  /** Null: it depends on what is not known. */
  readonly accepted: boolean | null;
  /** Every limit that refuses it. */
  readonly reasons: readonly PostReason[];
  /** Limits outside which a piece is still taken, for more. */
  readonly surcharges: readonly PostReason[];
  /** What would have to be known. */
  readonly unknown: readonly PostMeasure[];
}

/** How a piece stands with a class of post. */
export function postStanding(piece: PostPiece, post: PostClass): PostStanding {
  const [length, height] = [Math.max(...piece.sides), Math.min(...piece.sides)];
  const shape = post.ratio === null ? [] : beyond('ratio', length / height, post.ratio);
  const { evenOnly, ratio, mass, thin } = post;
  const isLarge = thin !== null && (!fits(length, thin.length) || !fits(height, thin.height));
  const reasons: readonly PostReason[] = [
    ...beyond('length', length, post.length),
    ...beyond('height', height, post.height),
    ...beyond('thickness', piece.thickness, post.thickness),
    ...beyond('sum', length + height + piece.thickness, { min: null, max: post.sum }),
    ...(ratio?.outside === 'refused' ? shape : []),
    ...(evenOnly && piece.uneven ? [{ measure: 'uneven' } as const] : []),
    ...(piece.mass === null ? [] : beyond('mass', piece.mass, mass)),
  ];
  const unknown: readonly PostMeasure[] =
    piece.mass === null && (mass.min !== null || mass.max !== null) ? ['mass'] : [];
  return {
    class: post,
    accepted: reasons.length > 0 ? false : unknown.length > 0 ? null : true,
    reasons,
    surcharges: [
      ...(ratio?.outside === 'surcharge' ? shape : []),
      ...(isLarge ? beyond('thickness', piece.thickness, { min: thin.thickness, max: null }) : []),
    ],
    unknown,
  };
}

/** The limit that a value passes, if it passes one: limits themselves are allowed. */
function beyond(measure: PostMeasure, value: number, { min, max }: Bounds): readonly PostReason[] {
  if (min !== null && !fits(min, value)) return [{ measure, value, limit: min, bound: 'least' }];
  if (max !== null && !fits(value, max)) return [{ measure, value, limit: max, bound: 'most' }];
  return [];
}
