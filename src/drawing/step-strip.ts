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
/** How small the cells and the words of a strip may be. */
export interface StripSizes {
  readonly narrowest: number;
  readonly caption: number;
}

const LARGE: StripSizes = { narrowest: 31, caption: 3 };
const GUTTER = 4;
const ROW_GAP = 5;
const MARGIN = 4;
/** Kept free within a cell on either side: marks reach over the paper's edge. */
const ROUND = 1.5;
/** Between a picture's foot and its words. */
const CAPTION_GAP = 2.4;
const AFTER_NUMBER = 1.4;

/** The fold, stage by stage: rows of pictures one below the other, a margin about them. From (0, 0) to its size. */
export function stepStrip(folding: Folding, envelope: Envelope, width: number, measure: TextMeasure): Figure {
  const rows = stepRows(folding, envelope, width - 2 * MARGIN, measure);
  const whole = stack(ROW_GAP, ...rows.map(({ drawing, height }) => standing(drawing, height)));
  return {
    drawing: place(whole.drawing, { x: MARGIN, y: MARGIN + whole.height }),
    width,
    height: whole.height + 2 * MARGIN,
  };
}

/** The same row by row, without a margin, each as wide as wanted: from left to right a picture over its number and words. */
export function stepRows(
  folding: Folding,
  envelope: Envelope,
  width: number,
  measure: TextMeasure,
  { narrowest, caption: size }: StripSizes = LARGE,
): readonly Figure[] {
  const all = stagesOf(folding, envelope);
  const most = Math.max(1, Math.floor((width + GUTTER) / (narrowest + GUTTER)));
  const columns = Math.ceil(all.length / Math.ceil(all.length / most));
  const cell = (width + GUTTER) / columns - GUTTER;
  const pens = pensFor(all, cell, measure);
  const cells = all.map(({ caption, seen, draw }, index) => ({
    picture: pictureOf(draw, pens[seen]),
    words: numbered(index + 1, caption, cell, size, measure),
  }));
  return inRows(cells, columns).map((row) => {
    const { drawing, height } = setRow(row, cell);
    return { drawing: place(drawing, { y: height }), width, height };
  });
}

/** A folding's stages are drawn once, however many strips show them. */
function stagesOf(folding: Folding, envelope: Envelope): readonly Stage[] {
  const all = drawn.get(folding) ?? stages(folding, envelope);
  drawn.set(folding, all);
  return all;
}

const drawn = new WeakMap<Folding, readonly Stage[]>();

/** For stages of each kind the largest scale at which the paper of all of them fits a cell. */
function pensFor(
  all: readonly Stage[],
  cell: number,
  measure: TextMeasure,
): Readonly<Record<Stage['seen'], Pen>> {
  const room = cell - 2 * ROUND;
  const pen = (seen: Stage['seen']): Pen => {
    const scales = all
      .filter((stage) => stage.seen === seen)
      .map(({ draw }) => {
        const { width, height } = paperSize(draw, measure);
        return room / Math.max(width, height);
      });
    return { scale: Math.min(...scales), measure };
  };
  return { 'from above': pen('from above'), obliquely: pen('obliquely') };
}

/** A caption with its number hung before it. */
function numbered(number: number, caption: string, cell: number, size: number, measure: TextMeasure): Block {
  const figure = `${number}`;
  const indent = measure(figure, size, 'bold') + AFTER_NUMBER;
  const words = paragraph(caption, cell - indent, size, measure);
  const first = lettering(figure, { x: 0, y: -size * CAP_HEIGHT }, size, { weight: 'bold' });
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
