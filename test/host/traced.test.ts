import { expect, test } from 'vitest';
import type { Host } from '../../src/host/host.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { traced } from '../../src/host/traced.js';

const BYTES = new TextEncoder().encode('units mm\n');

const machine = (...paths: readonly string[]): Host =>
  memoryHost({ files: Object.fromEntries(paths.map((path) => [path, BYTES])) });

/** Whether another machine answers all that these ask. */
const isSame = (ask: (host: Host) => void, here: Host, there: Host): boolean => {
  const trace = traced(here);
  ask(trace.host);
  return trace.isSameOn(there);
};

test('what was not asked for makes no difference', () => {
  const ask = (host: Host): void => void host.read('a.plica', 100);
  expect(isSame(ask, machine('a.plica'), machine('a.plica', 'b.plica'))).toBe(true);
});

test.each([
  ['a file', ({ kind }) => kind('b.plica')],
  ['a real path', ({ realPath }) => realPath('b.plica')],
  ['a content', ({ read }) => read('b.plica', 100)],
] satisfies [string, (host: Host) => unknown][])('%s that is only on one of them does', (_, ask) => {
  const [one, other] = [machine('a.plica'), machine('a.plica', 'b.plica')];
  expect(isSame(ask, one, other)).toBe(false);
  expect(isSame(ask, other, one)).toBe(false);
  expect(isSame(ask, one, machine('a.plica'))).toBe(true);
  expect(isSame(ask, other, machine('a.plica', 'b.plica'))).toBe(true);
});

test('contents are the same where they are one', () => {
  const changed = memoryHost({ files: { 'a.plica': 'units in\n' } });
  expect(isSame(({ read }) => read('a.plica', 100), machine('a.plica'), changed)).toBe(false);
  expect(isSame(({ read }) => read('a.plica', 100), machine('a.plica'), machine('a.plica'))).toBe(true);
});
