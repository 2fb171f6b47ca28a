import { code } from '../../text/markdown.js';
import type { Reading } from '../cut-sheet/content.js';
import { both } from '../cut-sheet/lengths.js';
import type { BookEmitter } from './book.js';
import type { Row } from './leaf.js';
import { MEASUREMENTS } from './measurement-columns.js';

const HEADINGS = ['Envelope', ...MEASUREMENTS.map(({ heading }) => heading)];

/** A book's table of measurements, section by section, for people who read recipes where they are kept. */
export const markdown: BookEmitter = async function* ({ book }, { advance }) {
  const { title, by, note, foreword, chapters, problems } = book;
  yield lines([
    `# ${code(title)}`,
    ...(by === null ? [] : ['', code(by)]),
    ...[...note, ...foreword].flatMap((text) => ['', code(text)]),
    '',
    'Marks are measured from their corner along the edge; the second is that of a box’s wall.',
  ]);
  for (const { title: section, rows } of chapters) {
    if (section !== null) yield lines(['', `## ${code(section)}`]);
    yield lines(['', cells(HEADINGS), cells(HEADINGS.map(() => '---'))]);
    for (const row of rows) {
      yield lines([cells(fieldsOf(row))]);
      advance();
    }
  }
  if (problems.length === 0) return;
  yield lines(['', '## Not in this book yet', '']);
  yield lines(
    problems.map(({ file, line, message, rule }) => `- ${code(`${file}:${line}`)} ${rule}: ${code(message)}`),
  );
};

const fieldsOf = (row: Row): readonly string[] => [
  row.title === row.name ? code(row.name) : `${code(row.title)}<br>${code(row.name)}`,
  ...MEASUREMENTS.map(({ heading, readings }) =>
    readings(row)
      .map((reading) => shown(heading, reading))
      .join('<br>'),
  ),
];

/** A paper's title is a text of the recipe's; all else is a figure. */
const shown = (heading: string, reading: Reading): string =>
  heading === 'Paper' ? code(reading.read) : reading.other === '' ? reading.read : both(reading);

const cells = (fields: readonly string[]): string => `| ${fields.join(' | ')} |`;

const lines = (all: readonly string[]): Uint8Array => Buffer.from(`${all.join('\n')}\n`);
