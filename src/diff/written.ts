import { PROPERTIES, type PropertyName } from '../recipe/properties.js';
import type { Envelope, Paper } from '../recipe/recipe.js';
import type { Units } from '../measure/unit.js';
import type { WrittenChange } from './difference.js';
import { editKey } from './edit-key.js';
import { expectsThatDiffer, postExpectsThatDiffer } from './expects.js';
import { readingOf } from './reading.js';
import { sameValue } from './same-value.js';
import { envelopeStatements, papersOf, paperStatements, type Statements } from './statements.js';
import { writtenChange } from './written-change.js';

/** The statements that hold for an envelope and come to something else: its own, its papers', and what it expects. */
export const written = (before: Envelope, after: Envelope): readonly WrittenChange[] => [
  ...otherUnits(before, after),
  ...statementsThatDiffer(envelopeStatements(before), envelopeStatements(after), before.units, after.units),
  ...otherPapers(before, after),
  ...expectsThatDiffer(before, after),
  ...postExpectsThatDiffer(before, after),
];

/** The statements of two blocks that come to something else. */
export function statementsThatDiffer(
  before: Statements,
  after: Statements,
  older: Units,
  newer: Units,
): readonly WrittenChange[] {
  return NAMES.flatMap((name): readonly WrittenChange[] => {
    const [one, other] = [before.get(name) ?? null, after.get(name) ?? null];
    // A `default` is as good as nothing.
    if (sameValue(one?.value ?? null, other?.value ?? null)) return [];
    const [was, is] = [
      { statement: one, units: older },
      { statement: other, units: newer },
    ];
    return [writtenChange(name, was, is, (value, units) => readingOf(name, value, units))];
  });
}

const NAMES = Object.keys(PROPERTIES) as readonly PropertyName[];

/** What papers of both sides state otherwise; what two papers of an envelope are `like` is said once. */
function otherPapers(before: Envelope, after: Envelope): readonly WrittenChange[] {
  const changes = papersOnBothSides(before, after).flatMap(([one, other]) =>
    statementsThatDiffer(paperStatements(one), paperStatements(other), before.units, after.units),
  );
  return [...new Map(changes.map((change) => [editKey(change), change])).values()];
}

/** Papers that both sides use, under one name. Where the name differs, that says it all. */
function papersOnBothSides(before: Envelope, after: Envelope): readonly (readonly [Paper, Paper])[] {
  const later = papersOf(after);
  return [...papersOf(before)].flatMap(([name, paper]) => {
    const same = later.get(name);
    return same ? [[paper, same] as const] : [];
  });
}

/** The file's units count as a statement where something that is left out goes by them. */
function otherUnits(before: Envelope, after: Envelope): readonly WrittenChange[] {
  if (before.units === after.units) return [];
  if (BY_UNITS.every((field) => withoutUnits(before[field], after[field]))) return [];
  const unitsOf = ({ units, span }: Envelope) => ({ place: HERE, text: units, reading: null, span });
  return [{ property: 'units', before: unitsOf(before), after: unitsOf(after) }];
}

const HERE = { kind: 'here' } as const;

/** What is left out by the units of the file. */
const BY_UNITS = ['ease', 'seam', 'step', 'tolerance'] as const;

type LeftOut = Envelope[(typeof BY_UNITS)[number]];

/** Stated on both sides, or left out on both and still the same. */
const withoutUnits = (one: LeftOut, other: LeftOut): boolean =>
  one.origin.kind === 'default' || other.origin.kind === 'default'
    ? one.origin.kind === other.origin.kind && sameValue(one.value, other.value)
    : true;
