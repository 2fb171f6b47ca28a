/** The standard colours by their index (from memory), a byte each of red, green and blue. */
const STANDARD_COLOURS: readonly (readonly [index: number, colour: number])[] = [
  [1, 0xff0000],
  [2, 0xffff00],
  [3, 0x00ff00],
  [4, 0x00ffff],
  [5, 0x0000ff],
  [6, 0xff00ff],
];

/** The index of the standard colour nearest to a colour (a byte each of red, green and blue). */
export function indexColour(colour: number): number {
  const away = (other: number): number =>
    Math.hypot(...[16, 8, 0].map((shift) => ((colour >> shift) & 0xff) - ((other >> shift) & 0xff)));
  const [nearest] = STANDARD_COLOURS.toSorted(([, one], [, other]) => away(one) - away(other));
  return nearest?.[0] ?? 0;
}
