import type { Host } from './host.js';

/** Whether the clone is shallow and ends at this commit: it has parents that are not here. */
export function isCutOff(host: Host, hash: string): boolean {
  const [stated, followed] = [
    ['cat-file', 'commit', hash],
    [...PARENTS, hash],
  ].map((args) => {
    const ran = host.git(args);
    return ran.kind === 'ended' ? ran.out.toString('latin1') : '';
  });
  return /^tree .*\nparent /.test(stated ?? '') && followed?.trim() === hash;
}

/** A commit and its parents in a line. */
const PARENTS = ['rev-list', '--parents', '--max-count=1'] as const;
