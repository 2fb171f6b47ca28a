import { stripVTControlCharacters } from 'node:util';
import { describe, expect, test } from 'vitest';
import { plica } from '../support/command-line.js';

const SPRING = `units in

paper kraft {
  sheet: 25 x 38
  weight: 118 gsm
  price: 1.20
  stock: 5
}

envelope half-letter {
  card: 8 1/2 x 5 1/2
  paper: kraft
}

envelope tide-card {
  card: us-a1
  paper: kraft
}

batch spring {
  title: "Spring tides"
  spoilage: 5%
  make: half-letter 40
}
`;
const files = { 'a.plica': SPRING };

describe('a plan in words', () => {
  test('forty and two for spoilage, six from a sheet: seven sheets, and the settings that cut them', async () => {
    const { code, out, err } = await plica('plan a.plica', { files });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    // 42 squares of 11 1/4 in, floor(25 / 11 1/4) · floor(38 / 11 1/4) = 2 · 3 from each sheet.
    expect(out).toContain('40 envelopes, 2 more in case some go wrong (5 %), from 7 sheets of kraft.');
    expect(out).toMatch(/no way of cutting takes fewer than 7/);
    expect(out).toMatch(/In stock +5: 2 too few/);
    // 7 · 1.20
    expect(out).toMatch(/Cost +8\.40/);
    expect(out).toContain('1. Set 11 1/4 in (285.8 mm)');
    // 38 - 3 · 11 1/4 = 4 1/4 and 25 - 2 · 11 1/4 = 2 1/2
    expect(out).toMatch(/Keep +1 of 38 × 2 1\/2 in .*; 2 of 11 1\/4 × 4 1\/4 in/s);
    expect(out).toContain('blade');
  });

  test('in colour the words are the same', async () => {
    const { out: plain } = await plica('plan a.plica', { files });
    const { out } = await plica('plan a.plica --color always', { files });
    expect(out).toContain('\u001b[');
    expect(stripVTControlCharacters(out)).toBe(plain);
  });

  test('an offcut names what it would still serve', async () => {
    const broad = SPRING.replace('25 x 38', '30 x 38');
    const { out } = await plica('plan a.plica', { files: { 'a.plica': broad } });
    // 30 - 2 · 11 1/4 = 7 1/2 in are left beside, and the small card's blank is 7 1/2 in or less.
    expect(out).toMatch(/1 of 38 × 7 1\/2 in .* enough for tide-card/s);
  });
});

test('`--format json` writes the plan with lengths in mm', async () => {
  const { out } = await plica('plan a.plica --format json', { files });
  const { format, version, batches } = JSON.parse(out);
  expect({ format, version }).toEqual({ format: 'plica-plan', version: 1 });
  const [{ papers, cost, mass }] = batches;
  expect(papers[0]).toMatchObject({
    name: 'kraft',
    sheets: 7,
    atLeast: { sheets: 7 },
    plainRows: 7,
    short: 2,
  });
  expect(papers[0].layouts[0].steps[0]).toMatchObject({ at: 285.75, cuts: 2, divides: 'width' });
  expect(cost).toBeCloseTo(8.4, 9);
  expect(mass).toBeGreaterThan(0);
});

test('as CSV, a line for each thing that a cut leaves', async () => {
  const { out } = await plica('plan a.plica --format csv', { files });
  const lines = out.replace('\ufeff', '').trimEnd().split('\r\n');
  expect(lines[1]).toBe('spring,kraft,1,7,1,635,965.2,1,11 1/4 in,285.75,2,step 2,285.75,965.2,2');
  expect(lines).toHaveLength(5);
});

test('`--out` writes a sheet, the cuts as a table and as JSON, and a picture of each layout', async () => {
  const { code, err, files: written } = await plica('plan a.plica --out out', { files });
  expect(code).toBe(0);
  expect(err).toContain('wrote out/spring.plan.pdf');
  expect([...written.keys()].filter((name) => name.includes('spring')).sort()).toEqual([
    '/studio/out/spring.kraft-1.svg',
    '/studio/out/spring.plan.csv',
    '/studio/out/spring.plan.json',
    '/studio/out/spring.plan.pdf',
  ]);
});

describe('what cannot be planned', () => {
  test('there is no batch', async () => {
    const none = { 'a.plica': 'units in\n\nenvelope half-letter { card: 8 1/2 x 5 1/2 }\n' };
    expect(await plica('plan a.plica', { files: none })).toMatchObject({
      code: 2,
      err: 'plica: there is no batch in what was given; one is written `batch NAME { make: half-letter 40 }`\n',
    });
  });

  test('a batch of another name', async () => {
    expect(await plica('plan a.plica --only sprig', { files })).toMatchObject({
      code: 2,
      err: 'plica: there is no batch `sprig` in what was given; did you mean `spring`?\n',
    });
  });

  test('an envelope that will not work is not cut', async () => {
    const gaping = SPRING.replace(
      'paper: kraft\n}\n\nenvelope tide',
      'paper: kraft\n  blank: 10\n}\n\nenvelope tide',
    );
    const { code, err, out } = await plica('plan a.plica', { files: { 'a.plica': gaping } });
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain('error[creases-cross]');
    expect(err).toContain('spring is not planned');
  });
});

test('the same batch comes to the same bytes', async () => {
  const once = await plica('plan a.plica --out out', { files });
  const again = await plica('plan a.plica --out out', { files });
  expect(again.files).toEqual(once.files);
});
