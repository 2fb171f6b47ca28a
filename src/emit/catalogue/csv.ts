import { takenAs } from '../json/post-facts.js';
import type { Reading } from '../cut-sheet/content.js';
import { lengths } from '../cut-sheet/lengths.js';
import { BYTE_ORDER_MARK, csvLine, type Field } from '../csv-line.js';
import type { BookEmitter } from './book.js';
import type { Leaf, Row } from './leaf.js';

interface Column {
  readonly name: string;
  readonly field: (row: Row, section: string | null, leaf: Leaf) => Field;
}

const plain = (name: string, field: Column['field']): Column => ({ name, field });

/** A length as the ruler reads it, and in mm. */
const length = (name: string, mm: (row: Row, leaf: Leaf) => number | null | undefined): readonly Column[] => [
  { name, field: (row, _, leaf) => readBy(row, mm(row, leaf), (say, value) => say.read(value)) },
  { name: `${name}_mm`, field: (row, _, leaf) => mm(row, leaf) },
];

const readBy = (
  { units, step }: Row,
  mm: number | null | undefined,
  read: (say: ReturnType<typeof lengths>, mm: number) => Reading,
): Field => (mm === null || mm === undefined ? null : read(lengths({ units, step }), mm).read);

/** The columns in their order; columns may be added at the end, and are never renamed. */
const COLUMNS: readonly Column[] = [
  plain('name', ({ name }) => name),
  plain('title', ({ title }) => title),
  plain('section', (_, section) => section),
  plain('file', ({ file }) => file),
  plain('line', ({ line }) => line),
  plain('tags', ({ tags }) => tags.join(' ')),
  ...length('card_width', ({ card }) => card.width),
  ...length('card_height', ({ card }) => card.height),
  ...length('card_bulk', ({ card }) => card.bulk),
  ...length('blank_width', ({ blank }) => blank.width),
  ...length('blank_height', ({ blank }) => blank.height),
  ...(['left', 'right', 'seal', 'bottom'] as const).flatMap((corner) => [
    ...length(`${corner}_mark`, ({ marks }) => marks[corner][0]),
    ...length(`${corner}_second_mark`, ({ marks }) => marks[corner][1]),
  ]),
  ...length('face_width', (_, { facts }) => facts.face.width),
  ...length('face_height', (_, { facts }) => facts.face.height),
  ...length('depth', ({ depth }) => depth),
  plain('room_width_mm', ({ room }) => room.width),
  plain('room_height_mm', ({ room }) => room.height),
  plain('room_depth_mm', ({ room }) => room.depth),
  plain('thickness_mm', (_, __, { facts }) => facts.thickness),
  plain('mass_g', (_, __, { facts }) => facts.mass),
  plain('tape_mm', (_, __, { facts }) => facts.tapeLength),
  plain('paper', ({ paper }) => paper?.title ?? null),
  plain('sheet_width_mm', ({ paper }) => paper?.sheet?.width),
  plain('sheet_height_mm', ({ paper }) => paper?.sheet?.height),
  plain('from_a_sheet', ({ paper }) => paper?.sheet?.copies ?? null),
  plain('warnings', ({ findings }) => findings.length),
  plain('post', ({ post }) => post.join(' ')),
  plain('post_taken_as', (_, __, { facts }) => takenAs(facts).join(' ')),
];

/** A book as a table for spreadsheets (RFC 4180): a line of names, then a line for each envelope. */
export const csv: BookEmitter = async function* ({ book, leaf }, { advance }) {
  yield Buffer.from(BYTE_ORDER_MARK + csvLine(COLUMNS.map(({ name }) => name)));
  for (const { title, rows } of book.chapters)
    for (const row of rows) {
      const made = leaf(row);
      yield Buffer.from(csvLine(COLUMNS.map(({ field }) => field(row, title, made))));
      advance();
    }
};
