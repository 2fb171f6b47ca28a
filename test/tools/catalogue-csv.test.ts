import { spawnSync } from 'node:child_process';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { csv } from '../../src/emit/catalogue/csv.js';
import { bookOf, MANY_KINDS, writtenBy } from '../support/book.js';

const READ = `import csv, io, json, sys
text = sys.stdin.buffer.read().decode("utf-8-sig")
print(json.dumps(list(csv.reader(io.StringIO(text, newline="")))))`;

test('another language’s own reader sees the same fields', async () => {
  const bytes = await writtenBy(csv, await bookOf(MANY_KINDS));
  const { status, stdout } = spawnSync('/usr/bin/python3', ['-c', READ], { input: bytes, encoding: 'utf8' });
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toEqual(parse(bytes, { bom: true, record_delimiter: '\r\n' }));
});
