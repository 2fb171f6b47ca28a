import { type Drawing, lettering, line, type Mark, outline } from '../../drawing/drawing.js';
import { hatch } from '../../drawing/hatch.js';
import { lineKey } from '../../drawing/line-key.js';
import { SCALE_CHECK_SIZE, scaleCheck } from '../../drawing/scale-check.js';
import { CAP_HEIGHT, type TextMeasure } from '../../drawing/text-measure.js';
import type { Job } from '../emitter.js';
import { beside, type Block, hairline, indented, paragraph, stack, standing } from './block.js';
import { CARE_WORDS, CHECK_WORDS, FACE_WORDS, sizes, steps } from './words.js';

/** Ems, in mm: 20, 11, 9 and 8 points. */
const TITLE = 7.06;
const NAME = 3.88;
const BODY = 3.18;
const NOTE = 2.82;

const GAP = 3;
export const SECTION_GAP = 7;

/** The recipe's title and name, what the template shows, and its sizes. */
export const heading = (job: Job, width: number, measure: TextMeasure): Block =>
  stack(
    GAP,
    paragraph(job.envelope.title.value, width, TITLE, measure, 'bold'),
    paragraph(`Template of ${job.envelope.name} at true size. ${FACE_WORDS}`, width, NAME, measure),
    paragraph(sizes(job), width, BODY, measure),
    hairline(width),
  );

/** At the foot of every page: its name, the recipe's, and bars to measure. */
export function footer(
  job: Job,
  page: { readonly name: string; readonly place: string },
  width: number,
  measure: TextMeasure,
): Block {
  const baseline = -NAME * CAP_HEIGHT;
  const after = measure(page.name, NAME, 'bold') + 2.5;
  const room = width - after - measure(page.place, BODY, 'regular') - SECTION_GAP;
  const recipe = [job.envelope.title.value, job.envelope.name].find(
    (text) => measure(text, BODY, 'regular') <= room,
  );
  const row: readonly Mark[] = [
    lettering(page.name, { x: 0, y: baseline }, NAME, { weight: 'bold' }),
    lettering(page.place, { x: after, y: baseline }, BODY),
    ...(recipe === undefined ? [] : [lettering(recipe, { x: width, y: baseline }, BODY, { anchor: 'end' })]),
  ];
  const check = standing(scaleCheck(), SCALE_CHECK_SIZE.height);
  const beyond = SCALE_CHECK_SIZE.width + SECTION_GAP;
  const words = (wide: number): Block =>
    stack(
      GAP / 2,
      paragraph(CHECK_WORDS.print, wide, NOTE, measure, 'bold'),
      paragraph(CHECK_WORDS.measure, wide, NOTE, measure),
    );
  const rest =
    width - beyond >= MIN_COLUMN
      ? beside({ x: 0, block: check }, { x: beyond, block: words(Math.min(width - beyond, 80)) })
      : stack(GAP, check, words(width));
  return stack(GAP, hairline(width), { drawing: row, height: NAME * CAP_HEIGHT + 0.8 }, rest);
}

/** A column of text is no narrower than this. */
const MIN_COLUMN = 40;

/** What each kind of line means. */
export function key(drawings: readonly Drawing[], width: number, measure: TextMeasure): Block {
  const sample = 22;
  const rows = lineKey(...drawings).map(({ layer, words }): Block => {
    const text = indented(paragraph(words, width - sample - GAP, BODY, measure), sample + GAP);
    const y = (-BODY * CAP_HEIGHT) / 2;
    const [from, to] = [
      { x: 0, y },
      { x: sample, y },
    ];
    return {
      drawing: [...text.drawing, ...(SAMPLES[layer] ?? straight)(layer, from.x, to.x, y)],
      height: text.height,
    };
  });
  return stack(GAP, caption('Lines', width, measure), ...rows);
}

type Sample = (layer: Mark['layer'], from: number, to: number, y: number) => readonly Mark[];

const straight: Sample = (layer, from, to, y) => [line(layer, { x: from, y }, { x: to, y })];

/** Layers whose marks are not long lines. */
const SAMPLES: Partial<Readonly<Record<Mark['layer'], Sample>>> = {
  waste: (layer, from, to, y) => {
    const corners = [
      { x: from, y: y - 1.4 },
      { x: to, y: y - 1.4 },
      { x: to, y: y + 1.4 },
      { x: from, y: y + 1.4 },
    ];
    return hatch(corners, 1.5).map((stroke) => line(layer, stroke.from, stroke.to));
  },
  mark: (layer, from, to, y) => [
    line('cut', { x: from, y: y - 1 }, { x: to, y: y - 1 }),
    line(layer, { x: (from + to) / 2, y: y - 1 }, { x: (from + to) / 2, y: y + 2 }),
  ],
  glue: (layer, from, to, y) => [
    outline(layer, [
      { x: from, y: y - 1.2 },
      { x: to, y: y - 1.2 },
      { x: to, y: y + 1.2 },
      { x: from, y: y + 1.2 },
    ]),
  ],
};

const caption = (text: string, width: number, measure: TextMeasure): Block =>
  paragraph(text, width, NAME, measure, 'bold');

/** What to do with the pages, and the care that blades ask for. */
export function notes(tiled: boolean, width: number, measure: TextMeasure): Block {
  const number = 5;
  const numbered = steps(tiled).map((text, index) =>
    beside(
      { x: 0, block: paragraph(`${index + 1}`, number, BODY, measure, 'bold') },
      { x: number, block: paragraph(text, width - number, BODY, measure) },
    ),
  );
  return stack(
    SECTION_GAP,
    stack(GAP, caption('At the bench', width, measure), ...numbered),
    stack(GAP, caption('Take care', width, measure), paragraph(CARE_WORDS, width, BODY, measure)),
  );
}

/** A heading over a block. */
export const captioned = (text: string, block: Block, width: number, measure: TextMeasure): Block =>
  stack(GAP, caption(text, width, measure), block);

/** A paragraph in the size of the notes. */
export const body = (text: string, width: number, measure: TextMeasure): Block =>
  paragraph(text, width, BODY, measure);
