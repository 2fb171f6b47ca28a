import type { Host } from '../../host/host.js';
import { findRepository } from '../../host/repository.js';
import { visible } from '../../text/visible.js';
import { type Command, complain, type ExitCode } from '../command.js';
import { isOnPath } from '../git/is-on-path.js';

export const gitSetup: Command = {
  name: 'git-setup',
  operands: '',
  takes: [0, 0],
  summary: 'tell git of recipes, so that its own diffs show what comes of them on paper',
  details: `Adds a line to the repository's .gitattributes, by which git knows recipes, and prints the
settings by which it compares their figures too: in git diff, git log -p, git show. They
are yours alone, so each person sets them: by hand, or with --apply.

With --external, \`git diff\` itself tells what changed, as \`plica diff\` does, in the place
of the lines (\`git diff --no-ext-diff\` still shows those). With --remove, the line and
the settings are taken away; what somebody else has set is left.`,
  example: 'plica git-setup --apply',
  options: [
    { name: 'apply', value: null, meaning: 'set the settings in this repository' },
    { name: 'remove', value: null, meaning: 'take away the line, and the settings' },
    { name: 'external', value: null, meaning: 'let `git diff` tell what changed, in the place of the lines' },
    {
      name: 'program',
      value: 'COMMAND',
      meaning: 'how git is to call plica (left out: plica), as a shell would: `npx plica`',
    },
  ],
  run: async (given, host) => {
    const others = ['apply', 'external', 'program'].filter(given.has);
    if (given.has('remove') && others.length > 0)
      return refuse(host, '`--remove` takes away all that was set up; leave its other options out');
    if (given.has('apply') && !given.has('program') && !isOnPath('plica', host))
      return refuse(host, NOT_FOUND);
    const repository = findRepository(host);
    if (repository.kind === 'trouble') return refuse(host, repository.reason);
    if (repository.isBare) return refuse(host, 'a bare repository has no files for git to know recipes by');
    const { changeAttributes } = await import('../git/git-attributes.js');
    const { set, settings, unsetAll } = await import('../git/git-settings.js');
    const wanted = settings(given.value('program') ?? 'plica', given.has('external'));
    const outcomes = [
      changeAttributes(given.has('remove') ? 'remove' : 'add', repository, host),
      ...(given.has('remove') ? unsetAll(host) : []),
      ...(given.has('apply') ? wanted.map((setting) => set(setting, host)) : []),
    ];
    for (const outcome of outcomes) {
      if (outcome.kind === 'done') host.out.write(`${outcome.said}\n`);
      else complain(host, outcome.reason);
    }
    if (!given.has('remove') && !given.has('apply')) host.out.write(byHand(wanted));
    return outcomes.some(({ kind }) => kind === 'trouble') ? 2 : 0;
  },
};

/** Then every diff of a recipe would fail. */
const NOT_FOUND = "git would not find `plica` on the PATH; say how to call it, as in `--program 'npx plica'`";

function refuse(host: Host, reason: string): ExitCode {
  complain(host, reason);
  return 2;
}

/** The settings as a shell takes them. */
const byHand = (settings: readonly { readonly key: string; readonly value: string }[]): string =>
  `these settings are left to you, or to \`plica git-setup --apply\`:\n${settings
    .map(({ key, value }) => `  git config ${key} '${visible(value.replaceAll("'", `'\\''`))}'\n`)
    .join('')}`;
