import { blobs } from './blobs.js';
import type { Host, Trouble } from './host.js';
import { filesOfCommit, type Tracked } from './tracked.js';
import { likelyRead, type View, view } from './view.js';

/** The repository as it was at one of several commits. */
export type RevisionViews = (hash: string) => View | Trouble;

/**
 * Views of commits that are looked at about in this order: what some are likely to read is read for all of them at once. Those
 * left far behind are forgotten.
 */
export function revisionViews(host: Host, top: string, hashes: readonly string[]): RevisionViews {
  const places = new Map(hashes.map((hash, index) => [hash, index]));
  const views = new Map<string, View | Trouble>();

  return (hash) => {
    const known = views.get(hash);
    if (known) return known;
    const from = places.get(hash) ?? 0;
    for (const old of views.keys()) if ((places.get(old) ?? 0) < from - AT_ONCE) views.delete(old);
    const next = hashes.slice(from, from + AT_ONCE).filter((each) => !views.has(each));
    for (const [each, made] of viewsOf(host, top, next)) views.set(each, made);
    return views.get(hash) as View | Trouble;
  };
}

/** Runs of git cost more than what they read; a person waits for the first. */
const AT_ONCE = 32;

function viewsOf(
  host: Host,
  top: string,
  hashes: readonly string[],
): readonly (readonly [hash: string, view: View | Trouble])[] {
  const listed = hashes.map((hash) => [hash, filesOfCommit(host, hash)] as const);
  const files = listed.flatMap(([, each]) => (isListing(each) ? likelyRead(each) : []));
  const contents = blobs(host, [...new Set(files)]);
  return listed.map(([hash, each]) => [
    hash,
    isListing(each) ? view(host, top, needed(each), contents) : each,
  ]);
}

/** A recipe uses only recipes; a link may lead anywhere. */
const needed = (files: readonly Tracked[]): readonly Tracked[] =>
  files.some(({ kind }) => kind === 'link')
    ? files
    : files.filter(({ kind, path }) => kind !== 'file' || path.endsWith('.plica'));

const isListing = (files: readonly Tracked[] | Trouble): files is readonly Tracked[] => !('kind' in files);
