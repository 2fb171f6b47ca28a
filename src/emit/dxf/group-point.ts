import type { vec3_t } from '@tarikjabiri/dxf';
import { printNumber } from '../../measure/number.js';
import type { Point } from '../../plane/point.js';

/** Decimals of a coordinate in mm: far finer than any machine, coarse enough to drop the noise of sums. */
const DECIMALS = 6;

/** A number as it is written: rounded, so that neither noise nor an exponent comes out. */
export const groupNumber = (value: number): number => Number(printNumber(value, DECIMALS));

/** A point as it is written, on the drawing's plane. */
export const groupPoint = ({ x, y }: Point): vec3_t => ({ x: groupNumber(x), y: groupNumber(y), z: 0 });
