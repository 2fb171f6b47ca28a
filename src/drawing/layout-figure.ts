import type { Size } from '../recipe/recipe.js';
import { type Drawing, lettering, line, rectangle } from './drawing.js';
import type { Figure } from './figure.js';
import { hatch } from './hatch.js';
import { CAP_HEIGHT, type TextMeasure } from './text-measure.js';

/** A rectangle on a sheet, from its lower left corner, in mm; `words`: what is written in it, null for an offcut. */
export interface LaidOut extends Size {
  readonly x: number;
  readonly y: number;
  readonly words: readonly string[] | null;
}

/** Ems of what is written into pieces, the largest first, in mm on the page. */
const EMS = [3.2, 2.6, 2.1, 1.7];
const LEADING = 1.3;
/** Between words and edges. */
const CLEAR = 1.2;
/** Of the hatching on offcuts. */
const SPACING = 2.2;

/** A sheet as it is cut up, made to fit a box: pieces with their words, offcuts hatched. */
export function layoutFigure(
  sheet: Size,
  parts: readonly LaidOut[],
  box: Size,
  measure: TextMeasure,
): Figure {
  const scale = Math.min(box.width / sheet.width, box.height / sheet.height);
  const scaled = parts.map(
    (part): LaidOut => ({
      x: part.x * scale,
      y: part.y * scale,
      width: part.width * scale,
      height: part.height * scale,
      words: part.words,
    }),
  );
  const [width, height] = [sheet.width * scale, sheet.height * scale];
  return {
    width,
    height,
    drawing: [
      ...scaled.flatMap((part) =>
        part.words === null ? hatching(part) : written(part, part.words, measure),
      ),
      ...scaled.map((part) => rectangle('blank', part.x, part.y, part.width, part.height)),
      rectangle('cut', 0, 0, width, height),
    ],
  };
}

function hatching({ x, y, width, height }: LaidOut): Drawing {
  const corners = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  return hatch(corners, SPACING).map(({ from, to }) => line('waste', from, to));
}

/** As many of the words as there is room for, upright or turned, in the largest letters that serve. */
function written(part: LaidOut, words: readonly string[], measure: TextMeasure): Drawing {
  for (const lines of words.map((_, index) => words.slice(0, words.length - index)))
    for (const size of EMS)
      for (const isTurned of [false, true]) {
        const [along, up] = isTurned ? [part.height, part.width] : [part.width, part.height];
        const tall = size * (CAP_HEIGHT + LEADING * (lines.length - 1)) + 2 * CLEAR;
        const wide = Math.max(...lines.map((text) => measure(text, size, 'regular'))) + 2 * CLEAR;
        if (wide > along || tall > up) continue;
        return set(part, lines, size, isTurned);
      }
  return [];
}

function set(part: LaidOut, lines: readonly string[], size: number, isTurned: boolean): Drawing {
  const centre = { x: part.x + part.width / 2, y: part.y + part.height / 2 };
  const top = (size * (CAP_HEIGHT + LEADING * (lines.length - 1))) / 2;
  return lines.map((text, index) => {
    const down = top - size * (CAP_HEIGHT + LEADING * index);
    const at = isTurned ? { x: centre.x - down, y: centre.y } : { x: centre.x, y: centre.y + down };
    return lettering(text, at, size, { anchor: 'middle', angleDegrees: isTurned ? 90 : 0 });
  });
}
