/*
 * What must hold of every difference, whatever the recipes.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from '../../grammar/parser.js';
import type { Difference, EnvelopeChange, Recipe, WrittenChange } from '../../src/diff/difference.js';
import type { Facts } from '../../src/folding/facts.js';
import { format } from '../../src/format/format.js';
import { source } from '../../src/text/source.js';
import { spanText } from '../../src/text/span.js';
import { looseLayouts } from '../format/loose-layouts.js';
import { applyWritten } from '../support/apply-written.js';
import { compareFiles, compareTexts, unchecked } from '../support/compare.js';
import { revisions } from '../support/revisions.js';
import { specs } from '../support/specs.js';
import { slipped } from '../support/texts.js';

const seed = { seed: 1, numRuns: 80 };
const NOTHING: Difference = { changes: [], shared: [] };

const quickly = (before: string, after: string): Difference => compareTexts(before, after, unchecked);

test('the revisions made up for these laws are good recipes, and reach every consequence', () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(revisions, ([before, after]) => {
      for (const text of [before, after]) {
        const { diagnostics } = unchecked({ 'recipe.plica': text });
        expect(
          diagnostics.filter(({ severity }) => severity === 'error'),
          text,
        ).toEqual([]);
      }
      for (const change of quickly(before, after).changes)
        if (change.kind === 'changed') for (const consequence of change.consequences) seen.add(consequence);
    }),
    seed,
  );
  expect([...seen].sort()).toEqual(['none', 'recut', 'reglue', 'rescore', 'restock', 'retrim', 'wording']);
});

test('nothing differs from itself', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        revisions.map(([before]) => before),
        slipped,
      ),
      (text) => {
        expect(quickly(text, text)).toEqual(NOTHING);
      },
    ),
    seed,
  );
});

test('the other way round, everything is the other way round', () => {
  fc.assert(
    fc.property(revisions, ([before, after]) => {
      expect(plain(quickly(after, before))).toEqual(mirrored(plain(quickly(before, after))));
    }),
    seed,
  );
});

test('what is said to be written, written into the older recipe, gives the newer one', () => {
  fc.assert(
    fc.property(revisions, ([before, after]) => {
      const [older, newer] = [before, after].map((text) => unchecked({ 'recipe.plica': text }).recipes);
      const { changes } = quickly(before, after);
      for (const { envelope, facts } of newer ?? []) {
        const was = older?.find((recipe) => recipe.envelope.name === envelope.name);
        if (!was) throw new Error(`no ${envelope.name} before`);
        const change = changes.find(({ name }) => name === envelope.name);
        const written = change?.kind === 'changed' ? change.written : [];
        const anew = written.some(({ property }) => /^(liner-)?paper$/.test(property));
        const applied = applyWritten(anew ? withPapersOf(after, before) : before, was.envelope, written);
        const made = factsOf(unchecked({ 'recipe.plica': applied }).recipes, envelope.name);
        expect(apart(upright(made), upright(facts)), `${before}\n${after}\n${applied}`).toEqual([]);
      }
    }),
    seed,
  );
});

test('another layout and other comments are no change', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        looseLayouts,
        revisions.map(([before]) => before),
      ),
      (text) => {
        expect(quickly(text, format(parse(source('recipe.plica', text)).file))).toEqual(NOTHING);
        expect(quickly(text, `# How it was.\n${text.replaceAll(/(?<=[{}])(?=[\r\n])/g, ' # here')}`)).toEqual(
          NOTHING,
        );
      },
    ),
    seed,
  );
});

test('blocks and statements in another order are no change', () => {
  fc.assert(
    fc.property(revisions, ([text]) => {
      expect(quickly(text, inAnotherOrder(text))).toEqual(NOTHING);
    }),
    seed,
  );
});

test('another spelling of the same lengths is no change', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 8, max: 64 }), { minLength: 8, maxLength: 8 }),
      fc.array(fc.nat(SPELLINGS.length - 1), { minLength: 32, maxLength: 32 }),
      (sixteenths, ways) => {
        const spelled = (from: number): string =>
          inEverything(
            sixteenths.map((count, index) =>
              (SPELLINGS[ways[from + (index === 2 ? 1 : index)] ?? 0] as Spelling)(count),
            ),
          );
        const [before, after] = [spelled(0), spelled(8)];
        expect(unchecked({ 'recipe.plica': before }).recipes).toHaveLength(1);
        expect(quickly(before, after), before + after).toEqual(NOTHING);
      },
    ),
    seed,
  );
});

test('the recipes that come with plica, laid out anew, differ in nothing', () => {
  const loose = Object.fromEntries(
    Object.entries(specs()).map(([name, text]) => [
      name,
      text.replaceAll('\n', '\r\n').replaceAll('  ', '\t'),
    ]),
  );
  expect(unchecked(loose).recipes.length).toBeGreaterThan(10);
  expect(compareFiles(specs(), loose)).toEqual(NOTHING);
});

const factsOf = (recipes: readonly Recipe[], name: string): Facts | undefined =>
  recipes.find(({ envelope }) => envelope.name === name)?.facts;

/** Facts with the sheet turned upright: either way round yields as much. */
const upright = (facts: Facts | undefined): unknown => {
  if (!facts?.sheet) return facts;
  const { width, height, ...sheet } = facts.sheet;
  return { ...facts, sheet: { ...sheet, sides: [Math.min(width, height), Math.max(width, height)] } };
};

/** A text with its papers as another has them: one that is taken anew is taken as it is then. */
const withPapersOf = (newer: string, text: string): string =>
  text.replaceAll(PAPERS, (_, name: string) =>
    [...newer.matchAll(PAPERS)].flatMap(([block, other]) => (other === name ? [block] : [])).join(''),
  );

const PAPERS = /^paper (\S+)[^}]*\}/gm;

/** Where two pieces of plain data are apart by more than a reading tells; units alone are no difference. */
function apart(one: unknown, other: unknown, path = ''): readonly string[] {
  if (path === '.units') return [];
  if (typeof one === 'number' && typeof other === 'number')
    return Math.abs(one - other) <= 1e-5 * Math.max(1, Math.abs(one)) ? [] : [`${path}: ${one}, ${other}`];
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null)
    return one === other ? [] : [`${path}: ${String(one)}, ${String(other)}`];
  const [values, others] = [new Map(Object.entries(one)), new Map(Object.entries(other))];
  return [...new Set([...values.keys(), ...others.keys()])].flatMap((key) =>
    apart(values.get(key), others.get(key), `${path}.${key}`),
  );
}

/** A difference without the recipes themselves, and without their places in the texts. */
const plain = ({ changes, shared }: Difference) => ({
  changes: changes.map(plainChange),
  shared: shared.map(({ change, place, reaches }) => ({ change: plainWritten(change), place, reaches })),
});

const plainChange = (change: EnvelopeChange) => {
  if (change.kind !== 'changed' && change.kind !== 'renamed')
    return { kind: change.kind, name: change.name, side: change.kind === 'unreadable' ? change.side : null };
  const { before, after, written, appeared, went, ...rest } = change;
  return {
    ...rest,
    names: [before.envelope.name, after.envelope.name],
    written: written.map(plainWritten),
    appeared: appeared.map(({ message }) => message),
    went: went.map(({ message }) => message),
  };
};

const plainWritten = ({ property, before, after }: WrittenChange) => ({
  property,
  before: before && { ...before, span: null },
  after: after && { ...after, span: null },
});

type Plain = ReturnType<typeof plain>;

const mirrored = ({ changes, shared }: Plain): Plain => ({
  changes: changes.map((change) => {
    if (!('figures' in change))
      return { ...change, kind: MIRRORED[change.kind], side: change.side && OTHER[change.side] };
    const { figures, written, appeared, went, names } = change;
    return {
      ...change,
      names: [...names].reverse(),
      written: written.map(turned),
      figures: figures.map(turned),
      appeared: went,
      went: appeared,
    };
  }),
  shared: shared.map((edit) => ({ ...edit, change: turned(edit.change) })),
});

const MIRRORED = { added: 'removed', removed: 'added', unreadable: 'unreadable' } as const;
const OTHER = { before: 'after', after: 'before' } as const;

const turned = <T, Sides extends { readonly before: T; readonly after: T }>(sides: Sides): Sides => ({
  ...sides,
  before: sides.after,
  after: sides.before,
});

/** The same blocks with the same statements, the last first. */
function inAnotherOrder(text: string): string {
  const { statements } = parse(source('recipe.plica', text)).file;
  return statements
    .map((statement) => {
      if (statement.kind !== 'block') return spanText(statement.span);
      const header = text.slice(statement.span.start, text.indexOf('{', statement.span.start));
      return `${header}{\n${statement.entries
        .map(({ span }) => spanText(span))
        .reverse()
        .join('\n')}\n}`;
    })
    .reverse()
    .join('\n');
}

type Spelling = (sixteenths: number) => string;

/** So many sixteenths of an inch; an inch is 25.4 mm exactly (the international inch, 1959). */
const SPELLINGS: readonly Spelling[] = [
  (count) => `${Math.floor(count / 16)} ${count % 16}/16 in`,
  (count) => `${count / 16} in`,
  (count) => `${count / 16}`,
  (count) => `${(count * 1.5875).toFixed(4)} mm`,
  (count) => `${(count * 0.15875).toFixed(5)} cm`,
  (count) => `${Math.floor(count / 16)} ${count % 16}/16"`,
];

/** A recipe in which every kind of value has a length in it. */
const inEverything = ([
  bulk,
  width,
  height,
  seam,
  mark,
  radius,
  tape,
  inset,
]: readonly string[]): string => `units in
paper chart { caliper: 150 um }
envelope tides {
  card: 8 1/2 x 5 1/2
  paper: chart
  bulk: ${bulk}
  ease: ${width} x ${height}
  seam: ${seam}
  side-mark: ${mark}
  flap: rounded ${radius}
  tape: ${tape}
  liner: inset ${inset}
  expect blank = ${seam}
}
`;
