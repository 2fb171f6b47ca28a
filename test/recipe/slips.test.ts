import { expect, test } from 'vitest';
import { applyEdits } from '../../src/text/edit.js';
import { resolveText } from '../support/resolve-text.js';

/** Does every edit that the findings offer, once. */
const mended = (text: string): string =>
  applyEdits(
    text,
    resolveText(text).diagnostics.flatMap(({ fix }) => fix ?? []),
  );

test.each([
  ['envelope e { card: half-letter }', 'envelope e { card: half letter }'],
  ['envelope e { card: letter half }', 'envelope e { card: half letter }'],
  ['envelope e { card: us a2 }', 'envelope e { card: us-a2 }'],
  ['envelope e { card: "half letter" }', 'envelope e { card: half letter }'],
  ['envelope e { card: 7, 5 }', 'envelope e { card: 7 x 5 }'],
  ['envelope e { card: 7 x 5 inches }', 'envelope e { card: 7 x 5 in }'],
  ['paper p { weight: 118 g }', 'paper p { weight: 118 gsm }'],
  ['paper p { weight: 65 cover }', 'paper p { weight: 65 lb cover }'],
  ['paper p { weight: 118 grams }', 'paper p { weight: 118 gsm }'],
  ['paper p { Weight: 118 gsm }', 'paper p { weight: 118 gsm }'],
  ['paper p { title: Kraft, brown }', 'paper p { title: "Kraft, brown" }'],
])('%s is mended by its edit', (wrong, right) => {
  expect(mended(`units in\n${wrong}`)).toBe(`units in\n${right}`);
  expect(resolveText(`units in\n${right}`).diagnostics).toEqual([]);
});

test.each(['inches', 'inch', 'IN'])('`units %s` is mended', (word) => {
  expect(mended(`units ${word}\n`)).toBe('units in\n');
});

test('`units millimetres` is mended', () => {
  expect(mended('units millimetres\n')).toBe('units mm\n');
});

/** Names that an object of the language itself has. */
test.each(['constructor', 'to-string', 'valueof', 'has-own-property', 'prototype'])(
  'a block named %s behaves like any other; a property of that name is unknown',
  (name) => {
    const text = `units mm\nlet ${name} = 148\nenvelope e { card: ${name} x 105 }`;
    expect(resolveText(text).diagnostics).toEqual([]);
    expect(resolveText(text).envelopes[0]?.card.value).toEqual({ width: 148, height: 105 });
    const style = `units mm\nstyle ${name} { ease: 6 }\nenvelope e like ${name} { card: A6 }`;
    expect(resolveText(style).envelopes[0]?.ease.value.width).toBe(6);
    const property = resolveText(`units mm\nenvelope e {\n  card: A6\n  ${name}: 5\n  expect ${name} = 5\n}`);
    expect(property.diagnostics.map(({ problem }) => problem.name).sort()).toEqual([
      'unknown-name',
      'unknown-property',
    ]);
  },
);

test('a chain of 40,000 lets needs no deep stack', () => {
  const links = 40_000;
  const chain = Array.from({ length: links }, (_, at) => `let b${at + 20} = b${at + 21}`).join('\n');
  const text = `units mm\n${chain}\nlet b${links + 20} = 148\nenvelope e { card: b20 x 105 }`;
  expect(resolveText(text).envelopes[0]?.card.value.width).toBe(148);
});
