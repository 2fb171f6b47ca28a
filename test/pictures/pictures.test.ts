/* The pictures in the README are those that Plica draws today. `npm run pictures` makes them anew. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { loadImage, createCanvas } from '@napi-rs/canvas';
import { beforeAll, expect, test } from 'vitest';
import { makePictures, type Picture } from './make-pictures.js';

const FOLDER = 'specs/pictures';

let pictures: readonly Picture[];
beforeAll(async () => {
  pictures = await makePictures();
  if (process.env['MODE'] !== 'pictures') return;
  mkdirSync(FOLDER, { recursive: true });
  for (const { name, bytes } of pictures) writeFileSync(`${FOLDER}/${name}`, bytes);
});

test('the README shows them all, and no other', () => {
  const shown = [...readFileSync('README.md', 'utf8').matchAll(/\]\(specs\/pictures\/([^)]+)\)/g)].map(
    ([, name]) => name,
  );
  const made = pictures.map(({ name }) => name);
  expect([...new Set(shown)].sort()).toEqual(made.toSorted());
  expect(readdirSync(FOLDER).sort()).toEqual(made.toSorted());
});

test('drawings are the same, byte for byte', () => {
  for (const { name, bytes } of pictures.filter(({ name }) => name.endsWith('.svg')))
    expect(readFileSync(`${FOLDER}/${name}`, 'utf8'), name).toBe(new TextDecoder().decode(bytes));
});

/** Parts of a page's dots that may come out otherwise on another machine, and by how much each. */
const OTHERWISE = 0.001;
const DARKER = 48;

test('pages look the same', async () => {
  for (const { name, bytes } of pictures.filter(({ name }) => name.endsWith('.png'))) {
    const [kept, made] = await Promise.all([dots(readFileSync(`${FOLDER}/${name}`)), dots(bytes)]);
    expect([made.width, made.height], name).toEqual([kept.width, kept.height]);
    const changed = kept.data.filter((value, index) => Math.abs(value - (made.data[index] ?? 0)) > DARKER);
    expect(changed.length / kept.data.length, name).toBeLessThan(OTHERWISE);
  }
});

async function dots(png: Uint8Array) {
  const image = await loadImage(png);
  const context = createCanvas(image.width, image.height).getContext('2d');
  context.drawImage(image, 0, 0);
  return context.getImageData(0, 0, image.width, image.height);
}
