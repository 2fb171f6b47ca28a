import { expect, test } from 'vitest';
import { findRecipes } from '../../src/host/find-recipes.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { overlay } from '../../src/host/overlay.js';
import { compiledAt, textAt } from '../support/read-at.js';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

test('a file has other bytes, by whatever path it is asked for; the others have their own', () => {
  const under = memoryHost({ files: { 'a.plica': 'old', 'b.plica': 'kept' } });
  const host = overlay(under, new Map([['./deep/../a.plica', bytes('new')]]));
  expect(['a.plica', '/studio/a.plica', 'b.plica'].map((path) => textAt(host, path))).toEqual([
    'new',
    'new',
    'kept',
  ]);
  expect(host.read('a.plica', 2)).toEqual({ kind: 'too-large', bytes: 3 });
  expect(findRecipes(host, '.').files).toEqual(['a.plica', 'b.plica']);
  expect(textAt(under, 'a.plica')).toBe('old');
});

test('a file that is not there comes to be, and its folders with it', () => {
  const host = overlay(memoryHost({ files: { 'b.plica': '' } }), new Map([['new/deep/a.plica', bytes('x')]]));
  expect(['new', 'new/deep', 'new/deep/a.plica', 'new/a.plica'].map(host.kind)).toEqual([
    'folder',
    'folder',
    'file',
    'missing',
  ]);
  expect(host.realPath('new/deep/a.plica')).toBe('/studio/new/deep/a.plica');
  expect(findRecipes(host, '.').files).toEqual(['b.plica', 'new/deep/a.plica']);
});

test('a recipe uses what is laid over', async () => {
  const under = memoryHost({
    files: {
      'a.plica': 'units mm\n\nuse "loose.plica"\n\nenvelope a like loose { card: A6 }\n',
      'loose.plica': 'units mm\n\nstyle loose { ease: 4 }\n',
    },
  });
  const host = overlay(under, new Map([['loose.plica', bytes('units mm\n\nstyle loose { ease: 6 }\n')]]));
  const ease = async (on: typeof host) =>
    (await compiledAt(on, 'a.plica')).recipes.map(({ envelope }) => envelope.ease.value.width);
  expect([await ease(under), await ease(host)]).toEqual([[4], [6]]);
});
