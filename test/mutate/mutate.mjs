// Mutation tests of the rooms named, or of all that have them, one after another; ends with 1 where one falls below the threshold.
// See "Mutation testing" in DEVELOPERS.md.
import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { instrument } from './instrument.mjs';
import { told } from './report.mjs';
import { tryOut } from './try-out.mjs';

const ROOMS = ['measure', 'plane', 'rules', 'folding', 'diff'];

/** In 100: how many mutants of a room have to be noticed. */
const ENOUGH = 85;

const kept = join(tmpdir(), 'plica-mutants');
const named = process.argv.slice(2);

let below = false;
for (const room of named.length > 0 ? named : ROOMS) {
  const folder = join(kept, room);
  mkdirSync(folder, { recursive: true });
  const { files, mutants } = await instrument(`src/${room}`);
  writeFileSync(join(folder, 'files.json'), JSON.stringify(files));
  const started = Date.now();
  const { score, summary, survivors } = told(mutants, await tryOut(room, folder));
  const page = join(folder, 'not-noticed.txt');
  writeFileSync(page, survivors);
  const minutes = Math.ceil((Date.now() - started) / 60_000);
  process.stdout.write(`${room}: ${summary}, in ${minutes} min; those not noticed are in ${page}\n`);
  below ||= score < ENOUGH;
}
process.exitCode = below ? 1 : 0;
