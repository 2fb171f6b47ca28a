/** Orders texts by their characters, the same everywhere. */
export const byText = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
