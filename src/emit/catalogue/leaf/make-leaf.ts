import { paragraph, standing } from '../../../drawing/block.js';
import { dimensions, namedBlank } from '../../../drawing/dimensions.js';
import { stepRows, stepStrip } from '../../../drawing/step-strip.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import { sizes } from '../../../drawing/words.js';
import { cutSheet } from '../../cut-sheet/sheet.js';
import type { CutSheet, Step } from '../../cut-sheet/content.js';
import { typeset } from '../../cut-sheet/page/type.js';
import type { Job } from '../../emitter.js';
import { renderSvg } from '../../svg/render-svg.js';
import type { Leaf } from '../leaf.js';
import { fillPages } from '../fill-pages.js';
import { measurements } from './measurements.js';
import { measurementTable } from './measurement-table.js';
import { BODY, SMALL, TITLE, WIDTH } from '../sizes.js';
import { stepTitles } from './step-titles.js';
import { pictureStrip, type Strip, textStrips, wordStrip } from '../strip.js';

/** The box of the drawing, and the gap to the figures beside it, in mm. */
const DRAWING = { width: 56, height: 62 };
const GUTTER = 4;

/** The pictures of the fold on a leaf: smaller than on a cut sheet. */
const STAGES = { narrowest: 19, caption: SMALL };

/** Drawings for a screen, in mm. */
const SCREEN = { width: 150, height: 150 };

/** Sets a recipe's pages and pictures. Nothing in it tells where the recipe stands. */
export function makeLeaf(job: Job, measure: TextMeasure): Leaf {
  const { envelope, folding, facts } = job;
  const sheet = cutSheet(job);
  const about = { title: sheet.title, description: `${sheet.summary} ${sizes(job)}`, background: true };
  return {
    facts,
    sheet,
    source: envelope.statement.source.text.slice(envelope.statement.start, envelope.statement.end),
    pictures: {
      blank: renderSvg(dimensions(folding, envelope, SCREEN, measure), about, measure),
      fold: renderSvg(stepStrip(folding, envelope, SCREEN.width, measure), about, measure),
    },
    pages: [
      ...fillPages([
        ...head(sheet, measure),
        spread(job, measure),
        ...stepRows(folding, envelope, WIDTH, measure, STAGES).map(({ drawing, height }, index) =>
          pictureStrip(standing(drawing, height), foldWords(index), measure),
        ),
        { ...wordStrip('H3', paragraph('At the bench', WIDTH, BODY, measure, 'bold'), measure), keep: true },
        { ...stepTitles(stepsOf(sheet), measure), above: 1.6 },
        ...findingStrips(sheet, measure),
      ]),
    ],
  };
}

const foldWords = (row: number): string =>
  row === 0
    ? 'The fold, stage by stage, from left to right; its words stand below each picture.'
    : 'The fold, continued.';

function head({ title, name, summary, notes }: CutSheet, measure: TextMeasure): readonly Strip[] {
  return [
    ...textStrips('H2', title, TITLE, measure, { weight: 'bold' }),
    ...(name === title ? [] : textStrips('P', name, SMALL, measure, { ink: 'quiet' })),
    ...[summary, ...notes].flatMap((text) => textStrips('P', typeset(text), BODY, measure)),
  ];
}

/** The blank on the left, its measurements on the right. */
function spread(job: Job, measure: TextMeasure): Strip {
  const figure = namedBlank(job.folding, job.envelope, DRAWING, measure);
  const picture = pictureStrip(
    standing(figure.drawing, figure.height),
    `The open blank, seen from the inside. ${sizes(job)}`,
    measure,
  );
  const left = figure.width + GUTTER;
  const table = measurementTable(measurements(job), WIDTH - left, measure);
  return {
    height: Math.max(picture.height, table.height),
    items: (corner) => [...picture.items(corner), ...table.items({ x: corner.x + left, y: corner.y })],
  };
}

const stepsOf = ({ sections }: CutSheet): readonly Step[] =>
  sections.flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'steps' ? block.steps : [])));

/** What the checks say of it, last: it stands on the cut sheet too. */
function findingStrips({ sections }: CutSheet, measure: TextMeasure): readonly Strip[] {
  const terms = sections
    .filter(({ name }) => name === 'findings')
    .flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'terms' ? block.terms : [])));
  return terms.flatMap(({ label, text }) => textStrips('P', typeset(`${label}: ${text}`), SMALL, measure));
}
