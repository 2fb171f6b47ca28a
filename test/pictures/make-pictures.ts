import { createCanvas } from '@napi-rs/canvas';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { EMITTERS } from '../../src/emit/index.js';
import type { Job } from '../../src/emit/emitter.js';
import { plica } from '../support/command-line.js';
import { emitOptions } from '../support/pdf-pages.js';
import { specJobs } from '../support/spec-jobs.js';
import { specs } from '../support/specs.js';

/** A picture that the README shows: its name in specs/pictures, and its bytes. */
export interface Picture {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Which files of which recipes; of a PDF, one page as PNG. */
const SHOWN: readonly { readonly recipe: string; readonly emitter: string; readonly page?: number }[] = [
  { recipe: 'half-letter', emitter: 'card' },
  { recipe: 'half-letter', emitter: 'steps' },
  { recipe: 'keepsake', emitter: 'steps' },
  { recipe: 'half-letter', emitter: 'cut-sheet', page: 1 },
  { recipe: 'keepsake', emitter: 'template', page: 1 },
];

/** Pages of the catalogue of specs/, as PNG: its table, and one of its recipes. */
const OF_THE_BOOK = [
  { name: 'catalogue.table.png', words: 'Measurements' },
  { name: 'catalogue.keepsake.png', words: 'Keepsake card with a shell' },
] as const;

async function bookPictures(): Promise<readonly Picture[]> {
  const bytes = await book();
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const outline = await document.getOutline();
  const entries = outline.flatMap((entry) => [entry, ...entry.items]);
  const pictures = await Promise.all(
    OF_THE_BOOK.map(async ({ name, words }) => {
      const entry = entries.find(({ title }) => title === words);
      const [reference] = (entry?.dest ?? []) as [never];
      return { name, bytes: await rasterise(bytes, (await document.getPageIndex(reference)) + 1) };
    }),
  );
  await document.destroy();
  return pictures;
}

/** The book as the command writes it, on a machine that is only remembered. */
async function book(): Promise<Uint8Array> {
  const { files } = await plica('catalogue specs --out book.pdf', { files: specs() });
  return files.get('/studio/book.pdf') as Uint8Array;
}

/** Makes every picture anew from the recipes of specs/. */
export async function makePictures(): Promise<readonly Picture[]> {
  return [...(await filePictures()), ...(await bookPictures())];
}

async function filePictures(): Promise<readonly Picture[]> {
  const jobs = specJobs();
  return Promise.all(
    SHOWN.map(async ({ recipe, emitter: kind, page }): Promise<Picture> => {
      const emitter = EMITTERS.find(({ name }) => name === kind);
      const [file] = (await emitter?.emit(jobs[recipe] as Job, emitOptions())) ?? [];
      if (!file) throw new Error(`${recipe} has no ${kind}`);
      return page === undefined
        ? { name: recipe + file.extension, bytes: file.bytes }
        : { name: `${recipe}.${kind}.png`, bytes: await rasterise(file.bytes, page) };
    }),
  );
}

/** Dots to a point of the page: 96 to the inch. */
const SCALE = 96 / 72;

/** A page of a PDF as PNG, by a library that had no part in writing it. */
async function rasterise(bytes: Uint8Array, number: number): Promise<Uint8Array> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const page = await document.getPage(number);
  const viewport = page.getViewport({ scale: SCALE });
  const canvas = createCanvas(Math.ceil(viewport.width), Math.ceil(viewport.height));
  // Its types know the canvas of browsers only.
  const drawn = { canvas, viewport, background: '#ffffff' } as unknown as Parameters<typeof page.render>[0];
  await page.render(drawn).promise;
  await document.destroy();
  return canvas.encode('png');
}
