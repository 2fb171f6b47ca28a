import type { Difference, EnvelopeChange } from '../../diff/difference.js';
import { nearest } from '../../text/nearest.js';
import { visible } from '../../text/visible.js';
import type { CompiledSides } from './compile-sides.js';
import { didYouMean } from '../words.js';

/** The part of a difference that is about one envelope, by either of its names. */
export function ofEnvelope(name: string, { changes, shared }: Difference): Difference {
  const its = changes.filter((change) => namesOf(change).includes(name));
  const reached = its.map((change) => change.name);
  return {
    changes: its,
    shared: shared.filter(({ reaches }) => reaches.some((each) => reached.includes(each))),
  };
}

const namesOf = (change: EnvelopeChange): readonly string[] =>
  change.kind === 'renamed' ? [change.name, change.before.envelope.name] : [change.name];

/** What there is to say of a name that neither side has; null where one of them has it. */
export function noSuchEnvelope(name: string, { before, after }: CompiledSides): string | null {
  const names = [before, after].flatMap(({ recipes }) => recipes.map(({ envelope }) => envelope.name));
  if (names.includes(name)) return null;
  return `no envelope \`${visible(name)}\` could be read on either side${didYouMean(nearest(name, names))}`;
}
