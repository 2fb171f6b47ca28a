/** A longer circle is shown by its ends. */
const LONGEST = 12;

/** `a → b → a`: every name of a circle, or, in one of thousands, the first and the last. */
export function circlePath(names: readonly string[]): string {
  const shown =
    names.length <= LONGEST
      ? names
      : [...names.slice(0, LONGEST - 3), `… ${names.length - LONGEST + 1} more …`, ...names.slice(-2)];
  return [...shown, names[0]].join(' → ');
}

/** As many of the places along a circle as a finding points at. */
export const placesShown = <Place>(places: readonly Place[]): readonly Place[] => places.slice(0, LONGEST);
