import { expect, test } from 'vitest';
import { chunks } from '../../../src/emit/catalogue/pdf/chunks.js';

test('a book is handed on whole, also where the stream gives it out a part at a time', () => {
  const parts = ['tide', 'tables', 'sewn'].map((part) => Buffer.from(part));
  const stream = { read: () => parts.shift() ?? null };
  expect([...chunks(stream)].join(' ')).toBe('tide tables sewn');
  expect([...chunks(stream)]).toEqual([]);
});
