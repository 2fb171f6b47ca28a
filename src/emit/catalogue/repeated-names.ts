import type { Found } from '../json/found.js';
import type { FileLeaves } from './leaf.js';

/** Envelopes whose name another file has too: the first in the order of the folder keeps it. */
export function repeatedNames(files: readonly FileLeaves[]): readonly Found[] {
  const first = new Map<string, string>();
  return files.flatMap(({ file, names }) =>
    names.flatMap(({ name, line, column }): readonly Found[] => {
      const earlier = first.get(name);
      if (earlier === undefined) {
        first.set(name, `${file}:${line}`);
        return [];
      }
      return [
        {
          rule: 'repeated',
          severity: 'error',
          message: `\`${name}\` is declared twice`,
          why: `it is declared at ${earlier} too, and each envelope of a catalogue has a name of its own`,
          help: 'give one of them another name, or remove it',
          file,
          line,
          column,
        },
      ];
    }),
  );
}
