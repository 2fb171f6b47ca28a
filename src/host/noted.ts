import { join } from 'node:path';
import type { Host } from './host.js';

/** A machine that remembers which files were read and which were written, by their paths. */
export interface Noted {
  readonly host: Host;
  readonly read: ReadonlySet<string>;
  readonly written: ReadonlySet<string>;
}

export function noted(host: Host): Noted {
  const read = new Set<string>();
  const written = new Set<string>();
  return {
    read,
    written,
    host: {
      ...host,
      read: (path, most) => {
        const result = host.read(path, most);
        if (result.kind === 'bytes') read.add(path);
        return result;
      },
      write: (folder, files) => {
        const result = host.write(folder, files);
        if (result.kind === 'written') for (const { name } of files) written.add(join(folder, name));
        return result;
      },
    },
  };
}
