// A folder of ten thousand envelopes in files of ten, checked by a whole process.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { median, table, wholeProcess } from './measure.mjs';
import { recipes } from './texts.mjs';

const FILES = 1000;
const ENVELOPES = FILES * 10;
const RUNS = 3;

export function folder() {
  const place = mkdtempSync(join(tmpdir(), 'plica-bench-'));
  for (let file = 0; file < FILES; file++) {
    const text = recipes(10).replaceAll('tide-card', `card-${file}`).replaceAll('house', `house-${file}`);
    writeFileSync(join(place, `${file}.plica`), text);
  }
  const runs = Array.from({ length: RUNS }, () => wholeProcess(place, 'check', '.'));
  rmSync(place, { recursive: true });
  const seconds = median(runs.map((run) => run.seconds));
  const megabytes = median(runs.map((run) => run.megabytes));
  table(
    [`whole process, median of ${RUNS}`, 's', 'envelopes/s', 'peak memory, MB'],
    [[`plica check, ${ENVELOPES} envelopes in files of ten`, seconds.toFixed(1), Math.round(ENVELOPES / seconds), Math.round(megabytes)]],
  );
}
