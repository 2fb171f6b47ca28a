import { beside, paragraph } from '../../../drawing/block.js';
import { type Layer, line } from '../../../drawing/drawing.js';
import { lineKey } from '../../../drawing/line-key.js';
import { lineKeyBlock } from '../../../drawing/line-key-block.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import type { Term } from '../../cut-sheet/content.js';
import { ALL_CAUTIONS } from '../../cut-sheet/sections/cautions.js';
import type { Book } from '../book.js';
import { BODY, WIDTH } from '../sizes.js';
import { pictureStrip, runsOf, type Strip, textStrips, wordStrip } from '../strip.js';
import { isShort } from './cover.js';
import type { Part } from './part.js';

/** How the measurements are to be read, a paragraph each. */
const READING: readonly string[] = [
  'Every blank is a square that stands on its bottom corner, its inside up. Its corners are named for the flap that each becomes: bottom, left, right, and seal at the top.',
  'A mark is measured from its corner along the edge, on both edges that meet there. A line through both marks is the score; it lies at 45° to the edges. The scores of one side cross those of the next. A box envelope has a second score outside each first one: the wall lies between.',
  'Every length is given twice: as the ruler of the recipe reads it, and in the other system. Lay off by one of them, never by both.',
  'The crossing is by how much the marks on an edge pass each other; the overlap, how far a side flap and the bottom flap lie over each other where they are glued; the closure, how far the closed seal flap lies on glued paper; the room, what the envelope is larger than its card.',
];

/** Lines of the drawings in the book. */
const LAYERS: readonly Layer[] = ['cut', 'blank', 'waste', 'score', 'second-score', 'odd-score', 'mark'];

const LABEL = 20;

/** The maker's foreword, how to read the book, and the usual cautions. */
export function frontPart({ note, foreword }: Book, measure: TextMeasure): Part {
  const first = [...note.filter((text, index) => !isShort(text, index)), ...foreword];
  return {
    title: first.length > 0 ? 'Foreword' : 'How to read it',
    destination: 'foreword',
    *strips() {
      for (const text of first) yield* words(text, measure);
      if (first.length > 0) yield heading('How to read it', measure);
      for (const text of READING) yield* words(text, measure);
      yield key(measure);
      yield heading('Take care', measure);
      for (const term of ALL_CAUTIONS) yield caution(term, measure);
    },
  };
}

const words = (text: string, measure: TextMeasure): readonly Strip[] => textStrips('P', text, BODY, measure);

const heading = (text: string, measure: TextMeasure): Strip => ({
  ...wordStrip('H2', paragraph(text, WIDTH, HEADING, measure, 'bold'), measure),
  above: 7,
  keep: true,
});

const HEADING = 3.6;

function key(measure: TextMeasure): Strip {
  const drawing = LAYERS.map((layer) => line(layer, { x: 0, y: 0 }, { x: 1, y: 0 }));
  const alt = `What lines mean. ${lineKey(drawing)
    .map(({ words: meaning }) => meaning)
    .join('; ')}.`;
  return pictureStrip(lineKeyBlock([drawing], WIDTH, measure), alt, measure);
}

function caution({ label, text }: Term, measure: TextMeasure): Strip {
  const [name, said] = [
    paragraph(label, LABEL, BODY, measure, 'bold'),
    paragraph(text, WIDTH - LABEL, BODY, measure),
  ];
  return {
    height: beside({ x: 0, block: name }, { x: LABEL, block: said }).height,
    items: ({ x, y }) => [
      {
        role: 'P',
        runs: [...runsOf(name, { x, y }, measure), ...runsOf(said, { x: x + LABEL, y }, measure)],
      },
    ],
  };
}
