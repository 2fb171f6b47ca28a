import type { Host, Trouble } from './host.js';
import { findRepository, resolveCommit } from './repository.js';
import { filesOfCommit } from './tracked.js';
import { type View, view } from './view.js';

/** The machine with the repository as it was at a revision. */
export function revisionView(host: Host, revision: string): View | Trouble {
  const repository = findRepository(host);
  if (repository.kind === 'trouble') return repository;
  const commit = resolveCommit(host, revision);
  if (commit.kind === 'trouble') return commit;
  const files = filesOfCommit(host, commit.hash);
  return 'kind' in files ? files : view(host, repository.top, files);
}
