import { FACTS, type Kind, KINDS } from '../emit/kinds.js';
import { itemsOf } from './arguments.js';
import type { Option } from './command.js';

/** Asks for every kind of file. */
const ALL = 'all';

const ALL_KINDS: readonly Kind[] = Object.values(KINDS);

const names = (kinds: readonly Kind[]): readonly string[] => kinds.map(({ name }) => name);

const BY_DEFAULT = ALL_KINDS.filter(({ byDefault }) => byDefault);

export const EMIT: Option = {
  name: 'emit',
  value: 'LIST',
  choices: [...names(ALL_KINDS), ALL],
  many: true,
  meaning: `which kinds of file, with commas between, or ${ALL} (left out: ${names(BY_DEFAULT).join(',')})`,
};

/** The same, and facts of whole recipe files, which are for no reader and so no part of all. */
export const EMIT_OR_FACTS: Option = { ...EMIT, choices: [...names(ALL_KINDS), FACTS.name, ALL] };

/** The kinds of file and what each is, a line each, for the help. */
export const KINDS_LISTED = [...ALL_KINDS, FACTS]
  .map(({ name, summary }) => `  ${name.padEnd(10)} ${summary}`)
  .join('\n');

/** The names of the kinds of file asked for. */
export function chosenKinds(list: string | null): ReadonlySet<string> {
  const chosen = list === null ? names(BY_DEFAULT) : itemsOf(list);
  return new Set(chosen.flatMap((name) => (name === ALL ? names(ALL_KINDS) : [name])));
}
