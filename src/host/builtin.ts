import { createRequire } from 'node:module';
import { join } from 'node:path';

/** A module of Node itself, loaded where it is needed at once: a start without it is quicker. */
export const builtin = <Module>(name: `node:${string}`): Module =>
  createRequire(join(import.meta.dirname, 'builtin.js'))(name) as Module;
