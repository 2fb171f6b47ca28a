import { fontMeasure } from '../emit/font-measure.js';
import { layoutSvgs } from '../emit/plan/layout-svg.js';
import { planCsv } from '../emit/plan/plan-csv.js';
import { planJson } from '../emit/plan/plan-json.js';
import { planPdf } from '../emit/plan/plan-pdf.js';
import type { EmitOptions } from '../emit/emitter.js';
import type { Host } from '../host/host.js';
import { shown } from '../host/reader.js';
import type { Plan } from '../plan/plan.js';
import { fileStem } from '../text/file-stem.js';
import { visible } from '../text/visible.js';
import type { Arguments } from './arguments.js';
import { complain, type ExitCode } from './command.js';
import { readOrder, saidWritten } from './write-envelopes.js';

/** Writes the files of each batch, all or none, and says so. */
export async function writePlans(plans: readonly Plan[], given: Arguments, host: Host): Promise<ExitCode> {
  const order = readOrder(given, host);
  if (typeof order === 'string') {
    complain(host, order);
    return 2;
  }
  const options = { ...order.options, fonts: host.fonts() };
  const names: string[] = [];
  for (const plan of plans) {
    const files = await filesOf(plan, options);
    const written = host.write(order.folder, files);
    if (written.kind === 'unwritable') {
      complain(host, `${visible(shown(written.path))} cannot be written: ${written.reason}`);
      return 2;
    }
    names.push(...files.map(({ name }) => name));
  }
  host.err.write(`${saidWritten(order.folder, names)}\n`);
  return 0;
}

async function filesOf(plan: Plan, options: EmitOptions) {
  const name = fileStem(plan.batch.name);
  const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
  return [
    { name: `${name}.plan.pdf`, bytes: await planPdf(plan, options) },
    { name: `${name}.plan.csv`, bytes: bytes(planCsv([plan])) },
    { name: `${name}.plan.json`, bytes: bytes(planJson([plan])) },
    ...layoutSvgs(plan, await fontMeasure(options)).map(({ name: layout, text }) => ({
      name: `${name}.${layout}.svg`,
      bytes: bytes(text),
    })),
  ];
}
