import { whatGitSaid } from '../../host/git.js';
import type { Host, Trouble } from '../../host/host.js';
import { visible } from '../../text/visible.js';
import type { Done } from './git-attributes.js';

/** A setting of a repository. */
export interface Setting {
  readonly key: string;
  readonly value: string;
}

/** How git is to call plica: `program` as a shell finds it. `external`: for `git diff` in the place of the lines too. */
export const settings = (program: string, external: boolean): readonly Setting[] =>
  KINDS.filter(({ isExtra }) => external || !isExtra).map(({ key, ending }) => ({
    key,
    value: key === HEADINGS ? ending : `${program} ${ending}`,
  }));

/** Sets it, unless somebody has set it to something else. */
export function set({ key, value }: Setting, host: Host): Done | Trouble {
  const before = valueOf(key, host);
  if ('kind' in before) return before;
  if (before.value === value) return done(`${key} is set already`);
  if (before.value !== null && !isOurs(key, before.value)) return trouble(`${leftAs(key, before.value)}`);
  return change(['--replace-all', key, value], `set ${key}`, host);
}

/** Takes away all that may have been set, but nothing that somebody else has set. */
export const unsetAll = (host: Host): readonly (Done | Trouble)[] => KINDS.map(({ key }) => unset(key, host));

function unset(key: string, host: Host): Done | Trouble {
  const before = valueOf(key, host);
  if ('kind' in before) return before;
  if (before.value === null) return done(`${key} is not set`);
  if (!isOurs(key, before.value)) return done(leftAs(key, before.value));
  return change(['--unset-all', key], `unset ${key}`, host);
}

const HEADINGS = 'diff.plica.xfuncname';

/** How the value of each begins or ends, by which ours are known. A name that looks like an option follows `--`. */
const KINDS = [
  { key: 'diff.plica.textconv', ending: 'git-text --', isExtra: false },
  { key: 'diff.plica.command', ending: 'git-diff --', isExtra: true },
  // The line that git writes at the head of a hunk: a block's first, or the one above the figures.
  { key: HEADINGS, ending: '^[[:blank:]]*((envelope|style|paper)[[:blank:]].*|# on paper)$', isExtra: false },
] as const;

const isOurs = (key: string, value: string): boolean =>
  KINDS.some((kind) => kind.key === key && value.endsWith(kind.ending));

const leftAs = (key: string, value: string): string =>
  `left ${key} as it is: somebody set it to \`${visible(value)}\``;

/** The value in the repository's own settings; of several, all. */
function valueOf(key: string, host: Host): { readonly value: string | null } | Trouble {
  const ran = host.git(['config', '--local', '-z', '--get-all', key]);
  if (ran.kind === 'trouble') return ran;
  if (ran.code > 1) return trouble(whatGitSaid(ran.err));
  return { value: ran.code === 1 ? null : ran.out.toString('utf8').replace(/\0$/, '') };
}

function change(args: readonly string[], said: string, host: Host): Done | Trouble {
  const ran = host.git(['config', '--local', ...args]);
  if (ran.kind === 'trouble') return ran;
  return ran.code === 0 ? done(said) : trouble(whatGitSaid(ran.err));
}

const done = (said: string): Done => ({ kind: 'done', said });
const trouble = (reason: string): Trouble => ({ kind: 'trouble', reason });
