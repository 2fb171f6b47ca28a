/** `1 file`, `2 files` */
export const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? '' : 's'}`;

/** `; did you mean `a` or `b`?`, or nothing where nothing is near. */
export const didYouMean = (near: readonly string[]): string =>
  near.length === 0 ? '' : `; did you mean ${near.map((word) => `\`${word}\``).join(' or ')}?`;
