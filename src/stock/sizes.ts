import { ISO_SIZES, type SizeRow } from './sizes-iso.js';
import { US_CARDS, US_SHEETS } from './sizes-us.js';

/** A size by name, in mm: for `us-a1` … `us-a10` the card that goes in, else the size itself. */
export interface NamedSize {
  readonly name: string;
  readonly short: number;
  readonly long: number;
}

/** Finds a size by its name, in any case; `iso-a2` is `A2` said expressly. */
export const sizeNamed = (name: string): NamedSize | undefined => NAMED.get(name.toLowerCase());

/** The names of all sizes, as the table spells them. */
export const sizeNames = (): Iterable<string> => [...NAMED.values()].map(({ name }) => name);

/** The US card that a plain ISO A name may have been meant for: `us-a2` for `A2`. */
export const usNamesake = (name: string): NamedSize | undefined =>
  ISO_A.test(name) ? NAMED.get(`us-${name.toLowerCase()}`) : undefined;

const ISO_A = /^a\d+$/i;

const rows: readonly SizeRow[] = [
  ...ISO_SIZES,
  ...ISO_SIZES.filter(([name]) => ISO_A.test(name)).map(
    ([name, ...rest]): SizeRow => [`iso-${name.toLowerCase()}`, ...rest],
  ),
  ...US_SHEETS,
  ...US_CARDS,
];

const NAMED: ReadonlyMap<string, NamedSize> = new Map(
  rows.map(([name, short, long]) => [name.toLowerCase(), { name, short, long }]),
);
