import type { Difference } from './difference.js';
import { headWords } from './head-words.js';
import { code } from '../text/markdown.js';
import { type BatchChapter, type Chapter, type FindingRow, report } from './report.js';
import {
  FIGURE_HEADINGS,
  figureCells,
  SHARED_HEADINGS,
  sharedRows,
  WRITTEN_HEADINGS,
  writtenCells,
} from './cells.js';
import { atWords } from './where-words.js';

/** A difference to paste into a review: a heading and tables for each envelope. Nothing of a recipe's text is mark-up there. */
export function renderMarkdown(difference: Difference): string {
  const { summary, shared, envelopes, batches } = report(difference);
  const edits = table(
    SHARED_HEADINGS,
    shared.flatMap((block) => sharedRows(block, code)),
  );
  const blocks = [
    `**${summary}.**`,
    ...(edits.length === 0 ? [] : ['### Shared', ...edits]),
    ...envelopes.flatMap(chapterBlocks),
    ...batches.flatMap(batchBlocks),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function chapterBlocks(chapter: Chapter): readonly string[] {
  const { name, formerName, at, words, written, figures, findings } = chapter;
  const was = formerName === null ? '' : ` (was ${code(formerName)})`;
  return [
    `### ${code(name)}${was}: ${headWords(chapter).join(', ')}`,
    ...(at ? [code(atWords(at))] : []),
    words,
    ...table(
      WRITTEN_HEADINGS,
      written.map((row) => writtenCells(row, code)),
    ),
    ...table(FIGURE_HEADINGS, figures.map(figureCells)),
    ...list(findings.map(findingItem)),
  ];
}

const batchBlocks = ({ name, kind, at, written }: BatchChapter): readonly string[] => [
  `### Batch ${code(name)}: ${kind}`,
  code(atWords(at)),
  ...table(
    WRITTEN_HEADINGS,
    written.map((row) => writtenCells(row, code)),
  ),
];

const findingItem = ({ came, severity, rule, message }: FindingRow): string =>
  `${came ? 'new' : 'gone'}: ${severity} ${code(rule)}: ${code(message)}`;

const list = (items: readonly string[]): readonly string[] =>
  items.length === 0 ? [] : [items.map((item) => `- ${item}`).join('\n')];

const table = (headings: readonly string[], rows: readonly (readonly string[])[]): readonly string[] =>
  rows.length === 0
    ? []
    : [[headings, headings.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n')];
