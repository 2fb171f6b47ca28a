/* The files for a print shop, read by a PDF checker: nothing to complain of, and its objects of the types they must have. */
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { print } from '../../src/emit/print-pdf/print-pdf.js';
import { emitted } from '../support/emitted.js';
import { EXTREMES } from '../support/extremes.js';
import { halfLetter } from '../support/jobs.js';
import { scratch } from '../support/scratch.js';
import { specJobs } from '../support/spec-jobs.js';

const qpdf = (cwd: string, ...given: readonly string[]) =>
  spawnSync('qpdf', given, { cwd, encoding: 'utf8', maxBuffer: 1e8 });

test('qpdf finds nothing wrong with any file', { timeout: 120_000 }, async () => {
  const cwd = scratch({});
  const lined = halfLetter({ title: 'Springs & <neaps> (\\ \u6f6e\u6c50)' }, { liner: 6 });
  for (const [name, of] of Object.entries({ ...specJobs(), ...EXTREMES, lined })) {
    writeFileSync(join(cwd, 'print.pdf'), await emitted(print, of));
    const { status, stdout, stderr } = qpdf(cwd, '--check', 'print.pdf');
    expect({ name, status, stderr }).toEqual({ name, status: 0, stderr: '' });
    expect(stdout).toContain('No syntax or stream encoding errors found');
  }
});

/** An object as qpdf prints it: names begin with `/`, texts with `u:`, references end with ` R`. */
type Printed = string | number | boolean | null | readonly Printed[] | { readonly [key: string]: Printed };

test('layers are declared as the standard has them', async () => {
  const cwd = scratch({});
  writeFileSync(join(cwd, 'print.pdf'), await emitted(print, halfLetter({}, { liner: 6 })));
  const { qpdf: parts } = JSON.parse(qpdf(cwd, '--json=2', 'print.pdf').stdout) as {
    readonly qpdf: readonly [unknown, Readonly<Record<string, { readonly value?: Printed }>>];
  };
  const objects = parts[1];
  const at = (reference: Printed | undefined): Printed =>
    objects[`obj:${reference as string}`]?.value ?? null;
  const all = Object.values(objects).map(
    ({ value }) => value as Readonly<Record<string, Printed>> | undefined,
  );
  const catalogue = all.find((value) => value?.['/Type'] === '/Catalog');
  const properties = catalogue?.['/OCProperties'] as Readonly<Record<string, Printed>>;
  const groups = properties['/OCGs'] as readonly string[];
  // ISO 32000-1, 8.11.4: all groups, and a default configuration with a name, an order and what is shown.
  expect(properties['/D']).toEqual({ '/Name': 'u:All layers', '/Order': groups, '/ON': groups });
  for (const group of groups) {
    // ISO 32000-1, 8.11.2: a name of the type, a text for readers; both keys of ISO 19593-1 are names.
    expect(at(group)).toEqual({
      '/Type': '/OCG',
      '/Name': expect.stringMatching(/^u:./),
      '/GTS_Metadata': expect.toSatisfy((keys: Readonly<Record<string, string>>) => {
        const { '/GTS_ProcStepsGroup': step = '', '/GTS_ProcStepsType': type } = keys;
        const typed = ['/Structural', '/Positions'].includes(step);
        return (
          /^\/(Structural|Positions|Dimensions|Legend)$/.test(step) &&
          Object.keys(keys).length === (typed ? 2 : 1) &&
          (!typed || /^\/[A-Z][A-Za-z]+$/.test(type ?? ''))
        );
      }),
    });
  }
  const pages = all.filter((value) => value?.['/Type'] === '/Page');
  expect(pages.length).toBe(2);
  for (const page of pages) {
    const resources = at(page?.['/Resources']) as Readonly<Record<string, Readonly<Record<string, string>>>>;
    const named = Object.values(resources['/Properties'] ?? {});
    expect(named.length).toBeGreaterThan(2);
    for (const group of named) expect(groups).toContain(group);
  }
});
