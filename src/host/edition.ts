import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The hash of the built program; run from its sources it has none, and is taken for a new one every time. */
export function edition(): string {
  const place = join(import.meta.dirname, 'program.cjs');
  const program = existsSync(place) ? readFileSync(place) : `${process.pid} ${process.uptime()}`;
  return createHash('sha256').update(program).digest('hex');
}
