import { readFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { EmitOptions } from '../../src/emit/emitter.js';

/** A run of text on a page, in points from the page's lower left corner; x and y are on its baseline. */
export interface Run {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** The em. */
  readonly size: number;
  readonly upright: boolean;
}

export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly runs: readonly Run[];
}

/** The pages of a PDF as an independent reader sees them. */
export async function pdfPages(bytes: Uint8Array): Promise<readonly PdfPage[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const runs = items.flatMap((item): Run[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [a, b, , , x, y] = item.transform as number[];
      const size = Math.hypot(a ?? 0, b ?? 0);
      return [
        { text: item.str, x: x ?? 0, y: y ?? 0, width: item.width, size, upright: Math.abs(b ?? 0) < 1e-6 },
      ];
    });
    pages.push({ width, height, runs });
  }
  await document.destroy();
  return pages;
}

/** The words of a page in its upright lines, from the top, each line from the left. */
export function wordsOnPage({ runs }: PdfPage): readonly string[] {
  const lines = new Map<number, Run[]>();
  for (const run of runs.filter(({ upright }) => upright)) {
    const line = Math.round(run.y * 4);
    lines.set(line, [...(lines.get(line) ?? []), run]);
  }
  return [...lines]
    .sort(([a], [b]) => b - a)
    .flatMap(([, line]) => joined(line.sort((a, b) => a.x - b.x)).split(/\s+/))
    .filter((word) => word !== '');
}

const joined = (line: readonly Run[]): string =>
  line.reduce((text, { text: next, x }, index) => {
    const before = line[index - 1];
    const gap = before ? x - before.x - before.width : 0;
    return text + (gap > 1 ? ' ' : '') + next;
  }, '');

const font = (weight: string): Uint8Array =>
  readFileSync(`node_modules/@expo-google-fonts/source-sans-3/${weight}/SourceSans3_${weight}.ttf`);

/** What an emitter is handed in tests: the shipped typeface, a fixed day. */
export const emitOptions = (more: Partial<EmitOptions> = {}): EmitOptions => ({
  page: null,
  margin: 10,
  date: new Date(Date.UTC(2000, 0, 1)),
  fonts: { regular: font('400Regular'), bold: font('600SemiBold') },
  ...more,
});
