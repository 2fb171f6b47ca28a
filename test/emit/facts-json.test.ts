import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { expect, test } from 'vitest';
import { plica, TIGHT } from '../support/command-line.js';
import { specs } from '../support/specs.js';

const schema = JSON.parse(readFileSync('src/emit/json/facts.schema.json', 'utf8')) as object;

/** The schema, but with every field that it does not name refused. */
const closed = JSON.parse(JSON.stringify(schema), (_, value: unknown) =>
  typeof value === 'object' && value !== null && 'properties' in value
    ? { ...value, additionalProperties: false }
    : value,
) as object;

const facts = async (line: string, files: Readonly<Record<string, string>>) =>
  JSON.parse((await plica(`show ${line} --format json`, { files })).out) as {
    readonly recipes: readonly Record<string, unknown>[];
  };

const BOX =
  'units mm\n\npaper kraft {\n  sheet: 700 x 500\n  weight: 120 gsm\n  caliper: 160 um\n}\n\nenvelope box {\n  card: A6\n  depth: 6\n  bulk: 5\n  paper: kraft\n}\n';

test.each([
  ['the recipes that come with plica', 'specs', specs()],
  ['a box on paper', 'box.plica', { 'box.plica': BOX }],
  ['a lined box', 'box.plica', { 'box.plica': BOX.replace('bulk: 5', 'bulk: 4\n  liner: inset 3') }],
  ['an envelope with a finding', 'tight.plica', { 'tight.plica': TIGHT }],
])('%s keep to the schema, and every field is in it', async (_, line, files) => {
  const printed = await facts(line, files);
  expect(printed.recipes.length).toBeGreaterThan(0);
  for (const each of [schema, closed]) {
    const ajv = new Ajv({ allErrors: true, allowUnionTypes: true });
    ajv.validate(each, printed);
    expect(ajv.errors).toBeNull();
  }
});

test('the schema notices a field that is missing, of another kind, or below 0', async () => {
  const validate = new Ajv({ allowUnionTypes: true }).compile(schema);
  const { recipes } = await facts('box.plica', { 'box.plica': BOX });
  const [box] = recipes as [Record<string, unknown>];
  const { blank: _, ...without } = box;
  for (const bad of [without, { ...box, units: 'ell' }, { ...box, area: -1 }, { ...box, name: 3 }]) {
    expect(validate({ format: 'plica-facts', version: 1, recipes: [bad] })).toBe(false);
  }
  expect(validate({ format: 'plica-facts', version: 2, recipes: [box] })).toBe(false);
});

test('the figures are in mm, and a finding says where', async () => {
  const { recipes } = await facts('tight.plica', { 'tight.plica': TIGHT });
  expect(recipes[0]).toMatchObject({
    name: 'snug',
    title: 'snug',
    file: 'tight.plica',
    line: 3,
    construction: 'diagonal',
    units: 'mm',
    // ISO 216: A6 is 105 x 148 mm; opening on the long side, the hinge is 148 mm.
    card: { width: 148, height: 105 },
    depth: 0,
    mass: null,
    sheet: null,
    margins: { roomDepth: null },
    findings: [{ rule: 'tight', severity: 'warning', file: 'tight.plica', line: 5, column: 9 }],
  });
});

test('each class of post says whether it takes the piece, and why not, in sentences', async () => {
  const { recipes } = await facts('moon.plica', {
    'moon.plica': 'units mm\n\nenvelope moon { card: 115 x 115 }\n',
  });
  const { post } = recipes[0] as {
    readonly post: readonly {
      readonly class: string;
      readonly accepted: boolean | null;
      readonly reasons: readonly string[];
    }[];
  };
  const of = (name: string) => post.find((each) => each.class === name);
  expect(of('gb-letter')).toMatchObject({ accepted: null, reasons: ['its mass is not known'] });
  // Published: a Standardbrief is at least 1.4 times as long as high; a square is not (test/reference/postal.json).
  expect(of('de-standard')?.accepted).toBe(false);
  expect(of('de-standard')?.reasons).toContain(
    'its longer side over its shorter comes to 1, where at least 1.4 is taken',
  );
});
