import type { Block, Section, Step, Term } from '../content.js';
import { wrap } from '../../../text/wrap.js';
import { setTable } from './set-table.js';
import { lineStrip, words } from './line.js';
import type { Item, Strip } from './strip.js';
import { BODY, HEADING, type Measure, STRONG, type Style, typeset } from './type.js';

/** Sets a section in a column: its heading, then its blocks. */
export function setSection(
  { heading, blocks }: Section<string>,
  width: number,
  measure: Measure,
): readonly Strip[] {
  const title = setText(heading, width, HEADING, measure, 11);
  const body = blocks.flatMap((block, index) => {
    const strips = setBlock(block, width, measure);
    const leadsToTable = block.kind !== 'table' && blocks[index + 1]?.kind === 'table';
    return strips.map((strip, line) => ({
      ...strip,
      above: line > 0 ? strip.above : index === 0 ? 2 : 5,
      keepsWithNext: strip.keepsWithNext || (leadsToTable && line === strips.length - 1),
    }));
  });
  return [...title.map((strip) => ({ ...strip, keepsWithNext: true })), ...body];
}

const setBlock = (block: Block, width: number, measure: Measure): readonly Strip[] =>
  (SETTERS[block.kind] as (block: Block, width: number, measure: Measure) => readonly Strip[])(
    block,
    width,
    measure,
  );

const SETTERS: {
  readonly [Kind in Block['kind']]: (
    block: Extract<Block, { kind: Kind }>,
    width: number,
    measure: Measure,
  ) => readonly Strip[];
} = {
  paragraph: ({ text }, width, measure) => setText(text, width, BODY, measure, 0),
  terms: ({ terms }, width, measure) => setTerms(terms, width, measure),
  table: setTable,
  steps: ({ steps }, width, measure) => setSteps(steps, width, measure),
};

/** A paragraph, a strip for each line; no line of it stands alone at a page's foot or head. */
export function setText(
  text: string,
  width: number,
  style: Style,
  measure: Measure,
  above: number,
  indent = 0,
): readonly Strip[] {
  const lines = wrap(typeset(text), width, (words) => measure(words, style), indent);
  return lines.map((line, index) => ({
    ...lineStrip([words(line, 0, style)], style),
    above: index === 0 ? above : 0,
    keepsWithNext: keptTogether(index, lines.length),
  }));
}

/** The first two lines of a paragraph stay together, and the last two. */
const keptTogether = (line: number, count: number): boolean =>
  line < count - 1 && (line === 0 || line === count - 2);

/** In a column narrower than this, labels stand above their text. */
const NARROW = 170;

/** Labels in a column of their own, the text beside them; in a narrow column each above its text. */
function setTerms(terms: readonly Term[], width: number, measure: Measure): readonly Strip[] {
  if (width < NARROW)
    return terms.flatMap(({ label, text }) => [
      ...setText(label, width, STRONG, measure, 3).map((strip) => ({ ...strip, keepsWithNext: true })),
      ...setText(text, width, BODY, measure, 0),
    ]);
  const column = 12 + Math.max(...terms.map(({ label }) => measure(label, STRONG)));
  return terms.flatMap(({ label, text }) =>
    hung([words(label, 0, STRONG)], text, { column, indent: 0 }, width, measure, 3),
  );
}

/** Numbers hang in the margin of the words; a step's name leads its text. */
function setSteps(steps: readonly Step[], width: number, measure: Measure): readonly Strip[] {
  const column = 8 + measure(`${steps.length}.`, STRONG);
  return steps.flatMap(({ title, text }, index) => {
    const number = `${index + 1}.`;
    const name = `${title}.`;
    const first = [words(number, column - 8 - measure(number, STRONG), STRONG), words(name, column, STRONG)];
    const indent = measure(name, STRONG) + 5;
    return hung(first, text, { column, indent }, width, measure, 4);
  });
}

/** A text that hangs beside what leads its first line, and begins that line after an indent. */
function hung(
  first: readonly Item[],
  text: string,
  { column, indent }: { readonly column: number; readonly indent: number },
  width: number,
  measure: Measure,
  above: number,
): readonly Strip[] {
  return setText(text, width - column, BODY, measure, above, indent).map((strip, line) => ({
    ...strip,
    items: [
      ...(line === 0 ? first : []),
      ...strip.items.map((item) => ({ ...item, x: item.x + column + (line === 0 ? indent : 0) })),
    ],
  }));
}
