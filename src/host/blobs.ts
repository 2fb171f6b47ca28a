import { whatGitSaid } from './git.js';
import type { Host, Read } from './host.js';

/** Reads contents that git keeps, by their ids. */
export type Blobs = (id: string, most: number) => Read;

/**
 * Reads contents when they are asked for. The first time, all that are `likely` to be asked for are read too, since a run of
 * git costs more than what it reads.
 */
export function blobs(host: Host, likely: readonly string[]): Blobs {
  const sizes = new Map<string, number>();
  const contents = new Map<string, Uint8Array>();

  return (id, most) => {
    if (!sizes.has(id)) measure(host, unknownOf(sizes, [...likely, id]), sizes);
    const size = sizes.get(id);
    if (size === undefined) return MISSING;
    if (size > most) return { kind: 'too-large', bytes: size };
    if (!contents.has(id)) {
      const fitting = [...likely, id].filter((each) => (sizes.get(each) ?? most + 1) <= most);
      for (const load of loadsOf(unknownOf(contents, fitting), sizes)) fetch(host, load, contents);
    }
    // A run ends at a damaged object: what came after it is asked for by itself.
    const err = contents.has(id) ? '' : fetch(host, [id], contents);
    const bytes = contents.get(id);
    return bytes === undefined ? { kind: 'unreadable', reason: err } : { kind: 'bytes', bytes };
  };
}

const MISSING: Read = { kind: 'unreadable', reason: 'its content is missing here, or damaged' };

const unknownOf = (known: ReadonlyMap<string, unknown>, ids: readonly string[]): readonly string[] => [
  ...new Set(ids.filter((id) => !known.has(id))),
];

/** The most that is read at once. In bytes. */
const LOAD = 64 * 1024 * 1024;

/** What is to be read, run by run. */
function loadsOf(ids: readonly string[], sizes: ReadonlyMap<string, number>): readonly (readonly string[])[] {
  const loads: string[][] = [];
  let filled = LOAD;
  for (const id of ids) {
    const size = sizes.get(id) ?? 0;
    if (filled + size > LOAD) {
      loads.push([]);
      filled = 0;
    }
    loads.at(-1)?.push(id);
    filled += size;
  }
  return loads;
}

function measure(host: Host, ids: readonly string[], sizes: Map<string, number>): void {
  const ran = host.git(['cat-file', '--batch-check'], lines(ids));
  if (ran.kind === 'trouble') return;
  const answers = ran.out.toString('latin1').split('\n');
  ids.forEach((id, index) => {
    const size = sizeIn(answers[index] ?? '');
    if (size !== null) sizes.set(id, size);
  });
}

/** Reads what git writes for each: its id, type and size, a line end, the content, a line end. Answers why some did not come. */
function fetch(host: Host, ids: readonly string[], contents: Map<string, Uint8Array>): string {
  const ran = host.git(['cat-file', '--batch'], lines(ids));
  if (ran.kind === 'trouble') return ran.reason;
  let at = 0;
  for (const id of ids) {
    const start = ran.out.indexOf('\n', at) + 1;
    const size = start === 0 ? null : sizeIn(ran.out.toString('latin1', at, start - 1));
    if (size === null || start + size >= ran.out.length) break;
    contents.set(id, ran.out.subarray(start, start + size));
    at = start + size + 1;
  }
  return whatGitSaid(ran.err);
}

const lines = (ids: readonly string[]): string => ids.map((id) => `${id}\n`).join('');

/** The size in `id type size`; null: it is missing, or no file. */
function sizeIn(answer: string): number | null {
  const [, size] = /^[0-9a-f]+ blob (\d+)$/.exec(answer) ?? [];
  return size === undefined ? null : Number(size);
}
