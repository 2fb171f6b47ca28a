import { dirname, join } from 'node:path';
import type { Host } from './host.js';

/**
 * The folder that `use` never leaves: the nearest upwards with a `.git` (folder or file), else the nearest with a
 * `catalogue.plica`, else `otherwise`. Both are real paths.
 */
export const projectRoot = (host: Host, folder: string, otherwise: string): string =>
  nearestWith(host, folder, '.git') ?? nearestWith(host, folder, 'catalogue.plica') ?? otherwise;

function nearestWith(host: Host, folder: string, name: string): string | null {
  for (let at = folder; ; at = dirname(at)) {
    if (host.kind(join(at, name)) !== 'missing') return at;
    if (dirname(at) === at) return null;
  }
}
