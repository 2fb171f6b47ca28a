import type { Diagnostic, Label } from '../diagnostics/diagnostic.js';
import { type Problem, report } from '../diagnostics/problem.js';
import { exactLength } from '../measure/ruler.js';
import type { Batch } from '../recipe/batch.js';
import type { Envelope, Size } from '../recipe/recipe.js';
import type { CompiledOrder } from './compiled-batch.js';
import type { Span } from '../text/span.js';
import { timesIn, turnedIf } from './layout/layout.js';
import { type Part, partsOf } from './parts.js';

export const problem: Problem = {
  name: 'batch-paper',
  severity: 'error',
  meaning:
    'A batch makes an envelope that cannot be cut as asked: no paper, no size of its sheet, or an error on that paper.',
  matters: 'Sheets cannot be counted, nor cut.',
  remedy:
    'Name a paper in the envelope or after `on`, give that paper a `sheet`, and take one that is large enough.',
  example: {
    wrong: `units in

paper kraft { weight: 118 gsm }

envelope half-letter {
  card: 8 1/2 x 5 1/2
  paper: kraft
}

batch spring { make: half-letter 40 }
`,
    mended: `units in

paper kraft {
  sheet: 25 x 38
  weight: 118 gsm
}

envelope half-letter {
  card: 8 1/2 x 5 1/2
  paper: kraft
}

batch spring { make: half-letter 40 }
`,
  },
};

/** What keeps the envelopes of a batch from being cut. An error of the envelope itself, on its own paper, is told there. */
export const batchFindings = (
  batch: Batch,
  orders: readonly CompiledOrder[],
  isTold: (finding: Diagnostic) => boolean,
): readonly Diagnostic[] =>
  orders.flatMap((order) => {
    const error = order.diagnostics.find(({ severity }) => severity === 'error');
    if (error) return isTold(error) ? [] : [onThatPaper(batch, order, error)];
    const [part] = partsOf(order).filter((each) => !canBeCut(each));
    return part ? [uncut(batch, order, part)] : [];
  });

const onThatPaper = (batch: Batch, { envelope, span }: CompiledOrder, error: Diagnostic): Diagnostic =>
  report(problem, {
    message: `${envelope.name} cannot be made from ${envelope.paper.value?.name ?? 'this paper'} for ${batch.name}: ${error.message}`,
    ...placeOf(batch, span),
    ...(error.why === null ? {} : { why: error.why }),
    help: 'name another paper after `on`, or mend the envelope',
  });

const canBeCut = ({ size, paper }: Part): boolean => {
  const sheet = paper?.sheet?.value;
  return sheet !== undefined && holds(sheet, size);
};

const holds = (sheet: Size, size: Size): boolean =>
  [false, true]
    .map((turned) => turnedIf(size, turned))
    .some(({ width, height }) => timesIn(sheet.width, width) > 0 && timesIn(sheet.height, height) > 0);

function uncut(batch: Batch, { envelope, span }: CompiledOrder, { what, size, paper }: Part): Diagnostic {
  const subject = `the ${what} of ${envelope.name}`;
  const place = placeOf(batch, span);
  if (paper === null)
    return report(problem, {
      message: `${subject} names no paper, so ${batch.name} cannot tell from what it is cut`,
      ...place,
      help: `write \`${envelope.name} COUNT on PAPER\`, or state \`paper: PAPER\` in the envelope or a style`,
    });
  const related = [...place.related, { span: paper.span, text: 'the paper' }];
  if (paper.sheet === null)
    return report(problem, {
      message: `${subject} is cut from ${paper.name}, and nobody says how large a sheet of that is`,
      ...place,
      related,
      help: `add a line such as \`sheet: 25 x 38 in\` to \`paper ${paper.name}\``,
    });
  return report(problem, {
    message: `${subject} is larger than a sheet of ${paper.name}`,
    ...place,
    related,
    why: `${sizeWords(size, envelope)}, sheet ${sizeWords(paper.sheet.value, envelope)}`,
    help: 'name another paper after `on`',
  });
}

/** The item that asks for it; of a batch that is `like` another, its name, with the item beside. */
const placeOf = (
  { span: name, ordersFrom }: Batch,
  item: Span,
): { readonly at: Span; readonly related: readonly Label[] } =>
  ordersFrom === null
    ? { at: item, related: [] }
    : { at: name, related: [{ span: item, text: `\`make\` comes from ${ordersFrom}` }] };

const sizeWords = ({ width, height }: Size, { units }: Envelope): string =>
  `${exactLength(width, units)} x ${exactLength(height, units)}`;
