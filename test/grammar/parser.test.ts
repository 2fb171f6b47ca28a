import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { layOut } from '../../grammar/layout/layout.js';
import { lex } from '../../grammar/lexer.js';
import { parse } from '../../grammar/parser.js';
import { RecipeParser } from '../../grammar/recipe-parser.js';
import { InchMark, Percent, Stray, Unclosed, vocabulary } from '../../grammar/tokens.js';
import { source } from '../../src/text/source.js';
import { printNode, printTree } from '../support/print-tree.js';

const kitchenSink = readFileSync('test/support/kitchen-sink.plica', 'utf8');
const read = (text: string) => parse(source('recipe.plica', text));
const messages = (text: string): string[] => read(text).diagnostics.map(({ message }) => message);

/** The values of the one property of an envelope, or of the one let. */
function valueOf(text: string): string {
  const [statement] = read(text).file.statements;
  if (statement?.kind === 'let') return printNode(statement.value);
  const entry = statement?.kind === 'block' ? statement.entries[0] : undefined;
  return entry?.kind === 'property' ? entry.values.map(printNode).join(' ') : '';
}

describe('the grammar', () => {
  test('is found sound by the parser library, with one token of lookahead', () => {
    expect(() => new RecipeParser({ analyse: true })).not.toThrow();
  });

  test('is used whole by the kitchen sink', async () => {
    const { file, diagnostics } = read(kitchenSink);
    expect(diagnostics.map(({ message }) => message)).toEqual([]);
    await expect(printTree(file)).toMatchFileSnapshot('kitchen-sink.tree.txt');
  });

  test('has no token that the kitchen sink does not use', () => {
    const given = source('', kitchenSink);
    const used = new Set(layOut(given, lex(given).tokens).tokens.map(({ tokenType }) => tokenType));
    // An inch mark and `%` become units; the others are there to be refused.
    const apart = [InchMark, Percent, Unclosed, Stray];
    expect(
      vocabulary.filter((type) => !used.has(type) && !apart.includes(type)).map(({ name }) => name),
    ).toEqual([]);
  });
});

describe('line ends', () => {
  test.each([
    ['CRLF', kitchenSink.replaceAll('\n', '\r\n')],
    ['lone CR', kitchenSink.replaceAll('\n', '\r')],
    ['a byte order mark', `\ufeff${kitchenSink}`],
  ])('%s gives the same tree', (_, text) => {
    const { file, diagnostics } = read(text);
    expect(diagnostics).toEqual([]);
    expect(printTree(file)).toBe(printTree(read(kitchenSink).file));
  });

  test('none at the end is as good as one', () => {
    expect(printTree(read(kitchenSink.trimEnd()).file)).toBe(printTree(read(kitchenSink).file));
  });

  test('only a list carries over, after its comma', () => {
    expect(valueOf('style s {\n  tags: spring,\n\n  # the other one\n  neap\n}')).toBe(
      '(word "spring") (word "neap")',
    );
    expect(messages('style s {\n  ease: 1/4 +\n  1/8\n}')).toEqual([
      'a value is missing after `+`',
      'an entry cannot begin with `1/8`',
    ]);
  });

  test('an empty file, or one of comments, is a file', () => {
    for (const text of ['', '\n\n', '# nothing yet', '\ufeff']) {
      expect(read(text).file.statements).toEqual([]);
      expect(read(text).diagnostics).toEqual([]);
    }
  });
});

describe('words get their meaning from their place', () => {
  test.each([
    [
      'style envelope { card: A6 }',
      '(block "style" (word "envelope") null [(property (word "card") [(word "A6")])])',
    ],
    ['style let like like { }', '(block "style" (word "let") (word "like") [])'],
    ['let units = 5', '(let (word "units") (number 5 null))'],
    ['let mm = 5 mm', '(let (word "mm") (number 5 (unit "mm")))'],
    ['let in = 2 in', '(let (word "in") (number 2 (unit "in")))'],
    [
      'style s { expect: 5 }',
      '(block "style" (word "s") null [(property (word "expect") [(number 5 null)])])',
    ],
    [
      'style s { paper: paper }',
      '(block "style" (word "s") null [(property (word "paper") [(word "paper")])])',
    ],
  ])('%s', (text, tree) => {
    const { file, diagnostics } = read(text);
    expect(diagnostics).toEqual([]);
    expect(file.statements.map(printNode)).toEqual([tree]);
  });
});

describe('values', () => {
  test.each([
    ['12x12', '(size (number 12 null) (number 12 null))'],
    ['5"x7"', '(size (number 5 (unit "\\"")) (number 7 (unit "\\"")))'],
    ['5½x8 ½', '(size (number 5.5 null) (number 8.5 null))'],
    ['8 1/2 × 5 1/2', '(size (number 8.5 null) (number 5.5 null))'],
    ['a x b', '(size (word "a") (word "b"))'],
    ['x-ray', '(word "x-ray")'],
    ['xl', '(word "xl")'],
    ['half letter', '(phrase [(word "half") (word "letter")])'],
    ['blunt 20 rounded 3', '(phrase [(word "blunt") (number 20 null) (word "rounded") (number 3 null)])'],
    ['65 lb cover', '(number 65 (unit "lb cover"))'],
    ['3 furlong', '(number 3 (unit "furlong"))'],
    ['50%', '(number 50 (unit "%"))'],
    ['1 - 2 - 3', '(binary "-" (binary "-" (number 1 null) (number 2 null)) (number 3 null))'],
    ['1 + 2 * 3', '(binary "+" (number 1 null) (binary "*" (number 2 null) (number 3 null)))'],
    ['-1/4', '(negate (number 0.25 null))'],
    ['2 / -a', '(binary "/" (number 2 null) (negate (word "a")))'],
    ['1/2 / 1/4', '(binary "/" (number 0.5 null) (number 0.25 null))'],
    ['a-b', '(word "a-b")'],
    ['"say \\"5\\" \\\\"', '(string "say \\"5\\" \\\\")'],
    ['"# no comment"', '(string "# no comment")'],
  ])('%s', (text, tree) => {
    expect(messages(`style s {\n  card: ${text}\n}`)).toEqual([]);
    expect(valueOf(`style s {\n  card: ${text}\n}`)).toBe(tree);
  });
});

describe('a broken part', () => {
  test.each([
    ['a property keeps its name, without values', 'style s {\n  ease: 3/2\n}', '(property (word "ease") [])'],
    ['so it does when it cannot be read', 'style s {\n  ease: 1 2\n}', '(property (word "ease") [])'],
    [
      'an expect keeps its name, without a value',
      'style s {\n  expect blank = 3/2\n}',
      '(expect (word "blank") "=" null null)',
    ],
  ])('%s', (_, text, tree) => {
    const { file, diagnostics } = read(text);
    expect(diagnostics).toHaveLength(1);
    const [block] = file.statements;
    expect(block?.kind === 'block' && block.entries.map(printNode)).toEqual([tree]);
  });

  test('a let keeps its name, without a value', () => {
    expect(read('let hand = 1/16/2').file.statements.map(printNode)).toEqual(['(let (word "hand") null)']);
  });

  test('a block is known by the name it surely was meant to have', () => {
    const names = ['5x7', 'half letter', '"Half letter"'].map((name) => {
      const [block] = read(`style ${name} {\n}`).file.statements;
      return block?.kind === 'block' ? block.name.text : null;
    });
    expect(names).toEqual(['card-5x7', 'half-letter', 'half-letter']);
  });

  test('what was surely meant is read as meant', () => {
    expect(valueOf('style s {\n  card = 8.5” X 5.5”;\n}')).toBe(
      '(size (number 8.5 (unit "\\"")) (number 5.5 (unit "\\"")))',
    );
    expect(valueOf('style s {\n  title “Tide table”\n}')).toBe('(string "Tide table")');
  });

  test('what is not known is passed over whole, after one finding', () => {
    const { file, diagnostics } = read('gusset wide {\n  depth: 51/2\n  card: @\n}\nlet hand = 1/16');
    expect(diagnostics.map(({ message }) => message)).toEqual(['no statement begins with `gusset`']);
    expect(file.statements.map(({ kind }) => kind)).toEqual(['let']);
  });
});

test('five slips on five lines give five findings, each on its line', () => {
  const text = [
    'let hand: 1/16', // a colon
    'style s {',
    '  title: "Tide table', // not closed
    '  ease: 51/2', // a space lost
    '  card: 5 7', // no x
    '  bulk: 2 mm', // nothing wrong
    '  seam: 2 * (3 + 4', // a bracket left open
    '}',
  ].join('\n');
  const given = source('recipe.plica', text);
  const lines = parse(given).diagnostics.map(
    ({ primary }) => text.slice(0, primary.span.start).split('\n').length,
  );
  expect(lines).toEqual([1, 3, 4, 5, 7]);
});
