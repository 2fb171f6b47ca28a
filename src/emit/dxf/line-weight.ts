/** The line weights that the format knows, in 1/100 mm (the vendor's reference for LWDEFAULT lists them). */
const LINE_WEIGHTS = [
  0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211,
] as const;

/** The line weight nearest to a width in mm, in 1/100 mm. */
export const lineWeight = (width: number): number =>
  LINE_WEIGHTS.reduce<number>(
    (nearest, weight) =>
      Math.abs(weight - width * 100) < Math.abs(nearest - width * 100) ? weight : nearest,
    0,
  );
