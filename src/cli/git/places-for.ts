import { basename, join } from 'node:path';
import type { Host } from '../../host/host.js';
import { findRepository } from '../../host/repository.js';
import { filesOfIndex, type Tracked } from '../../host/tracked.js';

/**
 * Where in the work tree a file belongs that git handed over: where it lies, if git knows it there. Else git has laid its
 * bytes beside the work tree, in a file named like it, or with seven characters before its name (before git 2.37, from
 * memory), and it may be any that is named so; those that are staged with the very bytes go first.
 */
export function placesFor(host: Host, file: string): readonly string[] {
  const repository = findRepository(host);
  const files = repository.kind === 'trouble' ? repository : filesOfIndex(host);
  if (repository.kind === 'trouble' || 'kind' in files) return [file];
  const placeOf = ({ path }: Tracked): string => join(repository.top, path);
  const here = host.realPath(file);
  if (files.some((each) => placeOf(each) === here)) return [file];
  const named = namedLike(basename(file), files);
  const places = [...new Set(sameBytes(host, file, named).map(placeOf))];
  return places.length === 0 ? [file] : places;
}

function namedLike(name: string, files: readonly Tracked[]): readonly Tracked[] {
  const named = (wanted: string) => files.filter(({ path }) => basename(path) === wanted);
  const exactly = named(name);
  return exactly.length > 0 ? exactly : named(name.slice('XXXXXX_'.length));
}

/** Of several, those that are staged with these bytes, if any are. */
function sameBytes(host: Host, file: string, files: readonly Tracked[]): readonly Tracked[] {
  if (files.length < 2) return files;
  const ran = host.git(['hash-object', '--no-filters', '--', file]);
  const id = ran.kind === 'ended' ? ran.out.toString('latin1').trim() : '';
  const same = files.filter((each) => each.id === id);
  return same.length > 0 ? same : files;
}
