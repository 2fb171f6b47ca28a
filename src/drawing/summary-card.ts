import { blankWords } from '../folding/blank-words.js';
import type { Point } from '../plane/point.js';
import type { Size } from '../recipe/recipe.js';
import { paragraph, stack } from './block.js';
import { lettering, rectangle } from './drawing.js';
import type { Figure } from './figure.js';
import { place } from './place.js';
import { back } from './stages/back.js';
import { front } from './stages/front.js';
import { cutBlank } from './stages/open-blank.js';
import { paperSize, type Picture, pictureOf } from './stages/picture.js';
import type { Pen } from './stages/stage.js';
import { CAP_HEIGHT, DESCENT, type TextMeasure } from './text-measure.js';
import { titleBlock } from './title-block.js';
import { cardWords, type Drawn, rulerOf } from './words.js';

/** Sizes on the page, in mm. */
const CARD: Size = { width: 120, height: 80 };
const MARGIN = 6;
const AFTER_HEAD = 5;
const AFTER_TITLE = 1.8;
const BODY = 2.9;
/** The open blank's share of the width. */
const OPEN_SHARE = 0.56;
const GUTTER = 6;
const NAME = 2.5;
const NAME_GAP = 1.6;
/** What a picture's name takes beneath it. */
const NAMED = NAME_GAP + NAME * (CAP_HEIGHT + DESCENT);

/**
 * An envelope on one small card: its title, the size of its card and of its blank, the open blank with its scores, and
 * the closed envelope from the back and from the front, all at one scale. From (0, 0) to its size.
 */
export function summaryCard(of: Drawn, measure: TextMeasure): Figure {
  const { envelope, folding } = of;
  const across = CARD.width - 2 * MARGIN;
  const head = stack(
    AFTER_TITLE,
    titleBlock(envelope.title.value, across, measure),
    paragraph(`${cardWords(of)}. ${blankWords(folding, rulerOf(of))}.`, across, BODY, measure),
  );
  const closed = back(folding, envelope, 'left out');
  const draw = {
    open: (pen: Pen) => cutBlank(folding, envelope, pen),
    back: () => closed,
    front: front(folding, envelope).draw,
  };
  const room = { width: across, height: CARD.height - 2 * MARGIN - head.height - AFTER_HEAD };
  const open = { width: across * OPEN_SHARE, height: room.height - NAMED };
  const sizes = { back: paperSize(draw.back, measure), front: paperSize(draw.front, measure) };
  const side = sideColumn(sizes, { width: across - open.width - GUTTER, height: room.height });
  const pen = { measure, scale: Math.min(scaleTo(paperSize(draw.open, measure), open), side.scale) };
  const middle = { y: MARGIN + room.height / 2 };
  const left = captioned(pictureOf(draw.open, pen), 'open, inside up');
  const right = side.arrange(
    captioned(pictureOf(draw.back, pen), 'the back'),
    captioned(pictureOf(draw.front, pen), 'the front'),
  );
  return {
    ...CARD,
    drawing: [
      rectangle('rule', 0, 0, CARD.width, CARD.height),
      ...place(head.drawing, { x: MARGIN, y: CARD.height - MARGIN }),
      ...centred(left, { ...middle, x: MARGIN + open.width / 2 }),
      ...centred(right, { ...middle, x: CARD.width - MARGIN - (across - open.width - GUTTER) / 2 }),
    ],
  };
}

/** The largest scale at which something fits a box. */
const scaleTo = ({ width, height }: Size, box: Size): number =>
  Math.min(box.width / width, box.height / height);

interface Column {
  readonly scale: number;
  readonly arrange: (back: Picture, front: Picture) => Picture;
}

/** Back and front one over the other, or side by side where that lets them be larger. */
function sideColumn(
  { back: rear, front: fore }: { readonly back: Size; readonly front: Size },
  box: Size,
): Column {
  const over = scaleTo(
    { width: Math.max(rear.width, fore.width), height: rear.height + fore.height },
    { width: box.width, height: box.height - 2 * NAMED - GUTTER },
  );
  const abreast = scaleTo(
    { width: rear.width + fore.width, height: Math.max(rear.height, fore.height) },
    { width: box.width - GUTTER, height: box.height - NAMED },
  );
  return over >= abreast ? { scale: over, arrange: oneOver } : { scale: abreast, arrange: sideBySide };
}

function oneOver(upper: Picture, lower: Picture): Picture {
  const width = Math.max(upper.width, lower.width);
  const [high, low] = [upper, lower].map((picture) =>
    place(picture.drawing, { x: (width - picture.width) / 2 }),
  ) as [Picture['drawing'], Picture['drawing']];
  return {
    width,
    height: upper.height + GUTTER + lower.height,
    drawing: [...place(high, { y: lower.height + GUTTER }), ...low],
  };
}

const sideBySide = (left: Picture, right: Picture): Picture => ({
  width: left.width + GUTTER + right.width,
  height: Math.max(left.height, right.height),
  drawing: [...left.drawing, ...place(right.drawing, { x: left.width + GUTTER })],
});

/** A picture over its name. */
const captioned = ({ drawing, width, height }: Picture, name: string): Picture => ({
  width,
  height: height + NAMED,
  drawing: [
    ...place(drawing, { y: NAMED }),
    lettering(name, { x: width / 2, y: NAME * DESCENT }, NAME, { anchor: 'middle' }),
  ],
});

/** A picture with its middle at a point. */
const centred = ({ drawing, width, height }: Picture, { x, y }: Point): Picture['drawing'] =>
  place(drawing, { x: x - width / 2, y: y - height / 2 });
