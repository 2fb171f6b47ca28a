/** `; did you mean `a` or `b`?`, or nothing where nothing is near. */
export const didYouMean = (near: readonly string[]): string =>
  near.length === 0 ? '' : `; did you mean ${near.map((word) => `\`${word}\``).join(' or ')}?`;
