/* The studio revises its recipes: what is said of each envelope, and of what envelopes share. */
import { describe, expect, test } from 'vitest';
import type { Difference, EnvelopeChange, SharedEdit } from '../../src/diff/difference.js';
import { compareFiles, compareTexts, type Files, onlyChange } from '../support/compare.js';
import { specs } from '../support/specs.js';

const BOOK = specs();

/** The book with some texts changed in one of its files. */
function revised(file: string, ...edits: readonly (readonly [from: string, to: string])[]): Files {
  const text = edits.reduce((before, [from, to]) => {
    expect(before).toContain(from);
    return before.replace(from, to);
  }, BOOK[file] ?? '');
  return { ...BOOK, [file]: text };
}

const said = ({ changes }: Difference): readonly string[] =>
  changes.map(({ kind, name }) => `${kind} ${name}`);

const sharedWords = ({ change, place, reaches }: SharedEdit): string =>
  `${place.kind} ${place.name}, ${change.property}: ${reaches.join(' ')}`;

const changeOf = ({ changes }: Difference, name: string): EnvelopeChange => {
  const found = changes.find((change) => change.name === name);
  if (!found) throw new Error(`nothing became of ${name}`);
  return found;
};

describe('a wider seam in the style of the house', () => {
  const difference = compareFiles(BOOK, revised('specs/house.plica', ['seam: 1/2', 'seam: 5/8']));

  test('reaches every envelope that takes its seam from there, and none with a blank of its own', () => {
    const reached = [
      'half-letter',
      'pocket-tides',
      'quarter-letter',
      'shell-box',
      'slim-ebb',
      'solstice',
      'square-moon',
    ];
    expect(said(difference)).toEqual(reached.map((name) => `changed ${name}`));
    expect(difference.shared.map(sharedWords)).toEqual([`style house, seam: ${reached.join(' ')}`]);
  });

  // Face 8 3/4 x 5 3/4 in. Blank (8.75 + 5.75)/√2 + 2 · 5/8 = 11.503, on the ruler 11 1/2; it was 10.253 + 1, 11 1/4.
  // Side mark 11.5 − 8.75/√2 = 5.313, on the ruler 5 5/16; seal mark 11.5 − 5.75/√2 = 7.434, on the ruler 7 7/16.
  test('makes the half-letter’s blank a quarter of an inch larger, and moves its marks as far', () => {
    const change = changeOf(difference, 'half-letter');
    const figures = change.kind === 'changed' ? change.figures : [];
    const inches = (name: string) => {
      const { before, after } = figures.find((figure) => figure.name === name) ?? { before: [], after: [] };
      return [before, after].map((values) =>
        values.map((value) => Number(((value ?? NaN) / 25.4).toFixed(6))),
      );
    };
    expect(inches('blank')).toEqual([[11.25], [11.5]]);
    expect(inches('side-mark')).toEqual([[5.0625], [5.3125]]);
    expect(inches('seal-mark')).toEqual([[7.1875], [7.4375]]);
    expect(change).toMatchObject({ consequences: ['recut', 'rescore'] });
  });

  test('breaks what the half-letter expects of three figures', () => {
    const change = changeOf(difference, 'half-letter');
    const found = change.kind === 'changed' ? [change.appeared, change.went] : [];
    expect(found.map((findings) => findings.map(({ problem }) => problem.name))).toEqual([
      ['expectation', 'expectation', 'expectation'],
      [],
    ]);
  });
});

describe('edits of what is shared', () => {
  test('a let of the house reaches all that is ruled by it', () => {
    const difference = compareFiles(BOOK, revised('specs/house.plica', ['hand = 1/16', 'hand = 1/8']));
    expect(difference.shared.map(sharedWords)).toEqual([
      'style house, step: drawer-square half-letter keepsake ledger-page pocket-tides quarter-letter shell-box slim-ebb solstice square-moon',
    ]);
  });

  test('a style like another reaches its own', () => {
    const difference = compareFiles(BOOK, revised('specs/house.plica', ['paper: sea-cover', 'paper: laid']));
    expect(difference.shared.map(sharedWords)).toEqual(['style chest, paper: keepsake shell-box']);
  });

  test('a paper reaches what is cut from it, and what is lined with it', () => {
    const difference = compareFiles(
      BOOK,
      revised('specs/papers.plica', ['118 gsm', '120 gsm'], ['50 lb text', '60 lb text']),
    );
    expect(difference.shared.map(sharedWords)).toEqual([
      'paper kraft, weight: drawer-square half-letter ledger-page quarter-letter solstice square-moon',
      'paper marbled, weight: solstice',
    ]);
  });

  test('an expectation of a style reaches all that are like it', () => {
    const difference = compareFiles(
      BOOK,
      revised('specs/metric-house.plica', ['crossing > 20', 'crossing > 22']),
    );
    expect(difference.shared).toHaveLength(1);
    expect(difference.shared[0]?.reaches).toEqual([
      'a5-almanac',
      'a6-tides',
      'blunt-programme',
      'ferry-pass',
      'long-tides',
      'pressed-weed',
      'sealed-letter',
      'square-lights',
      'tucked-menu',
    ]);
  });

  test('an envelope that becomes like another style is an edit of its own', () => {
    const difference = compareFiles(
      BOOK,
      revised('specs/tide-tables.plica', ['half-letter like house', 'half-letter like chest']),
    );
    expect(said(difference)).toEqual(['changed half-letter']);
    expect(difference.shared).toEqual([]);
  });

  test('a value that leaves the style for the envelope, and changes on the way, is an edit of its own', () => {
    const difference = compareFiles(
      BOOK,
      revised('specs/tide-tables.plica', ['5 1/2\n  expect blank', '5 1/2\n  seam: 5/8\n  expect blank']),
    );
    expect(difference.shared).toEqual([]);
  });

  test('a value of the style that comes to hold because the envelope’s own is gone is an edit of its own', () => {
    const difference = compareFiles(BOOK, revised('specs/from-stock.plica', ['  blank: 8 1/2\n', '']));
    expect(said(difference)).toEqual(['changed drawer-square']);
    expect(difference.shared).toEqual([]);
  });

  test('an envelope that another is like is shared too', () => {
    const text =
      'units mm\nenvelope tides {\n  card: A6\n  seam: 12\n}\nenvelope moon like tides {\n  tags: moon\n}\n';
    const difference = compareTexts(text, text.replace('seam: 12', 'seam: 14'));
    expect(said(difference)).toEqual(['changed moon', 'changed tides']);
    expect(difference.shared.map(sharedWords)).toEqual(['style tides, seam: moon']);
  });
});

describe('envelopes that come, go, or are called otherwise', () => {
  test('one more, one less', () => {
    const text = 'units mm\nenvelope tides {\n  card: A6\n}\n';
    const two = `${text}envelope moon {\n  card: A5\n}\n`;
    expect(said(compareTexts(text, two))).toEqual(['added moon']);
    expect(said(compareTexts(two, text))).toEqual(['removed moon']);
  });

  test('the same content under another name', () => {
    const difference = compareFiles(
      BOOK,
      revised('specs/tide-tables.plica', ['envelope half-letter', 'envelope half-tides']),
    );
    const change = onlyChange(difference);
    expect(change).toMatchObject({
      kind: 'renamed',
      name: 'half-tides',
      written: [],
      figures: [],
      consequences: ['wording'],
    });
    expect(change.before.envelope.name).toBe('half-letter');
  });

  test('another name, and another file, and another spelling', () => {
    const head = 'units in\nuse "house.plica"\n';
    const block = BOOK['specs/tide-tables.plica']?.match(/^envelope square-moon[^}]*\}\n/m)?.[0] ?? '';
    const moved = {
      ...revised('specs/tide-tables.plica', [block, '']),
      'specs/moon.plica':
        head + block.replace('square-moon', 'moon').replace('5 3/4 x 5 3/4', '5.75 in x 146.05 mm'),
    };
    expect(said(compareFiles(BOOK, moved))).toEqual(['renamed moon']);
  });

  test('another name and another content are one less and one more', () => {
    const after = revised(
      'specs/tide-tables.plica',
      ['envelope half-letter', 'envelope half-tides'],
      ['tides, flat', 'tides, year'],
    );
    expect(said(compareFiles(BOOK, after))).toEqual(['removed half-letter', 'added half-tides']);
  });

  /* All but the name has to be the same: else it is another envelope, and nobody knows that it was the first. */
  test.each([
    ['what is expected', '  expect blank = 207\n', '  expect blank > 207\n'],
    ['how near it is expected', '  expect blank = 207\n', '  expect blank = 207 +- 1\n'],
    ['the class of post that is expected', '  expect post de-kompakt\n', '  expect post de-standard\n'],
    ['a property more', '', '  shift: 2\n'],
    ['what its paper weighs', 'weight: 120 gsm', 'weight: 130 gsm'],
    ['what its paper costs', 'weight: 120 gsm', 'weight: 120 gsm\n  price: 2'],
  ])('another name, and otherwise %s: one less and one more', (_, from, to) => {
    const text = `units mm\npaper laid {\n  weight: 120 gsm\n}\nenvelope tides {\n  card: A6\n  paper: laid\n${from.startsWith('weight') ? '' : from}}\n`;
    const after = (
      from === '' ? text.replace('}\n', `}\n`).replace(/\}\n$/, `${to}}\n`) : text.replace(from, to)
    ).replace('envelope tides', 'envelope moon');
    expect(said(compareTexts(text, after))).toEqual(['added moon', 'removed tides']);
  });

  test('another name, and the statements in another order, one of them twice and one a default: renamed', () => {
    const text =
      'units mm\nenvelope tides {\n  card: A6\n  tags: ebb, flood\n  seam: 12\n  expect blank > 100\n  expect layers > 0\n  expect post de-maxi\n  expect post de-gross\n}\n';
    const after =
      'units mm\nenvelope moon {\n  expect post de-gross\n  expect post de-maxi\n  expect layers > 0\n  expect blank > 10 cm\n  expect layers > 0\n  shift: default\n  seam: 12\n  tags: flood, ebb\n  card: A6\n}\n';
    expect(said(compareTexts(text, after))).toEqual(['renamed moon']);
  });

  test('another name and other units, by which what is left out goes', () => {
    const text = 'units mm\nenvelope tides {\n  card: A6\n}\n';
    const after = text.replace('units mm', 'units in').replace('envelope tides', 'envelope moon');
    expect(said(compareTexts(text, after))).toEqual(['added moon', 'removed tides']);
  });

  test('of envelopes that are all alike, the first by name was the first', () => {
    const alike = (...names: readonly string[]): string =>
      `units mm\n${names.map((name) => `envelope ${name} {\n  card: A6\n}\n`).join('')}`;
    const { changes } = compareTexts(alike('neap', 'ebb'), alike('west', 'east', 'north'));
    expect(
      changes.map((change) =>
        change.kind === 'renamed'
          ? `${change.before.envelope.name} → ${change.name}`
          : `${change.kind} ${change.name}`,
      ),
    ).toEqual(['ebb → east', 'neap → north', 'added west']);
  });
});

describe('envelopes that cannot be read on one side', () => {
  const broken = revised('specs/tide-tables.plica', ['card: 5 3/4 x 5 3/4', 'card: 5 3/4 x']);

  test('it cannot be told what became of them', () => {
    expect(changeOf(compareFiles(BOOK, broken), 'square-moon')).toEqual({
      kind: 'unreadable',
      name: 'square-moon',
      side: 'after',
    });
    expect(changeOf(compareFiles(broken, BOOK), 'square-moon')).toEqual({
      kind: 'unreadable',
      name: 'square-moon',
      side: 'before',
    });
  });

  test('a mistake in a style hides all that take it from there', () => {
    const difference = compareFiles(BOOK, revised('specs/metric-house.plica', ['ease: 5', 'ease: five']));
    expect(new Set(difference.changes.map(({ kind }) => kind))).toEqual(new Set(['unreadable']));
    expect(difference.changes.map(({ name }) => name)).toContain('a6-tides');
  });

  test('in files of two names, by the name of the envelope', () => {
    const text = 'units mm\nenvelope tides {\n  card: A6\n}\n';
    const difference = compareFiles(
      { 'old.plica': text },
      { 'new.plica': text.replace('card: A6', 'card: A66') },
    );
    expect(difference.changes.map(({ kind }) => kind)).toEqual(['unreadable']);
  });

  test('what a rule finds hides nothing', () => {
    const two =
      'units mm\nenvelope tides {\n  card: A6\n  expect blank = 99\n}\nenvelope moon {\n  card: A5\n}\n';
    expect(said(compareTexts(two, two.replace(/envelope moon[^}]*\}\n/, '')))).toEqual(['removed moon']);
  });
});

describe('what one edit is, and what several are', () => {
  const house = (seam: string, ease: string): string =>
    `units mm\nstyle house {\n  seam: ${seam}\n}\nstyle annex like house {\n  ease: ${ease}\n}\nenvelope tides like annex {\n  card: A6\n}\nenvelope moon like house {\n  card: A5\n}\n`;

  test('styles stand in order of their names, each with those that it reaches', () => {
    const { shared } = compareTexts(house('12', '5'), house('14', '6'));
    expect(shared.map(sharedWords)).toEqual(['style annex, ease: tides', 'style house, seam: moon tides']);
  });

  test('a statement that moves from one style to another, and changes on the way, is an edit only where it went', () => {
    const before = house('12', '5');
    const after = before.replace('  seam: 12\n', '').replace('ease: 5', 'ease: 5\n  seam: 14');
    const difference = compareTexts(before, after);
    expect(difference.shared.map(sharedWords)).toEqual(['style house, seam: moon']);
    expect(said(difference)).toEqual(['changed moon', 'changed tides']);
  });

  test('a statement that is taken out of a style, and one that is put in', () => {
    const with5 = house('12', '5');
    const without = with5.replace('  ease: 5\n', '');
    for (const [before, after] of [
      [with5.replace('ease: 5', 'ease: 7'), without],
      [without, with5.replace('ease: 5', 'ease: 7')],
    ] as const)
      expect(compareTexts(before, after).shared.map(sharedWords)).toEqual(['style annex, ease: tides']);
  });
});

test('findings that both sides have are not told again', () => {
  const text = 'units mm\nenvelope tides {\n  card: A6\n  expect blank = 99\n  expect layers = 99\n}\n';
  const change = onlyChange(
    compareTexts(text, text.replace('layers = 99', 'layers > 0\n  expect seal-mark = 99')),
  );
  expect([change.appeared, change.went]).toEqual([[], []]);
  const more = onlyChange(
    compareTexts(text, text.replace('layers = 99', 'layers = 99\n  expect seal-mark = 99')),
  );
  expect(more.appeared.map(({ message }) => message.includes('seal-mark'))).toEqual([true]);
  expect(more.went).toEqual([]);
});

test('side flaps that differ have two figures, others one', () => {
  const text = 'units mm\nenvelope tides {\n  card: A6\n  blank: 210\n}\n';
  const { figures } = onlyChange(
    compareTexts(text, text.replace('blank: 210', 'blank: 210\n  side-mark: 100, 101')),
  );
  const marks = figures.find(({ name }) => name === 'side-mark');
  expect(marks?.after).toEqual([expect.closeTo(100, 6), expect.closeTo(101, 6)]);
  expect(marks?.before).toHaveLength(2);
  expect(figures.find(({ name }) => name === 'face-width')?.after).toHaveLength(1);
});
