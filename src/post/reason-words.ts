import { printShort } from '../measure/number.js';
import type { PostMeasure, PostReason } from './standing.js';

/** How lengths and masses are read in the recipe's own units. */
export interface Readings {
  readonly length: (mm: number) => string;
  readonly mass: (g: number) => string;
}

const NAMES: Readonly<Record<PostMeasure, string>> = {
  length: 'its longer side',
  height: 'its shorter side',
  thickness: 'its thickness',
  mass: 'its mass',
  ratio: 'its longer side over its shorter',
  sum: 'longer side, shorter side and thickness together',
};

const plain = (value: number): string => printShort(value, 3);

/** `its mass is 104 g, where at most 100 g is taken`; `within`: what holds within the limit. */
export function reasonWords(
  reason: PostReason,
  { length, mass }: Readings,
  within: 'is taken' | 'costs no more' = 'is taken',
): string {
  if (reason.measure === 'uneven') return 'a box is uneven, where only pieces of even thickness are taken';
  const { measure, value, limit, bound } = reason;
  const read = measure === 'mass' ? mass : measure === 'ratio' ? plain : length;
  const verb = measure === 'sum' ? 'come to' : measure === 'ratio' ? 'comes to' : 'is';
  return `${NAMES[measure]} ${verb} ${read(value)}, where at ${bound} ${read(limit)} ${within}`;
}

/** `its mass is not known` */
export const unknownWords = (measure: PostMeasure): string => `${NAMES[measure]} is not known`;

/** What is always said beside a standing: the operator decides. */
export const OPERATOR_DECIDES = 'the operator’s own rules decide';
