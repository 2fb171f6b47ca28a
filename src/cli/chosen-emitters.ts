import type { Emitter } from '../emit/emitter.js';
import { EMITTERS } from '../emit/index.js';
import { itemsOf } from './arguments.js';
import type { Option } from './command.js';

/** Asks for every kind of file. */
const ALL = 'all';

const names = (emitters: readonly Emitter[]): readonly string[] => emitters.map(({ name }) => name);

const BY_DEFAULT = EMITTERS.filter(({ byDefault }) => byDefault);

export const EMIT: Option = {
  name: 'emit',
  value: 'LIST',
  choices: [...names(EMITTERS), ALL],
  many: true,
  meaning: `which kinds of file, with commas between, or ${ALL} (left out: ${names(BY_DEFAULT).join(',')})`,
};

/** The kinds of file and what each is, a line each, for the help. */
export const EMITTERS_LISTED = EMITTERS.map(({ name, summary }) => `  ${name.padEnd(10)} ${summary}`).join(
  '\n',
);

/** The kinds of file asked for, in the order of the table. */
export function chosenEmitters(list: string | null): readonly Emitter[] {
  const chosen = list === null ? names(BY_DEFAULT) : itemsOf(list);
  return EMITTERS.filter(({ name }) => chosen.includes(name) || chosen.includes(ALL));
}
