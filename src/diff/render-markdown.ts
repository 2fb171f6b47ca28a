import type { Difference } from './difference.js';
import { headWords } from './head-words.js';
import { code } from './markdown-text.js';
import { type Chapter, report, type SharedRow, type Spelling, type WrittenRow } from './report.js';
import { atWords, whereWords } from './where-words.js';

/** A difference to paste into a review: a heading and tables for each envelope. Nothing of a recipe's text is mark-up there. */
export function renderMarkdown(difference: Difference): string {
  const { summary, shared, envelopes } = report(difference);
  const blocks = [`**${summary}.**`, ...sharedBlocks(shared), ...envelopes.flatMap(chapterBlocks)];
  return `${blocks.join('\n\n')}\n`;
}

const sharedBlocks = (rows: readonly SharedRow[]): readonly string[] =>
  rows.length === 0
    ? []
    : [
        '### Shared',
        table(
          ['Written', 'Before', 'After', 'Where', 'Reaches'],
          rows.map(({ written, reaches }) => [
            ...writtenCells(written),
            reaches.length === 0 ? 'no envelope' : reaches.map(code).join(', '),
          ]),
        ),
      ];

function chapterBlocks(chapter: Chapter): readonly string[] {
  const { name, formerName, at, written, figures, findings } = chapter;
  const was = formerName === null ? '' : ` (was ${code(formerName)})`;
  return [
    `### ${code(name)}${was}: ${headWords(chapter).join(', ')}`,
    ...(at ? [code(atWords(at))] : []),
    chapter.words,
    ...(written.length === 0
      ? []
      : [table(['Written', 'Before', 'After', 'Where'], written.map(writtenCells))]),
    ...(figures.length === 0
      ? []
      : [
          table(
            ['On paper', 'Before', 'After', 'Difference'],
            figures.map(({ words, before, after, difference }) => [words, before, after, difference]),
          ),
        ]),
    ...(findings.length === 0
      ? []
      : [
          findings
            .map(
              ({ came, severity, rule, message }) =>
                `- ${came ? 'new' : 'gone'}: ${severity} ${code(rule)}: ${code(message)}`,
            )
            .join('\n'),
        ]),
  ];
}

const writtenCells = ({ property, before, after, where }: WrittenRow): readonly string[] => [
  code(property),
  spelled(before),
  spelled(after),
  where.map((each) => whereWords(each, code)).join('; '),
];

const spelled = (value: Spelling | null): string =>
  value === null
    ? 'left out'
    : `${code(value.text)}${value.reading === null ? '' : ` (${code(value.reading)})`}`;

const table = (headings: readonly string[], rows: readonly (readonly string[])[]): string =>
  [headings, headings.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
