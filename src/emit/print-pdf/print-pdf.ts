/*
 * emit/print-pdf/: the blank for a print shop, which cuts and creases it on machines.
 * In: one compiled recipe. Out: a PDF at true size, a layer and a spot colour for each step of the work.
 * Refuses to know: how PDF is written (emit/pdf), and any decision about the envelope.
 */
import { type Box, segmentsOf } from '../../drawing/box.js';
import type { Drawing } from '../../drawing/drawing.js';
import type { Ink } from '../../drawing/inks.js';
import { liningPlate } from '../../drawing/lining-plate.js';
import { LINE_KINDS } from '../../drawing/line-kinds.js';
import { plate } from '../../drawing/plate.js';
import { bounds } from '../../plane/polygon.js';
import type { EmitOptions, Emitter, Job } from '../emitter.js';
import { KINDS } from '../kinds.js';
import { openDocument } from '../pdf/document.js';
import { declareLayers } from '../pdf/layers.js';
import { paint } from '../pdf/paint.js';
import { declareSpotColours } from '../pdf/spot-colours.js';
import { isCutting, type Step, STEP_OF, STEPS } from './steps.js';

export const print: Emitter = {
  ...KINDS.print,
  mediaType: 'application/pdf',
  emit: async (job, options) => [{ extension: '.print.pdf', bytes: await write(job, options) }],
};

async function write({ folding, envelope }: Job, options: EmitOptions): Promise<Uint8Array> {
  const document = await openDocument(options, { title: `${envelope.title.value}: for the print shop` });
  const figures = [plate, liningPlate]
    .map((draw) => draw(folding, envelope, document.measure))
    .filter((figure) => figure !== null);
  const steps = stepsOf(figures.flatMap(({ drawing }) => drawing));
  const withinLayer = declareLayers(
    document,
    steps.map(({ step }) => step),
  );
  const inSpotColour = declareSpotColours(
    document,
    steps.map(({ step, ink }) => ({ name: step.name, ink })),
  );
  for (const { drawing, width, height } of figures) {
    const placed = stepsOf(drawing);
    document.addPage(
      { width, height },
      boxAbout(placed.flatMap(({ step, marks }) => (isCutting(step) ? marks : []))),
    );
    for (const { step, marks } of placed)
      withinLayer(step, () => inSpotColour(step.name, () => paint(document, marks)));
  }
  return document.finish();
}

interface Work {
  readonly step: Step;
  readonly marks: Drawing;
  readonly ink: Ink;
}

/** The steps that a drawing asks for, each with its marks. */
const stepsOf = (drawing: Drawing): readonly Work[] =>
  STEPS.flatMap((step) => {
    const marks = drawing.filter(({ layer }) => STEP_OF[layer] === step);
    const [first] = marks;
    return first ? [{ step, marks, ink: LINE_KINDS[first.layer].ink }] : [];
  });

/** The least box that holds the lines of a drawing. */
function boxAbout(drawing: Drawing): Box {
  const lines = drawing.flatMap(({ shape }) => segmentsOf(shape));
  const { min, max } = bounds(lines.flatMap(({ from, to }) => [from, to]));
  return { ...min, width: max.x - min.x, height: max.y - min.y };
}
