import { isProperty } from '../recipe/properties.js';
import type { Envelope, Layer } from '../recipe/recipe.js';
import type { Changed, Place, SharedEdit, WrittenChange } from './difference.js';
import { byText } from '../text/by-text.js';
import { editKey } from './edit-key.js';
import { papersOf } from './statements.js';

/** Edits of styles and papers, each once with all the envelopes that it reaches; in order of their names. */
export function sharedEdits(changes: readonly Changed[]): readonly SharedEdit[] {
  const reached = new Map<string, { readonly edit: Edit; readonly reaches: string[] }>();
  for (const changed of changes) {
    for (const edit of editsOf(changed)) {
      const known = reached.get(edit.key);
      if (known) known.reaches.push(changed.name);
      else reached.set(edit.key, { edit, reaches: [changed.name] });
    }
  }
  return [...reached.values()]
    .map(({ edit, reaches }) => ({ change: edit.change, place: edit.place, reaches }))
    .sort((a, b) => byText(a.place.name, b.place.name));
}

interface Edit {
  /** The same for all envelopes that the edit reaches. */
  readonly key: string;
  readonly change: WrittenChange;
  readonly place: SharedEdit['place'];
}

/** What of an envelope's changes was edited in a block of another name. */
const editsOf = ({ before, after, written }: Changed): readonly Edit[] =>
  written.flatMap((change): readonly Edit[] => {
    const values = [change.before, change.after];
    const [place, ...others] = values.flatMap((value) => (value ? [value.place] : []));
    if (!place || place.kind === 'here' || others.some((other) => !samePlace(place, other))) return [];
    const [older, newer] = [blockAt(before.envelope, place), blockAt(after.envelope, place)];
    const edited =
      older && newer && [older, newer].every((block, side) => values[side] || !states(block, change));
    return edited ? [{ key: editKey(change), change, place }] : [];
  });

const samePlace = (one: Exclude<Place, { kind: 'here' }>, other: Place): boolean =>
  one.kind === other.kind && one.name === other.name;

/** What the block of that name states, where the envelope is worked out from it. */
const blockAt = (envelope: Envelope, { kind, name }: SharedEdit['place']): Layer | undefined =>
  kind === 'style'
    ? envelope.layers.find(({ from }) => from === name)
    : [...papersOf(envelope).values()]
        .flatMap((paper) => paper.layers.map((layer) => ({ ...layer, from: layer.from ?? paper.name })))
        .find(({ from }) => from === name);

/** Whether a block states something that does not hold, since something nearer takes its place. */
const states = ({ entries }: Layer, { property }: WrittenChange): boolean =>
  isProperty(property) && entries.has(property);
