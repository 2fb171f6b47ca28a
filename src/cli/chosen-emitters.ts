import type { Emitter } from '../emit/emitter.js';
import { EMITTERS } from '../emit/index.js';
import { nearest } from '../text/nearest.js';
import { visible } from '../text/visible.js';
import { didYouMean } from './words.js';

/** Asks for every kind of file. */
const ALL = 'all';

const listed = (emitters: readonly Emitter[]): string => emitters.map(({ name }) => name).join(',');

const BY_DEFAULT = EMITTERS.filter(({ byDefault }) => byDefault);

/** What `--emit` takes and what is written without it, in a line for the help. */
export const EMIT_MEANING = `which kinds of file, of those above, or ${ALL} (left out: ${listed(BY_DEFAULT)})`;

/** The kinds of file and what each is, a line each, for the help. */
export const EMITTERS_LISTED = EMITTERS.map(({ name, summary }) => `  ${name.padEnd(10)} ${summary}`).join(
  '\n',
);

/** The kinds of file asked for, in the order of the table; or what is wrong, in a sentence without a full stop. */
export function chosenEmitters(list: string | null): readonly Emitter[] | string {
  if (list === null) return BY_DEFAULT;
  const names = list.split(',').map((name) => name.trim());
  if (names.includes(ALL)) return EMITTERS;
  const unknown = names.find((name) => !EMITTERS.some((emitter) => emitter.name === name));
  if (unknown === undefined) return EMITTERS.filter(({ name }) => names.includes(name));
  const known = [...EMITTERS.map(({ name }) => name), ALL];
  return `\`--emit\` knows no \`${visible(unknown)}\`${didYouMean(nearest(unknown, known).slice(0, 1)) || `; it takes ${known.join(', ')}`}`;
}
