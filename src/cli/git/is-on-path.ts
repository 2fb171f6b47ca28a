import { delimiter, join } from 'node:path';
import type { Host } from '../../host/host.js';

/** Whether other programs find one on the PATH. Folders that a package runner adds for its own run do not count. */
export const isOnPath = (program: string, host: Host): boolean =>
  (host.env['PATH'] ?? '')
    .split(delimiter)
    .filter((folder) => folder !== '' && !/node_modules[\\/]\.bin$/.test(folder))
    .some((folder) => [program, `${program}.cmd`].some((name) => host.kind(join(folder, name)) === 'file'));
