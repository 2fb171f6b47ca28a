import type { Units } from '../measure/unit.js';
import { spanText } from '../text/span.js';
import type { WrittenChange, WrittenValue } from './difference.js';
import { tellsItself } from './reading.js';
import type { Statement } from './statements.js';

/** A side of a change: what is stated there, if anything, and the units of its envelope. */
export interface StatedSide {
  readonly statement: Statement | null;
  readonly units: Units;
}

/** Gives the reading of a value in some units; null where it has none. */
export type ReadingOf = (value: unknown, units: Units) => string | null;

/** Two statements of one thing as a change: with what they come to, where their texts do not tell the two values apart. */
export function writtenChange(
  property: string,
  before: StatedSide,
  after: StatedSide,
  readingOf: ReadingOf,
  textOf: (statement: Statement) => string = ({ span }) => spanText(span),
): WrittenChange {
  const alike =
    before.units !== after.units ||
    (before.statement !== null &&
      after.statement !== null &&
      textOf(before.statement) === textOf(after.statement));
  const written = ({ statement, units }: StatedSide): WrittenValue | null => {
    if (statement === null) return null;
    const { place, value, span } = statement;
    const text = textOf(statement);
    return { place, text, reading: alike || !tellsItself(text) ? readingOf(value, units) : null, span };
  };
  return { property, before: written(before), after: written(after) };
}
