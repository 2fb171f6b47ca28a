/* The strip of pictures as a file, read back by a parser that had no part in writing it. */
import { expect, test } from 'vitest';
import { stages } from '../../src/drawing/stages/stages.js';
import { steps } from '../../src/emit/steps.js';
import { emitted } from '../support/emitted.js';
import { EXTREMES } from '../support/extremes.js';
import { halfLetter, job } from '../support/jobs.js';
import { emitOptions } from '../support/pdf-pages.js';
import { readSvg } from '../support/svg-file.js';

const fileOf = async (of = halfLetter()) => readSvg(new TextDecoder().decode(await emitted(steps, of)));

test('it is asked for by name, and is named after its envelope', async () => {
  expect([steps.name, steps.byDefault]).toEqual(['steps', false]);
  const files = await steps.emit(halfLetter(), emitOptions());
  expect(files.map(({ extension }) => extension)).toEqual(['.steps.svg']);
});

test.each(Object.entries({ ...EXTREMES, 'hostile title': halfLetter({ title: '<b>&"]]>' }) }))(
  '%s: who cannot see the pictures is told their stages',
  async (_, of) => {
    const file = await fileOf(of);
    expect(file.words('title')).toBe(`${of.envelope.title.value}: the fold, step by step`);
    const description = file.words('desc');
    stages(of.folding, of.envelope).forEach(({ caption }, index) =>
      expect(description).toContain(`${index + 1}. ${caption}`),
    );
  },
);

test('one unit is one mm, on white', async () => {
  const { root, elements } = await fileOf();
  expect(root.getAttribute('width')).toBe('180mm');
  expect(root.getAttribute('viewBox')).toMatch(/^0 0 180 /);
  expect(elements.find(({ tagName }) => tagName === 'rect')?.getAttribute('width')).toBe('180');
});

test('dashes are hidden edges, in groups of their own', async () => {
  const { groups } = await fileOf();
  expect([...groups.keys()]).toEqual(expect.arrayContaining(['cut', 'score', 'mark', 'glue', 'inside']));
  expect([...groups.keys()].some((id) => id.startsWith('hidden'))).toBe(true);
  expect([...groups.keys()].some((id) => id.startsWith('edge'))).toBe(true);
});

test('same input, same bytes', async () => {
  const box = () => job({ depth: 6, corners: { bottom: 'notched', seal: 'notched' } });
  expect(await emitted(steps, box())).toEqual(await emitted(steps, box()));
});
