import type { CompiledBatch } from '../../plan/compiled-batch.js';
import type { Plan } from '../../plan/plan.js';
import type { Host } from '../../host/host.js';
import { nearest } from '../../text/nearest.js';
import { visible } from '../../text/visible.js';
import type { Arguments } from '../arguments.js';
import { type Command, complain, type ExitCode, worst } from '../command.js';
import { codeOf, type Compiled, compileInputs, STRICT } from '../compile-inputs.js';
import { paletteFor } from '../palette.js';
import { sayFindings } from '../say-findings.js';
import { textWidth } from '../text-width.js';
import { didYouMean } from '../words.js';
import { OUTPUT_OPTIONS } from '../write-envelopes.js';

export const plan: Command = {
  name: 'plan',
  operands: '[PATH…]',
  takes: [0, Infinity],
  summary: 'how many sheets a batch takes, and every cut in its order',
  details: `Works out the batches in the files given (or in the working folder): the sheets to take of
each paper, how they are cut up (every cut runs from edge to edge, as a guillotine or a
knife along a ruler makes it), the settings in their order, what is left and what it would
still serve, tape, cost and mass. With \`--out DIR\` it writes NAME.plan.pdf, NAME.plan.csv,
NAME.plan.json and a picture of each layout, NAME.PAPER-1.svg.`,
  example: 'plica plan specs --only spring-tides --out out',
  options: [
    { name: 'only', value: 'NAME', meaning: 'this batch alone' },
    {
      name: 'format',
      value: 'FORMAT',
      choices: ['text', 'json', 'csv'],
      meaning: 'for people, for programs, or the cuts as a table',
    },
    ...OUTPUT_OPTIONS.filter(({ name }) => name !== 'emit'),
    STRICT,
  ],
  run: async (given, host) => {
    const compiled = await compileInputs(given, host);
    const findings = compiled.diagnostics;
    await sayFindings(findings, given, host);
    const code = worst(compiled.code, codeOf(findings, given));
    const only = given.value('only');
    const batches = compiled.batches.filter(({ batch }) => only === null || batch.name === only);
    if (batches.length === 0) return worst(code, none(only, compiled, code, host));
    const sound = batches.filter(isSound);
    for (const { batch } of batches.filter((each) => !isSound(each)))
      complain(
        host,
        `${batch.name} is not planned: an error of an envelope, or of the batch, keeps it from being cut`,
      );
    if (sound.length === 0) return worst(code, 1);
    const { planBatch } = await import('../../plan/plan.js');
    const others = compiled.recipes
      .filter(({ diagnostics }) => diagnostics.every(({ severity }) => severity !== 'error'))
      .map(({ envelope, facts }) => ({ name: envelope.name, blank: facts.blank }));
    const plans = sound.map((batch) => planBatch(batch, others));
    const written =
      given.value('out') === null ? await print(plans, given, host) : await write(plans, given, host);
    return worst(code, written, sound.length < batches.length ? 1 : 0);
  },
};

const isSound = ({ orders, diagnostics }: CompiledBatch): boolean =>
  [...diagnostics, ...orders.flatMap((order) => order.diagnostics)].every(
    ({ severity }) => severity !== 'error',
  );

/** Says that there is no such batch; not where what was found may be the reason. */
function none(only: string | null, { batches }: Compiled, code: ExitCode, host: Host): ExitCode {
  if (code > 0) return code;
  const near =
    only === null
      ? []
      : nearest(
          only,
          batches.map(({ batch }) => batch.name),
        );
  complain(
    host,
    only === null
      ? 'there is no batch in what was given; one is written `batch NAME { make: half-letter 40 }`'
      : `there is no batch \`${visible(only)}\` in what was given${didYouMean(near)}`,
  );
  return 2;
}

async function print(plans: readonly Plan[], given: Arguments, host: Host): Promise<ExitCode> {
  const format = given.value('format') ?? 'text';
  host.out.write(await FORMATS[format as keyof typeof FORMATS](plans, given, host));
  return 0;
}

const FORMATS = {
  text: async (plans: readonly Plan[], given: Arguments, host: Host): Promise<string> => {
    const { planSheet } = await import('../../emit/plan/plan-sheet.js');
    const { renderSheetText } = await import('../../emit/cut-sheet/render-text.js');
    const palette = (await paletteFor(host.out, host, given)) ?? undefined;
    const width = textWidth(host.out);
    return plans.map((each) => renderSheetText(planSheet(each), palette, width)).join('\n\n');
  },
  json: async (plans: readonly Plan[]): Promise<string> =>
    (await import('../../emit/plan/plan-json.js')).planJson(plans),
  csv: async (plans: readonly Plan[]): Promise<string> =>
    (await import('../../emit/plan/plan-csv.js')).planCsv(plans),
};

async function write(plans: readonly Plan[], given: Arguments, host: Host): Promise<ExitCode> {
  const { writePlans } = await import('../write-plans.js');
  return writePlans(plans, given, host);
}
