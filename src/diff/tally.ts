import { CONSEQUENCES, type Consequence, type Difference, type EnvelopeChange } from './difference.js';
import { KIND_WORDS } from './head-words.js';

/** How many envelopes changed in each way, and what the changed ones ask for at most. */
export interface Tally {
  readonly kinds: Readonly<Record<EnvelopeChange['kind'], number>>;
  readonly consequences: Readonly<Record<Consequence, number>>;
}

export function tally({ changes }: Difference): Tally {
  const kinds = { changed: 0, renamed: 0, added: 0, removed: 0, unreadable: 0 };
  const consequences = Object.fromEntries(CONSEQUENCES.map((name) => [name, 0])) as Record<
    Consequence,
    number
  >;
  for (const change of changes) {
    kinds[change.kind]++;
    if (change.kind === 'changed') consequences[change.consequences[0] ?? 'none']++;
  }
  return { kinds, consequences };
}

/** `3 envelopes changed: 1 recut, 2 wording; 1 added`; `Nothing changed` where nothing did. */
export function tallyWords(difference: Difference): string {
  const { kinds, consequences } = tally(difference);
  if (difference.changes.length === 0 && difference.shared.length === 0) return 'Nothing changed';
  const asked = CONSEQUENCES.filter((name) => consequences[name] > 0).map(
    (name) => `${consequences[name]} ${name}`,
  );
  const others = (['renamed', 'added', 'removed', 'unreadable'] as const)
    .filter((kind) => kinds[kind] > 0)
    .map((kind) => `${kinds[kind]} ${KIND_WORDS[kind]}`);
  const changed = `${kinds.changed === 0 ? 'no' : kinds.changed} envelope${kinds.changed === 1 ? '' : 's'} changed`;
  return [asked.length > 0 ? `${changed}: ${asked.join(', ')}` : changed, ...others].join('; ');
}
