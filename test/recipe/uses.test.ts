import { describe, expect, test } from 'vitest';
import { resolve } from '../../src/recipe/resolve.js';
import { source } from '../../src/text/source.js';
import { readerOf } from '../support/compile-text.js';
import { findingsOf, resolveText } from '../support/resolve-text.js';

/** Resolves several files given to one command. */
const resolveFiles = (given: readonly string[], files: Readonly<Record<string, string>>) =>
  resolve(
    given.map((id) => ({ id, source: source(id, files[id] ?? '') })),
    readerOf(files),
  );

describe('use', () => {
  test('brings the names of a file and of those it uses; a file reached twice is one file', () => {
    const files = {
      'a/papers.plica': 'units mm\npaper chart { weight: 120 gsm }',
      'a/one.plica': 'units mm\nuse "papers.plica"\nstyle one { paper: chart }',
      'a/two.plica': 'units mm\nuse "../a/papers.plica"\nstyle two like one { }\nuse "one.plica"',
    };
    const resolved = resolveText(
      'units mm\nuse "a/two.plica"\nuse "a/one.plica"\nenvelope e like two { card: A6 }\nenvelope f { card: A6\npaper: chart }',
      { files },
    );
    expect(findingsOf(resolved)).toEqual([]);
    expect(resolved.envelopes.map(({ paper }) => paper.value?.name)).toEqual(['chart', 'chart']);
  });

  test('does not bring the envelopes of used files to the bench', () => {
    const files = { 'b.plica': 'units mm\nenvelope b { card: A6 }\nenvelope broken { card: A77 }' };
    const resolved = resolveText('units mm\nuse "b.plica"\nenvelope e like b { }', { files });
    expect(resolved.envelopes.map(({ name }) => name)).toEqual(['e']);
    expect(findingsOf(resolved)).toEqual(['unknown-name: A77']);
  });

  test('envelopes come in the order of the files given, whichever uses which', () => {
    const files = {
      'a.plica': 'units mm\nuse "c.plica"\nenvelope a { card: A6 }',
      'b.plica': 'units mm\nenvelope b { card: A6 }',
      'c.plica': 'units mm\nenvelope c { card: A6 }',
    };
    expect(resolveFiles(['a.plica', 'b.plica', 'c.plica'], files).envelopes.map(({ name }) => name)).toEqual([
      'a',
      'b',
      'c',
    ]);
    expect(resolveFiles(['c.plica', 'a.plica'], files).envelopes.map(({ name }) => name)).toEqual(['c', 'a']);
  });

  test('a file given twice is one file', () => {
    const files = { 'a.plica': 'units mm\nenvelope a { card: A6 }' };
    const resolved = resolveFiles(['a.plica', 'a.plica'], files);
    expect(resolved.envelopes).toHaveLength(1);
    expect(findingsOf(resolved)).toEqual([]);
  });

  test('fifty files deep, and no deeper', () => {
    const files = Object.fromEntries(
      Array.from({ length: 60 }, (_, index) => [
        `f${index}.plica`,
        `units mm\nuse "f${index + 1}.plica"\nstyle s${index} { }`,
      ]),
    );
    const resolved = resolveText('units mm\nuse "f0.plica"\nenvelope e like s49 { card: A6 }', { files });
    expect(findingsOf(resolved)).toEqual(['limit: "f50.plica"']);
    expect(resolved.envelopes).toHaveLength(1);
  });
});

describe('names', () => {
  test('envelope names are one set over all files given to a command', () => {
    const files = {
      'a.plica': 'units mm\nenvelope tides { card: A6 }\nlet mine = 1',
      'b.plica': 'units mm\nenvelope tides { card: A5 }\nlet mine = 2',
    };
    const resolved = resolveFiles(['a.plica', 'b.plica'], files);
    expect(findingsOf(resolved)).toEqual(['repeated: tides']);
    expect(resolved.diagnostics[0]?.primary.span.source.name).toBe('b.plica');
    expect(resolved.diagnostics[0]?.related[0]?.span.source.name).toBe('a.plica');
    expect(resolved.envelopes.map(({ card }) => card.value.width)).toEqual([148]);
  });

  test('two used files that declare one name clash in the file that sees both, once', () => {
    const files = {
      'a.plica': 'units mm\nlet hand = 1',
      'b.plica': 'units mm\nlet hand = 2',
      'c.plica': 'units mm\nuse "a.plica"\nuse "b.plica"\nenvelope c { card: A6 }',
      'd.plica': 'units mm\nuse "c.plica"\nenvelope d { card: A6 }',
    };
    expect(findingsOf(resolveFiles(['d.plica', 'c.plica'], files))).toEqual(['repeated: hand']);
    expect(findingsOf(resolveFiles(['a.plica', 'b.plica'], files))).toEqual([]);
  });

  test('those that every object has are ordinary names', () => {
    const resolved = resolveText(`units mm
      let constructor = 4
      let valueof = 10
      style tostring { ease: constructor
        seam: valueof }
      envelope prototype like tostring { card: A6 }`);
    expect(findingsOf(resolved)).toEqual([]);
    expect(resolved.envelopes[0]).toMatchObject({ name: 'prototype', ease: { value: { width: 4 } } });
    const unknown = resolveText('units mm\nenvelope e { card: constructor\nhasownproperty: 4 }');
    expect(findingsOf(unknown).toSorted()).toEqual([
      'unknown-name: constructor',
      'unknown-property: hasownproperty',
    ]);
  });
});

describe('what is broken', () => {
  const kept = (text: string): readonly string[] => resolveText(text).envelopes.map(({ name }) => name);

  test('an envelope is left out, and the others stay', () => {
    expect(kept('units mm\nenvelope bad { card: A77 }\nenvelope good { card: A6 }')).toEqual(['good']);
  });

  test('a style or a paper takes along what leans on it, without another finding', () => {
    const resolved = resolveText(`units mm
      style bad { ease: 5 kg }
      style worse like bad { }
      paper thin { weight: 5 }
      envelope a like worse { card: A6 }
      envelope b { card: A6
        paper: thin }
      envelope c like bad { card: A6
        ease: 4 }`);
    expect(findingsOf(resolved)).toEqual(['unknown-name: kg', 'missing: 5']);
    // `c` states what is broken in its style itself.
    expect(resolved.envelopes.map(({ name }) => name)).toEqual(['c']);
  });

  test('what does not change the paper does no harm', () => {
    expect(
      kept(
        'units mm\npaper p { price: "x" }\nenvelope e { card: A6\ntitle: Tides\npaper: p\nexpect blanc = 3 }',
      ),
    ).toEqual(['e']);
  });

  test('one mistake, one finding: a card with a slip of writing is not missing', () => {
    expect(findingsOf(resolveText('units mm\nenvelope e { card: 5-1/2 x 7 }'))).toEqual(['syntax: 5-1/2']);
    expect(findingsOf(resolveText('units mm\nenvelope e { crad: A6 }'))).toEqual(['unknown-property: crad']);
  });
});
