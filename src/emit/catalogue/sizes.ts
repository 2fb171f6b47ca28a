import { POINTS_PER_MM } from '../pdf/document.js';
import { LEAF } from './leaf.js';

/** The leaf's box in mm. */
export const WIDTH = LEAF.width / POINTS_PER_MM;
export const HEIGHT = LEAF.height / POINTS_PER_MM;

/** Sizes of type, in mm (1 pt is 0.353 mm): a title, what is read, and figures beside a drawing. */
export const TITLE = 5.4;
export const BODY = 2.85;
export const SMALL = 2.5;
