import type { Host, Trouble } from './host.js';
import { findRepository } from './repository.js';
import { filesOfIndex } from './tracked.js';
import { type View, view } from './view.js';

/** The machine with the repository as the next commit would have it. */
export function indexView(host: Host): View | Trouble {
  const repository = findRepository(host);
  if (repository.kind === 'trouble') return repository;
  if (repository.isBare) return { kind: 'trouble', reason: 'in a bare repository nothing can be staged' };
  const files = filesOfIndex(host);
  return 'kind' in files ? files : view(host, repository.top, files);
}
