import { sameLength } from '../measure/slack.js';
import type { Envelope } from '../recipe/recipe.js';
import { displaced, type Restated, type Statements, writtenName } from '../recipe/restate.js';
import type { Edit } from '../text/edit.js';
import type { Subject } from './rule.js';
import { read, writeCorners, writeLength, writeShape, writeSize } from './words.js';

/** Statements that were tried and serve, and the same as words: "write `seam: 1/2 in` instead of `blank`". */
export interface Offer {
  readonly text: string;
  /** The same as edits, where it only replaces values that the envelope itself states. */
  readonly edits: readonly Edit[] | null;
}

/** Words and edits for statements that serve; `after` is the envelope with them. */
export const offer = (subject: Subject, statements: Statements, after: Subject): Offer => ({
  text: inWords(subject, statements, after),
  edits: asEdits(subject.envelope, statements),
});

type Values = { readonly [Name in keyof Statements]-?: NonNullable<Statements[Name]> };

/** How each property's value is written in a recipe. */
const WRITTEN: { readonly [Name in keyof Values]: (envelope: Envelope, value: Values[Name]) => string } = {
  seam: writeLength,
  depth: writeLength,
  shift: writeLength,
  tape: writeLength,
  liner: (envelope, inset) => `inset ${writeLength(envelope, inset)}`,
  sealMark: writeLength,
  bottomMark: writeLength,
  sideMarks: (envelope, [left, right]) =>
    sameLength(left, right)
      ? writeLength(envelope, left)
      : `${writeLength(envelope, left)}, ${writeLength(envelope, right)}`,
  blank: (envelope, { width, height }) =>
    sameLength(width, height) ? writeLength(envelope, width) : writeSize(envelope, { width, height }),
  ease: (envelope, { width, height }) =>
    sameLength(width, height) ? writeLength(envelope, width) : writeSize(envelope, { width, height }),
  face: writeSize,
  flap: writeShape,
  bottom: writeShape,
  sides: writeShape,
  corners: (_, corners) => writeCorners(corners),
};

/** What a length comes to once it is no longer stated. */
const FOLLOWS: { readonly [Name in keyof Statements]?: (after: Subject) => number } = {
  blank: ({ facts }) => facts.blank.width,
  sealMark: ({ folding }) => folding.made.first.seal.alongEdge,
  bottomMark: ({ folding }) => folding.made.first.bottom.alongEdge,
  sideMarks: ({ folding }) => folding.made.first.left.alongEdge,
};

const namesIn = (statements: Statements): readonly Restated[] =>
  Object.keys(statements) as (keyof Statements)[];

/** The value that is to be stated, or null where the property is to be left out. */
const valueIn = <Name extends keyof Values>(statements: Statements, name: Name): Values[Name] | null =>
  (statements[name] ?? null) as Values[Name] | null;

/** A value as a recipe writes it. */
const written = <Name extends keyof Values>(envelope: Envelope, name: Name, value: Values[Name]): string =>
  WRITTEN[name](envelope, value);

function asEdits(envelope: Envelope, statements: Statements): readonly Edit[] | null {
  const edits = namesIn(statements).flatMap((name): readonly Edit[] => {
    const { origin } = envelope[name];
    const value = valueIn(statements, name);
    return origin.kind === 'written' && value !== null
      ? [{ span: origin.span, text: written(envelope, name, value) }]
      : [];
  });
  return edits.length === namesIn(statements).length ? edits : null;
}

/** "write `seam: 12 mm` instead of `blank`", "leave `blank` out (210 mm then follows)" */
function inWords({ envelope }: Subject, statements: Statements, after: Subject): string {
  const phrase = <Name extends Restated>(name: Name): string => {
    const value = valueIn(statements, name);
    const opening = `\`${writtenName(name)}`;
    if (value !== null) return `write ${opening}: ${written(envelope, name, value)}\``;
    const follows = FOLLOWS[name]?.(after);
    const then = follows === undefined ? '' : ` (${read(envelope, follows)} then follows)`;
    return envelope[name].origin.kind === 'inherited'
      ? `write ${opening}: default\`${then}`
      : `leave ${opening}\` out${then}`;
  };
  const replaced = displaced(envelope, statements);
  const instead = replaced.map((name) => `\`${writtenName(name)}\``).join(' and ');
  return `${namesIn(statements).map(phrase).join(' and ')}${instead && ` instead of ${instead}`}`;
}
