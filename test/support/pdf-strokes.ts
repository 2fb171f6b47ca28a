import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Point } from '../../src/plane/point.js';
import { layerOfEach } from './pdf-layers.js';

/** A straight stretch of a stroked path, in mm, y up from the page's lower left corner. */
export interface Stroke {
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
  readonly dashes: readonly number[];
  /** The layer that it lies in, by name. */
  readonly layer: string | undefined;
}

/** Units of a PDF in a mm (ISO 32000-1, 8.3.2.3: 1/72 in). */
const MM = 72 / 25.4;

/** The straight strokes of each page, as a library sees them that had no part in writing it (in single precision). */
export async function pdfStrokes(bytes: Uint8Array): Promise<readonly (readonly Stroke[])[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: (readonly Stroke[])[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const { fnArray, argsArray } = await (await document.getPage(number)).getOperatorList();
    pages.push(strokes(fnArray, argsArray, await layerOfEach(document, fnArray, argsArray)));
  }
  await document.destroy();
  return pages;
}

type Matrix = readonly [number, number, number, number, number, number];

/** Every straight stretch that is stroked. */
function strokes(
  operators: readonly number[],
  operands: readonly unknown[][],
  layers: readonly (string | undefined)[],
): readonly Stroke[] {
  const found: Stroke[] = [];
  let state = { matrix: [1, 0, 0, 1, 0, 0] as Matrix, width: 1, dashes: [] as number[] };
  const saved: (typeof state)[] = [];
  operators.forEach((operator, index) => {
    const given = operands[index] ?? [];
    if (operator === OPS.save) saved.push(state);
    else if (operator === OPS.restore) state = saved.pop() ?? state;
    else if (operator === OPS.transform)
      state = { ...state, matrix: times(state.matrix, given as unknown as Matrix) };
    else if (operator === OPS.setLineWidth) state = { ...state, width: given[0] as number };
    else if (operator === OPS.setDash) state = { ...state, dashes: [...(given[0] as number[])] };
    else if (operator === OPS.constructPath && STROKING.has(given[0] as number)) {
      const { matrix, width, dashes } = state;
      for (const [from, to] of straights((given[1] as Float32Array[])[0] ?? new Float32Array())) {
        found.push({
          from: onPage(matrix, from),
          to: onPage(matrix, to),
          width: width / MM,
          dashes: dashes.map((length) => length / MM),
          layer: layers[index],
        });
      }
    }
  });
  return found;
}

const STROKING: ReadonlySet<number> = new Set([OPS.stroke, OPS.closeStroke]);

/** The reader's own codes in a path: 0 move, 1 line, 2 curve, 3 quadratic curve, 4 close. */
const COORDINATES: Readonly<Record<number, number>> = { 0: 2, 1: 2, 2: 6, 3: 4, 4: 0 };

function straights(path: Float32Array): readonly (readonly [Point, Point])[] {
  const found: (readonly [Point, Point])[] = [];
  let [start, here]: Point[] = [
    { x: 0, y: 0 },
    { x: 0, y: 0 },
  ];
  for (let index = 0; index < path.length; ) {
    const code = path[index] ?? 4;
    const count = COORDINATES[code] ?? 0;
    const next = code === 4 ? start : { x: path[index + count - 1] ?? 0, y: path[index + count] ?? 0 };
    if (code === 0) start = next;
    if ((code === 1 || code === 4) && here && next) found.push([here, next]);
    here = next;
    index += 1 + count;
  }
  return found;
}

const onPage = ([a, b, c, d, e, f]: Matrix, { x, y }: Point): Point => ({
  x: (a * x + c * y + e) / MM,
  y: (b * x + d * y + f) / MM,
});

const times = (outer: Matrix, inner: Matrix): Matrix => {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
};
