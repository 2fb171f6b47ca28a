import type { FigureRow } from './figure-rows.js';
import type { SharedBlock, Spelling, WrittenRow } from './report.js';
import { whereWords } from './where-words.js';

/** Sets a text of a recipe so that nothing in it is mark-up. */
export type SetText = (text: string) => string;

/* The tables of a difference: their headings, and each row's cells. */

export const WRITTEN_HEADINGS = ['Written', 'Before', 'After', 'Where'] as const;

export const writtenCells = (
  { property, before, after, where }: WrittenRow,
  set: SetText,
): readonly string[] => [
  set(property),
  spelled(before, set),
  spelled(after, set),
  where.map((each) => whereWords(each, set)).join('; '),
];

export const SHARED_HEADINGS = [...WRITTEN_HEADINGS, 'Reaches'] as const;

export const sharedRows = ({ written, reaches }: SharedBlock, set: SetText): readonly (readonly string[])[] =>
  written.map((row) => [...writtenCells(row, set), reaches.map(set).join(', ')]);

export const FIGURE_HEADINGS = ['On paper', 'Before', 'After', 'Difference'] as const;

export const figureCells = ({ words, before, after, difference }: FigureRow): readonly string[] => [
  words,
  before,
  after,
  difference,
];

/** A value as it is written, what it comes to in brackets. */
export const spelled = (value: Spelling | null, set: SetText): string =>
  value === null
    ? 'left out'
    : `${set(value.text)}${value.reading === null ? '' : ` (${set(value.reading)})`}`;
