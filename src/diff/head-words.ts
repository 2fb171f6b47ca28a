import type { EnvelopeChange } from './difference.js';
import type { Chapter } from './report.js';

/** What became of an envelope in single words: `recut, wording`; `renamed`; `added`. */
export const headWords = ({ kind, consequences }: Chapter): readonly string[] => [
  ...(kind === 'changed' ? [] : [KIND_WORDS[kind]]),
  ...consequences.filter((consequence) => kind === 'changed' || consequence !== 'none'),
];

/** What became of an envelope other than a change. */
export const KIND_WORDS: Readonly<Record<Exclude<EnvelopeChange['kind'], 'changed'>, string>> = {
  renamed: 'renamed',
  added: 'added',
  removed: 'removed',
  unreadable: 'cannot be read',
};
