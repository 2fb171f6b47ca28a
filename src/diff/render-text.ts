import { type Palette, plain } from '../diagnostics/render-text.js';
import { visible } from '../text/visible.js';
import { columnsOf } from '../text/width.js';
import { wrap } from '../text/wrap.js';
import { reachesPaper } from './consequence-words.js';
import type { Difference } from './difference.js';
import type { FigureRow } from './figure-rows.js';
import { headWords } from './head-words.js';
import {
  type BatchChapter,
  type Chapter,
  type FindingRow,
  report,
  type SharedBlock,
  type WrittenRow,
} from './report.js';
import { atWords, placeWords, whereWords } from './where-words.js';
import { spelled } from './cells.js';

/**
 * A difference for people: what is shared first, then envelope by envelope what follows, what was written, what came out on
 * paper and what was found; last how many. Lines of at most `width` columns, but for a name that is longer by itself.
 * Characters that could move a cursor or turn a line round are spelled out.
 */
export function renderText(difference: Difference, palette: Palette = plain, width = 80): string {
  const page: Page = { palette, width };
  const { summary, shared, envelopes, batches } = report(difference);
  const blocks = [
    ...shared.map((block) => sharedLines(block, page)),
    ...envelopes.map((chapter) => chapterLines(chapter, page)),
    ...batches.map((batch) => batchLines(batch, page)),
    [palette.strong(summary)],
  ];
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

export interface Page {
  readonly palette: Palette;
  readonly width: number;
}

const INDENT = '  ';
const GAP = '  ';

function sharedLines({ place, written, reaches }: SharedBlock, page: Page): readonly string[] {
  const names = reaches.map(visible).join(', ');
  return [
    page.palette.strong(`shared: ${placeWords(place, visible)}`),
    ...paragraph(`Reaches ${names}.`, page),
    ...section('written', writtenLines(written, page)),
  ];
}

/** What became of one envelope, its name first. `plica log` tells it commit by commit. */
export function chapterLines(chapter: Chapter, page: Page): readonly string[] {
  return [
    headLine(chapter, page.palette),
    ...(chapter.at ? [`${INDENT}${page.palette.faint(visible(atWords(chapter.at)))}`] : []),
    ...paragraph(chapter.words, page),
    ...section('written', writtenLines(chapter.written, page)),
    ...section('on paper', figureLines(chapter.figures, page)),
    ...section(
      'findings',
      chapter.findings.flatMap((finding) => findingLines(finding, page)),
    ),
  ];
}

function batchLines({ name, kind, at, written }: BatchChapter, page: Page): readonly string[] {
  const { strong, note: paint, faint } = page.palette;
  return [
    `${strong(`batch ${visible(name)}:`)} ${paint(kind)}`,
    `${INDENT}${faint(visible(atWords(at)))}`,
    ...section('written', writtenLines(written, page)),
  ];
}

/** `half-letter: recut, wording`, `ebb (was slim-ebb): renamed`. */
function headLine(chapter: Chapter, palette: Palette): string {
  const { name, formerName, kind, consequences } = chapter;
  const was = formerName === null ? '' : ` (was ${visible(formerName)})`;
  const paint = consequences.some(reachesPaper) ? palette.warning : KIND_PAINTS[kind](palette);
  return `${palette.strong(`${visible(name)}${was}:`)} ${headWords(chapter).map(paint).join(', ')}`;
}

const note = (palette: Palette): Palette['note'] => palette.note;

const KIND_PAINTS: Readonly<Record<Chapter['kind'], (palette: Palette) => Palette['note']>> = {
  changed: note,
  renamed: note,
  added: note,
  removed: ({ warning }) => warning,
  unreadable: ({ error }) => error,
};

const section = (heading: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [`${INDENT}${heading}`, ...lines.map((line) => INDENT.repeat(2) + line)];

const paragraph = (text: string, { width }: Page): readonly string[] =>
  wrap(text, width - INDENT.length, columnsOf).map((line) => INDENT + line);

/** A statement to a line, the properties in a column; where it stands beside it, or beneath where that would run over. */
function writtenLines(rows: readonly WrittenRow[], { palette, width }: Page): readonly string[] {
  const column = widest(rows.map(({ property }) => visible(property))) + GAP.length;
  const room = width - 2 * INDENT.length;
  return rows.flatMap((row) => {
    const values = wrap(change(row), Math.max(NARROWEST, room - column), columnsOf);
    const where = row.where.map((each) => whereWords(each, visible));
    const label = padded(visible(row.property), column);
    const lines = values.map((line, index) => (index === 0 ? label : ' '.repeat(column)) + line);
    const [only, ...more] = [lines.at(-1) ?? '', ...where.slice(0, -1)];
    const beside = `${only}${GAP}${where.at(-1) ?? ''}`;
    return more.length === 0 && lines.length === 1 && columnsOf(beside) <= room
      ? [`${only}${GAP}${palette.faint(where.at(-1) ?? '')}`]
      : [...lines, ...where.map((words) => ' '.repeat(column) + palette.faint(words))];
  });
}

/** A column of words is never set narrower, however narrow the terminal. */
const NARROWEST = 12;

const change = ({ before, after }: WrittenRow): string =>
  `${spelled(before, visible)} → ${spelled(after, visible)}`;

/** Words, old and new readings and their difference in columns. */
function figureLines(rows: readonly FigureRow[], { palette }: Page): readonly string[] {
  const columns = {
    words: widest(rows.map(({ words }) => words)),
    before: widest(rows.map(({ before }) => before)),
    after: widest(rows.map(({ after }) => after)),
  };
  return rows.map(({ words, before, after, difference }) =>
    [
      padded(words, columns.words),
      `${' '.repeat(columns.before - columnsOf(before))}${before} → ${palette.strong(padded(after, difference === '' ? 0 : columns.after))}`,
      ...(difference === '' ? [] : [palette.faint(difference)]),
    ].join(GAP),
  );
}

/** The rule and its sentence, which hangs beneath the words before it. */
function findingLines(
  { came, severity, rule, message }: FindingRow,
  { palette, width }: Page,
): readonly string[] {
  const when = came ? 'new ' : 'gone';
  const head = `${severity}[${rule}]: `;
  const [first = '', ...others] = wrap(
    `${head}${visible(message)}`,
    width - 2 * INDENT.length - when.length - GAP.length,
    columnsOf,
  );
  const paint = came ? palette[severity] : palette.faint;
  return [
    `${when}${GAP}${paint(head.trimEnd())}${first.slice(head.trimEnd().length)}`,
    ...others.map((line) => ' '.repeat(when.length) + GAP + line),
  ];
}

const widest = (texts: readonly string[]): number => Math.max(0, ...texts.map(columnsOf));

const padded = (text: string, width: number): string =>
  text + ' '.repeat(Math.max(0, width - columnsOf(text)));
