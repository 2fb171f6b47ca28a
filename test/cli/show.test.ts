import { stripVTControlCharacters } from 'node:util';
import { expect, test } from 'vitest';
import { GAPING, plica, SOUND, TIGHT } from '../support/command-line.js';

const TWO = `${SOUND}\nenvelope keepsake { card: quarter letter }\n`;

test('the sheet on standard output, in the recipe’s own units with the others beside', async () => {
  const { code, out, err } = await plica('show a.plica', { files: { 'a.plica': SOUND } });
  expect({ code, err }).toEqual({ code: 0, err: '' });
  // 11 1/4 in for a card of 8 1/2 x 5 1/2 in: common practice, no source.
  expect(out).toContain('11 1/4 in');
  expect(out).toContain('285.8 mm');
});

test('in colour the words are the same', async () => {
  const files = { 'a.plica': SOUND };
  const { out: plain } = await plica('show a.plica', { files });
  const { out } = await plica('show a.plica --color always', { files });
  expect(out).toContain('\u001b[');
  expect(stripVTControlCharacters(out)).toBe(plain);
});

test('all envelopes of what is given, or the one that is named', async () => {
  const files = { 'a.plica': TWO };
  const all = await plica('show a.plica', { files });
  expect(all.out).toContain('half-letter');
  expect(all.out).toContain('keepsake');
  const one = await plica('show a.plica --only keepsake', { files });
  expect(one.out).not.toContain('half-letter');
  expect(one.out).toContain('keepsake');
});

test('a name that is not there is met with the nearest', async () => {
  expect(await plica('show a.plica --only half-leter', { files: { 'a.plica': TWO } })).toMatchObject({
    code: 2,
    out: '',
    err: 'plica: there is no envelope `half-leter` in what was given; did you mean `half-letter`?\n',
  });
});

test('a name that is not there, where another envelope is broken: the near one all the same', async () => {
  const files = { 'a.plica': `${TWO}\nenvelope broken { card: A66 }\n` };
  const { code, out, err } = await plica('show a.plica --only half-leter', { files });
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toContain('error[unknown-name]');
  expect(err).toContain(
    'plica: `half-leter` is not among the envelopes that could be read; did you mean `half-letter`?\n',
  );
});

test('findings about an envelope stand on its sheet; an error ends with 1', async () => {
  const gaping = await plica('show a.plica', { files: { 'a.plica': GAPING } });
  expect(gaping.code).toBe(1);
  expect(gaping.out).toContain('[creases-cross]');
  const tight = await plica('show a.plica', { files: { 'a.plica': TIGHT } });
  expect(tight.code).toBe(0);
  expect(tight.out).toContain('[tight]');
});

test('findings about the rest of the file go to standard error', async () => {
  const text = `${SOUND}\nenvelope broken { card: A66 }\n`;
  const { code, out, err } = await plica('show a.plica', { files: { 'a.plica': text } });
  expect(code).toBe(1);
  expect(out).toContain('half-letter');
  expect(err).toContain('error[unknown-name]');
  const named = await plica('show a.plica --only broken', { files: { 'a.plica': text } });
  expect(named).toMatchObject({ code: 1, out: '' });
  expect(named.err).toContain('`broken` is not among the envelopes that could be read');
});

test('a wide terminal gets lines that can still be read', async () => {
  const terminal = { columns: 300 };
  const { out } = await plica('show a.plica --color never', { files: { 'a.plica': SOUND }, terminal });
  expect(Math.max(...out.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(96);
});
