import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { layerOfEach } from './pdf-layers.js';

/** A stroked path, as the commands of an SVG path in points of the page, and the layer that it lies in. */
export interface PdfPath {
  readonly layer: string | undefined;
  readonly commands: string;
}

/** The stroked paths of a PDF's first page, as a library sees them that had no part in writing it. */
export async function pdfPaths(bytes: Uint8Array): Promise<readonly PdfPath[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const { fnArray, argsArray } = await (await document.getPage(1)).getOperatorList();
  const layers = await layerOfEach(document, fnArray, argsArray);
  await document.destroy();
  // The writer turns the page over with its first matrix; any later one moves lettering only.
  const [, , , flip = 1, , lift = 0] = (argsArray[fnArray.indexOf(OPS.transform)] ?? []) as number[];
  return fnArray.flatMap((operator, index) => {
    if (operator !== OPS.constructPath) return [];
    const [painting, [path]] = argsArray[index] as [number, [Float32Array | null]];
    if (!STROKING.has(painting) || !path) return [];
    return [{ layer: layers[index], commands: commandsOf(path, (y) => flip * y + lift) }];
  });
}

const STROKING: ReadonlySet<number> = new Set([OPS.stroke, OPS.closeStroke]);

/** The reader's own codes in a path, and how many numbers follow each. */
const COMMANDS = [
  { letter: 'M', count: 2 },
  { letter: 'L', count: 2 },
  { letter: 'C', count: 6 },
  { letter: 'Q', count: 4 },
  { letter: 'Z', count: 0 },
];

function commandsOf(path: Float32Array, onPage: (y: number) => number): string {
  const words: string[] = [];
  for (let index = 0; index < path.length; ) {
    const { letter, count } = COMMANDS[path[index] ?? 4] ?? { letter: 'Z', count: 0 };
    const numbers = [...path.slice(index + 1, index + 1 + count)];
    words.push(letter + numbers.map((value, place) => (place % 2 === 0 ? value : onPage(value))).join(' '));
    index += 1 + count;
  }
  return words.join('');
}
