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

/**
 * The size that a slip of spelling surely meant: a hyphen more, less, or a space instead (`A-6`, `us a2`), a maker of
 * standards where none is wanted (`us-letter`, `iso-c6`, `din A4`).
 */
export const sizeSpelt = (name: string): string | undefined => SPELT.get(squeezed(name));

const squeezed = (name: string): string => name.toLowerCase().replaceAll(/[ -]/g, '');

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

const SPELT: ReadonlyMap<string, string> = new Map([
  ...ISO_SIZES.flatMap(([name]) => ['iso', 'din'].map((by) => [squeezed(by + name), name] as const)),
  ...US_SHEETS.map(([name]) => [squeezed(`us${name}`), name] as const),
  ...rows.map(([name]) => [squeezed(name), name] as const),
]);
