// Mutation tests of the rooms named, or of all that have them, one after another; ends with 1 where one falls below its threshold.
import { spawnSync } from 'node:child_process';

const ROOMS = ['measure', 'plane', 'rules', 'folding', 'diff'];

const named = process.argv.slice(2);
const below = (named.length > 0 ? named : ROOMS).filter((ROOM) => {
  const args = ['run', 'test/mutate/stryker.config.mjs'];
  return spawnSync('stryker', args, { stdio: 'inherit', env: { ...process.env, ROOM } }).status !== 0;
});
process.exitCode = below.length > 0 ? 1 : 0;
