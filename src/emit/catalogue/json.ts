import { jsonText } from '../../text/json-text.js';
import { recipeFacts } from '../json/render-facts.js';
import type { BookEmitter } from './book.js';

/** A book as facts JSON: what it is called and how it is ordered, then every recipe as `show --format json` has it. */
export const json: BookEmitter = async function* ({ book, leaf }, { advance }) {
  const { title, by, note, foreword, page, chapters, problems } = book;
  const sections = chapters.map(({ title: name, rows }) => ({
    title: name,
    recipes: rows.map((row) => row.name),
  }));
  const head = {
    format: 'plica-facts',
    version: 1,
    catalogue: { title, by, note, foreword, page, sections },
  };
  yield bytes(`${jsonText(head, 2).slice(0, -2)},\n  "recipes": [`);
  let first = true;
  for (const { rows } of chapters)
    for (const row of rows) {
      yield bytes(`${first ? '' : ','}\n${indented(recipeFacts(row, leaf(row).facts), 4)}`);
      first = false;
      advance();
    }
  yield bytes(`\n  ],\n${indented(problems, 2, '"problems": ')}\n}\n`);
};

const bytes = (text: string): Uint8Array => Buffer.from(text);

/** A value as JSON, so far in. */
const indented = (value: unknown, spaces: number, before = ''): string => {
  const space = ' '.repeat(spaces);
  return space + before + jsonText(value, 2).replaceAll('\n', `\n${space}`);
};
