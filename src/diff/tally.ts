import {
  type BatchChange,
  CONSEQUENCES,
  type Consequence,
  type Difference,
  type EnvelopeChange,
} from './difference.js';
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

/** `3 envelopes changed: 1 recut, 2 wording; 1 added`; `Nothing changed` where nothing did; and whether there may be more. */
export function tallyWords(difference: Difference): string {
  const { kinds, consequences } = tally(difference);
  const counted = KINDS.filter((kind) => kinds[kind] > 0).map((kind, index) => {
    const noun = index > 0 ? '' : kinds[kind] === 1 ? ' envelope' : ' envelopes';
    return `${kinds[kind]}${noun} ${kind === 'changed' ? `changed: ${asked(consequences)}` : KIND_WORDS[kind]}`;
  });
  counted.push(...batchWords(difference.batches ?? []));
  if (counted.length === 0) return `Nothing changed${difference.isPartial ? ' in what could be read' : ''}`;
  return [
    ...counted,
    ...(difference.isPartial && kinds.unreadable === 0 ? ['not all could be read'] : []),
  ].join('; ');
}

/** `1 batch changed` */
const batchWords = (batches: readonly BatchChange[]): readonly string[] =>
  (['changed', 'added', 'removed'] as const).flatMap((kind) => {
    const { length } = batches.filter((batch) => batch.kind === kind);
    return length > 0 ? [`${length} ${length === 1 ? 'batch' : 'batches'} ${kind}`] : [];
  });

const KINDS = ['changed', 'renamed', 'added', 'removed', 'unreadable'] as const;

const asked = (counts: Tally['consequences']): string =>
  CONSEQUENCES.filter((name) => counts[name] > 0)
    .map((name) => `${counts[name]} ${name}`)
    .join(', ');
