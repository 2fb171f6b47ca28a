import type { Size } from '../recipe/recipe.js';
import { type Drawing, lettering, line, type Mark, rectangle } from './drawing.js';
import { CAP_HEIGHT } from './text-measure.js';

/** Side of the square and lengths of the bars, in mm. */
const CHECK_SQUARE = 20;
const CHECK_BAR_MM = 100;
const CHECK_BAR_INCHES = 4 * 25.4;

const GAP = 7;
const FIGURE = 2.5;
/** Heights of the bars above the foot of the square, and of their graduations. */
const UPPER = 12;
const LOWER = 8;
const LONG = 3;
const SHORT = 1.8;

export const SCALE_CHECK_SIZE: Size = {
  width: CHECK_SQUARE + GAP + CHECK_BAR_INCHES + 4,
  height: CHECK_SQUARE,
};

/** A square, a bar of 100 mm and one of 4 in, to measure on the print: from (0, 0) to its size. */
export function scaleCheck(): Drawing {
  const start = CHECK_SQUARE + GAP;
  const middle = CHECK_SQUARE / 2;
  return [
    rectangle('scale', 0, 0, CHECK_SQUARE, CHECK_SQUARE),
    lettering('20 mm', { x: middle, y: middle + 0.8 }, FIGURE, { anchor: 'middle' }),
    lettering('square', { x: middle, y: middle - 0.8 - FIGURE * CAP_HEIGHT }, FIGURE, { anchor: 'middle' }),
    ...bar(start, UPPER, 1, CHECK_BAR_MM, 20, (step) => (step % 10 === 0 ? `${step * 5}` : null), 'mm'),
    ...bar(start, LOWER, -1, CHECK_BAR_INCHES, 16, (step) => (step % 4 === 0 ? `${step / 4}` : null), 'in'),
  ];
}

/** A bar with graduations to one side (1: up, -1: down); the last figure carries the unit. */
function bar(
  x: number,
  y: number,
  side: 1 | -1,
  length: number,
  steps: number,
  figure: (step: number) => string | null,
  unit: string,
): readonly Mark[] {
  const graduations = Array.from({ length: steps + 1 }, (_, step): readonly Mark[] => {
    const at = x + (length * step) / steps;
    const text = figure(step);
    const tall = text !== null ? LONG : SHORT;
    const base = y + side * (tall + 0.9) - (side < 0 ? FIGURE * CAP_HEIGHT : 0);
    return [
      line('scale', { x: at, y }, { x: at, y: y + side * tall }),
      ...(text === null
        ? []
        : [
            lettering(step === steps ? `${text} ${unit}` : text, { x: at, y: base }, FIGURE, {
              anchor: 'middle',
            }),
          ]),
    ];
  });
  return [line('scale', { x, y }, { x: x + length, y }), ...graduations.flat()];
}
