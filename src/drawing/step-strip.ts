import type { Folding } from '../folding/folding.js';
import type { Envelope } from '../recipe/recipe.js';
import { beside, type Block, paragraph, stack, standing } from './block.js';
import { lettering } from './drawing.js';
import type { Figure } from './figure.js';
import { place } from './place.js';
import { paperSize, type Picture, pictureOf } from './stages/picture.js';
import type { Pen, Stage } from './stages/stage.js';
import { stages } from './stages/stages.js';
import { CAP_HEIGHT, type TextMeasure } from './text-measure.js';

/** Sizes on the page, in mm. */
const NARROWEST = 31;
const GUTTER = 4;
const ROW_GAP = 5;
/** Kept free within a cell on either side: marks reach over the paper's edge. */
const ROUND = 1.5;
/** Between a picture's foot and its words. */
const CAPTION_GAP = 2.4;
const CAPTION = 2.7;
const AFTER_NUMBER = 1.4;

/**
 * The fold, stage by stage, from left to right in rows that together are as wide as wanted: each picture over its number
 * and words, all at one scale. From (0, 0) to its size.
 */
export function stepStrip(folding: Folding, envelope: Envelope, width: number, measure: TextMeasure): Figure {
  const all = stages(folding, envelope);
  const most = Math.max(1, Math.floor((width + GUTTER) / (NARROWEST + GUTTER)));
  const columns = Math.ceil(all.length / Math.ceil(all.length / most));
  const cell = (width + GUTTER) / columns - GUTTER;
  const pen = penFor(all, cell, measure);
  const cells = all.map(({ caption, draw }, index) => ({
    picture: pictureOf(draw, pen),
    words: numbered(index + 1, caption, cell, measure),
  }));
  const whole = stack(ROW_GAP, ...inRows(cells, columns).map((row) => setRow(row, cell)));
  return { drawing: place(whole.drawing, { y: whole.height }), width, height: whole.height };
}

/** The largest scale at which every stage's paper fits a cell. */
function penFor(all: readonly Stage[], cell: number, measure: TextMeasure): Pen {
  const room = cell - 2 * ROUND;
  const scales = all.map(({ draw }) => {
    const { width, height } = paperSize(draw, measure);
    return Math.min(room / width, room / height);
  });
  return { scale: Math.min(...scales), measure };
}

/** A caption with its number hung before it. */
function numbered(number: number, caption: string, cell: number, measure: TextMeasure): Block {
  const figure = `${number}`;
  const indent = measure(figure, CAPTION, 'bold') + AFTER_NUMBER;
  const words = paragraph(caption, cell - indent, CAPTION, measure);
  const first = lettering(figure, { x: 0, y: -CAPTION * CAP_HEIGHT }, CAPTION, { weight: 'bold' });
  return { drawing: [first, ...place(words.drawing, { x: indent })], height: words.height };
}

interface Cell {
  readonly picture: Picture;
  readonly words: Block;
}

/** Pictures stand on one foot, in the middle of their cells; the words hang beneath. */
function setRow(row: readonly Cell[], cell: number): Block {
  const tall = Math.max(...row.map(({ picture }) => picture.height));
  return beside(
    ...row.map(({ picture, words }, column) => {
      const centred = place(picture.drawing, { x: (cell - picture.width) / 2 });
      return {
        x: column * (cell + GUTTER),
        block: stack(CAPTION_GAP, standing(centred, tall), words),
      };
    }),
  );
}

const inRows = <T>(all: readonly T[], columns: number): readonly (readonly T[])[] =>
  all.length === 0 ? [] : [all.slice(0, columns), ...inRows(all.slice(columns), columns)];
