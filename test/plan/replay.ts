import type { Step } from '../../src/plan/layout/cutting-order.js';
import type { Wanted } from '../../src/plan/layout/layout.js';

interface Rectangle {
  readonly width: number;
  readonly height: number;
}

const NOISE = 1e-5;

const alike = (one: Rectangle, other: Rectangle): boolean =>
  Math.abs(one.width - other.width) <= NOISE && Math.abs(one.height - other.height) <= NOISE;

/**
 * Cuts one sheet as a person would who has nothing but the list of steps: takes the parts that a step names from the table, cuts
 * them as set, lays what comes off back on the table or onto the pile. Returns how many of each piece lie on the piles; throws
 * where a step asks for a part that is not there, leaves something else than it says, or forgets something on the table.
 */
export function replay(
  steps: readonly Step[],
  sheet: Rectangle,
  wanted: readonly Wanted[],
): readonly number[] {
  const table: Rectangle[] = [sheet];
  const piles = wanted.map(() => 0);
  const take = (size: Rectangle): void => {
    const index = table.findIndex((part) => alike(part, size));
    if (index < 0) throw new Error(`no part of ${size.width} x ${size.height} lies on the table`);
    table.splice(index, 1);
  };
  if (steps.length === 0) return piles.map((_, index) => (alikeTurned(sheet, wanted[index]) ? 1 : 0));
  for (const { part, parts, divides, at, cuts, leaves } of steps) {
    if (at <= 0 || cuts < 1) throw new Error(`a setting of ${at}, ${cuts} cuts`);
    const off: Rectangle[] = [];
    for (let index = 0; index < parts; index++) {
      take(part);
      let left = part[divides];
      for (let cut = 0; cut < cuts; cut++) {
        if (at >= left - NOISE) throw new Error(`a cut at ${at} of a part of ${left}`);
        off.push({ ...part, [divides]: at });
        left -= at;
      }
      off.push({ ...part, [divides]: left });
    }
    for (const { size, count, is } of leaves)
      for (let index = 0; index < count; index++) {
        const found = off.findIndex((each) => alike(each, size));
        if (found < 0) throw new Error(`no cut leaves ${size.width} x ${size.height}`);
        off.splice(found, 1);
        if (is.kind === 'part') table.push(size);
        if (is.kind !== 'piece') continue;
        if (!alikeTurned(size, wanted[is.of]))
          throw new Error(`${size.width} x ${size.height} is not what is wanted`);
        piles[is.of] = (piles[is.of] ?? 0) + 1;
      }
    if (off.length > 0) throw new Error(`${off.length} parts are told by nobody`);
  }
  if (table.length > 0) throw new Error(`${table.length} parts are left on the table`);
  return piles;
}

const alikeTurned = (one: Rectangle, other: Rectangle | undefined): boolean =>
  other !== undefined && (alike(one, other) || alike(one, { width: other.height, height: other.width }));
