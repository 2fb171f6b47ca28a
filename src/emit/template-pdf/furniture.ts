import { type Drawing, lettering, type Mark } from '../../drawing/drawing.js';
import { lineKeyBlock } from '../../drawing/line-key-block.js';
import { SCALE_CHECK_SIZE, scaleCheck } from '../../drawing/scale-check.js';
import { CAP_HEIGHT, type TextMeasure } from '../../drawing/text-measure.js';
import { FACE_WORDS, sizes } from '../../drawing/words.js';
import type { Job } from '../emitter.js';
import { beside, type Block, hairline, paragraph, stack, standing } from '../../drawing/block.js';
import { CARE_WORDS, CHECK_WORDS, steps } from './words.js';

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
export const key = (drawings: readonly Drawing[], width: number, measure: TextMeasure): Block =>
  captioned('Lines', lineKeyBlock(drawings, width, measure), width, measure);

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
