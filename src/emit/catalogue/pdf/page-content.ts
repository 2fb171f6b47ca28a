import { printShort } from '../../../measure/number.js';
import type { BookPage, Item, Placed, Run, Words } from '../page.js';
import type { Glyphs } from './glyphs.js';
import { alternative } from './objects.js';
import type { Element, Tags } from './tags.js';

/** A stretch of a page that leads elsewhere: in points, y up. */
export interface Leads {
  readonly to: string;
  readonly words: string;
  readonly element: Element;
  readonly box: readonly [left: number, bottom: number, right: number, top: number];
}

/** What the content of a page is written with. */
export interface Hands {
  readonly tags: Tags;
  readonly show: Glyphs['show'];
  /** What the page calls the font of a weight. */
  readonly font: Readonly<Record<Run['weight'], string>>;
}

/** The operators of a page, its elements begun and ended within `parent`; `leads` is told of every link. */
export function pageContent(
  { groups }: BookPage,
  parent: Element,
  hands: Hands,
  leads: (link: Leads) => void,
): string {
  const lines: string[] = [];
  for (const group of groups) {
    const { x, y, scale } = group;
    lines.push(`q ${short(scale)} 0 0 ${short(scale)} ${short(x)} ${short(y)} cm`);
    const writer: Writer = { ...hands, group, lines, leads };
    for (const item of group.items) writeItem(item, parent, writer);
    lines.push('Q');
  }
  return lines.join('\n');
}

interface Writer extends Hands {
  readonly group: Placed;
  readonly lines: string[];
  readonly leads: (link: Leads) => void;
}

type Role = Item['role'];
type Of<R extends Role> = Extract<Item, { readonly role: R }>;

const words = (item: Of<'H1' | 'H2' | 'H3' | 'P'>, parent: Element, writer: Writer): void =>
  within(item.role, parent, writer, (element) => writeWords(item, element, writer));

/** How an item of each role is written. */
const WRITERS: { readonly [R in Role]: (item: Of<R>, parent: Element, writer: Writer) => void } = {
  H1: words,
  H2: words,
  H3: words,
  P: words,
  Figure: ({ alt, operators, runs }, parent, writer) =>
    within(
      'Figure',
      parent,
      writer,
      (element) => marked('Figure', element, writer, () => drawn(operators, runs, writer)),
      alternative(alt),
    ),
  L: ({ items }, parent, writer) =>
    within('L', parent, writer, (list) => {
      for (const { label, body } of items)
        within('LI', list, writer, (item) => {
          if (label) within('Lbl', item, writer, (element) => writeWords(label, element, writer));
          within('LBody', item, writer, (element) => writeWords(body, element, writer));
        });
    }),
  Table: ({ rows }, parent, writer) =>
    within('Table', parent, writer, (table) => {
      for (const row of rows)
        within('TR', table, writer, (element) => {
          for (const cell of row)
            within(
              cell.heading ? 'TH' : 'TD',
              element,
              writer,
              (at) => writeWords(cell, at, writer),
              cell.heading ? SCOPES[cell.heading] : '',
            );
        });
    }),
  TOC: ({ items }, parent, writer) =>
    within('TOC', parent, writer, (list) => {
      for (const item of items) within('TOCI', list, writer, (element) => writeWords(item, element, writer));
    }),
  Artifact: ({ operators, runs }, _, writer) => {
    writer.lines.push('/Artifact BMC');
    drawn(operators, runs, writer);
    writer.lines.push('EMC');
  },
};

const SCOPES = {
  column: '/A<</O/Table/Scope/Column>>',
  row: '/A<</O/Table/Scope/Row>>',
} as const;

const writeItem = <R extends Role>(item: Of<R>, parent: Element, writer: Writer): void =>
  (WRITERS[item.role] as (item: Of<R>, parent: Element, writer: Writer) => void)(item, parent, writer);

function within(
  type: string,
  parent: Element,
  { tags }: Writer,
  write: (element: Element) => void,
  more = '',
): void {
  const element = tags.begin(type, parent, more);
  write(element);
  tags.end(element);
}

function marked(type: string, element: Element, { tags, lines }: Writer, write: () => void): void {
  lines.push(`/${type} <</MCID ${tags.content(element)}>> BDC`);
  write();
  lines.push('EMC');
}

function writeWords({ runs, to }: Words, element: Element, writer: Writer): void {
  if (runs.length === 0) return;
  if (to === undefined) {
    marked('Span', element, writer, () => lettered(runs, writer));
    return;
  }
  within('Link', element, writer, (link) => {
    marked('Link', link, writer, () => lettered(runs, writer));
    writer.leads({
      to,
      words: runs.map(({ text }) => text).join(' '),
      element: link,
      box: boxOf(runs, writer),
    });
  });
}

function drawn(operators: string, runs: readonly Run[], writer: Writer): void {
  if (operators !== '') writer.lines.push('q', operators, 'Q');
  lettered(runs, writer);
}

/** Greys of 1: black, and one that still reads well. */
const INKS: Readonly<Record<Run['ink'], string>> = { full: '0', quiet: '0.35' };

function lettered(runs: readonly Run[], { show, font, lines }: Writer): void {
  if (runs.length === 0) return;
  let [ink, face] = ['', ''];
  lines.push('BT');
  for (const [index, run] of runs.entries()) {
    const inkNow = `${INKS[run.ink]} g`;
    const faceNow = `/${font[run.weight]} ${short(run.size)} Tf`;
    if (inkNow !== ink) lines.push(inkNow);
    if (faceNow !== face) lines.push(faceNow);
    [ink, face] = [inkNow, faceNow];
    // Whoever reads it aloud, or copies it, finds a space where a line ends.
    const text = index < runs.length - 1 ? `${run.text} ` : run.text;
    lines.push(`${turned(run)} ${short(run.x)} ${short(run.y)} Tm [${show(text, run.weight).operand}] TJ`);
  }
  lines.push('ET');
}

function turned({ angleDegrees = 0 }: Run): string {
  if (angleDegrees === 0) return '1 0 0 1';
  const angle = (angleDegrees * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return [cosine, sine, -sine, cosine].map((part) => printShort(part, 5)).join(' ');
}

/** How far letters reach below and above their baseline, in ems. */
const [DEPTH, RISE] = [0.25, 0.75];

/** The box of level runs, as it lies on the page. */
function boxOf(runs: readonly Run[], { show, group }: Writer): Leads['box'] {
  const lefts = runs.map(({ x }) => x);
  const rights = runs.map(({ x, text, weight, size }) => x + show(text, weight).width * size);
  const bottoms = runs.map(({ y, size }) => y - DEPTH * size);
  const tops = runs.map(({ y, size }) => y + RISE * size);
  const [h, v] = [(x: number) => group.x + group.scale * x, (y: number) => group.y + group.scale * y];
  return [h(Math.min(...lefts)), v(Math.min(...bottoms)), h(Math.max(...rights)), v(Math.max(...tops))];
}

const short = (value: number): string => printShort(value, 3);
