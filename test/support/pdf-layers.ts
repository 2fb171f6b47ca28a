import { getDocument, OPS, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A layer as a viewer lists it. */
export interface ListedLayer {
  readonly name: string;
  readonly visible: boolean;
  /** The lines of text that lie in it, of all pages. */
  readonly lettering: readonly string[];
}

/** The layers of a PDF in a viewer's order, and the lines of text that lie in none. */
export async function pdfLayers(
  bytes: Uint8Array,
): Promise<{ readonly layers: readonly ListedLayer[]; readonly elsewhere: readonly string[] }> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const config = await document.getOptionalContentConfig();
  const all: Written[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const { fnArray, argsArray } = await (await document.getPage(number)).getOperatorList();
    all.push(...written(fnArray, argsArray, await layerOfEach(document, fnArray, argsArray)));
  }
  const layers = ((config.getOrder() ?? []) as string[]).map((id): ListedLayer => {
    const { name, visible } = config.getGroup(id) as { readonly name: string; readonly visible: boolean };
    return { name, visible, lettering: all.filter(({ layer }) => layer === name).map(({ text }) => text) };
  });
  await document.destroy();
  return { layers, elsewhere: all.filter(({ layer }) => layer === undefined).map(({ text }) => text) };
}

/** For each operator of a page the name of the layer that it lies in. */
export async function layerOfEach(
  document: PDFDocumentProxy,
  operators: readonly number[],
  operands: readonly unknown[][],
): Promise<readonly (string | undefined)[]> {
  const config = await document.getOptionalContentConfig();
  const open: (string | undefined)[] = [];
  return operators.map((operator, index) => {
    if (operator === OPS.beginMarkedContent) open.push(open.at(-1));
    if (operator === OPS.beginMarkedContentProps) {
      const [tag, group] = operands[index] as [string, { readonly id: string } | null];
      open.push(tag === 'OC' && group ? (config.getGroup(group.id) as { name: string }).name : open.at(-1));
    }
    if (operator === OPS.endMarkedContent) open.pop();
    return open.at(-1);
  });
}

interface Written {
  readonly layer: string | undefined;
  readonly text: string;
}

/** What is shown between the beginning and the end of a text. */
function written(
  operators: readonly number[],
  operands: readonly unknown[][],
  layers: readonly (string | undefined)[],
): readonly Written[] {
  const found: Written[] = [];
  let text = '';
  operators.forEach((operator, index) => {
    if (operator === OPS.beginText) text = '';
    if (operator === OPS.showText) text += shown(operands[index]?.[0] as Glyphs);
    if (operator === OPS.endText) found.push({ layer: layers[index], text });
  });
  return found;
}

/** Characters as shown, and the spaces by which they are moved together or apart. */
type Glyphs = readonly ({ readonly unicode: string } | number)[];

const shown = (glyphs: Glyphs): string =>
  glyphs.map((glyph) => (typeof glyph === 'number' ? '' : glyph.unicode)).join('');
