import type { FlapName } from '../../folding/folding.js';

/** `left`, `left and right`, `left, right and seal`. */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** Flaps by name, both side flaps in one word: `side and seal`. */
export function namedTogether(flaps: readonly FlapName[]): string {
  const others = flaps.filter((flap) => flap !== 'left' && flap !== 'right');
  return listed(flaps.length - others.length === 2 ? ['side', ...others] : flaps);
}

export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The sentences that apply, one after another. */
export const sentences = (...parts: readonly (string | false | null)[]): string =>
  parts.filter((part) => part).join(' ');

/** A text with its full stop, unless it has an end of its own. */
export const stopped = (text: string): string => (/[.!?:]$/.test(text) ? text : `${text}.`);
