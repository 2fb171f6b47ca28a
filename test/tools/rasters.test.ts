/* SVG and PDF of a drawing look alike: made into dots by two programs that had no part in writing either. */
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import { expect, test } from 'vitest';
import type { Figure } from '../../src/drawing/figure.js';
import { plate } from '../../src/drawing/plate.js';
import { stepStrip } from '../../src/drawing/step-strip.js';
import type { Job } from '../../src/emit/emitter.js';
import { openDocument } from '../../src/emit/pdf/document.js';
import { paint } from '../../src/emit/pdf/paint.js';
import { renderSvg } from '../../src/emit/svg/render-svg.js';
import { EXTREMES } from '../support/extremes.js';
import { emitOptions } from '../support/pdf-pages.js';
import { scratch } from '../support/scratch.js';
import { specJobs } from '../support/spec-jobs.js';

const DOTS_PER_INCH = 120;

/** How light each dot is, row by row: 0 black, 255 white. */
interface Raster {
  readonly width: number;
  readonly height: number;
  readonly light: readonly number[];
}

/** A line is this dark at least; where it is thinner than a dot it comes out this light at most. Paper is lighter. */
const LINE = 130;
const FAINT = 215;

async function raster(png: string): Promise<Raster> {
  const image = await loadImage(readFileSync(png));
  const { width, height } = image;
  const context = createCanvas(width, height).getContext('2d');
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, width, height);
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(0, 0, width, height);
  // The eye's weights for red, green and blue (ITU-R BT.601).
  const light = Array.from({ length: width * height }, (_, dot) => {
    const [red = 0, green = 0, blue = 0] = data.subarray(4 * dot, 4 * dot + 3);
    return 0.299 * red + 0.587 * green + 0.114 * blue;
  });
  return { width, height, light };
}

/** The part of one picture's lines that have nothing beside them in the other. */
function strayed(one: Raster, other: Raster): number {
  let [dark, alone] = [0, 0];
  one.light.forEach((light, dot) => {
    if (light > LINE) return;
    dark++;
    const [x, y] = [dot % one.width, Math.floor(dot / one.width)];
    const near = [-2, -1, 0, 1, 2].some((down) =>
      [-2, -1, 0, 1, 2].some((across) => {
        const [column, row] = [x + across, y + down];
        if (column < 0 || column >= other.width) return false;
        return (other.light[row * other.width + column] ?? 255) < FAINT;
      }),
    );
    if (!near) alone++;
  });
  expect(dark).toBeGreaterThan(1000);
  return alone / dark;
}

const specs = specJobs();
const CASES: Readonly<Record<string, Job>> = {
  'half-letter': specs['half-letter'] as Job,
  keepsake: specs['keepsake'] as Job,
  'sealed-letter': specs['sealed-letter'] as Job,
  'card 50 x 35 mm': EXTREMES['card 50 x 35 mm'],
  'card 1 : 3, flap on the short edge': EXTREMES['card 1 : 3, flap on the short edge'],
  'small deep box with every tip cut': EXTREMES['small deep box with every tip cut'],
};

test.each(Object.entries(CASES))('%s', async (_, { folding, envelope }) => {
  const folder = scratch({});
  const document = await openDocument(emitOptions(), { title: '' });
  const { measure } = document;
  const figures = {
    plate: plate(folding, envelope, measure),
    steps: stepStrip(folding, envelope, 190, measure),
  };
  for (const [name, figure] of Object.entries(figures)) {
    // Typefaces differ from machine to machine; lettering is compared elsewhere.
    const lines: Figure = { ...figure, drawing: figure.drawing.filter(({ shape }) => shape.kind !== 'text') };
    const pdf = await openDocument(emitOptions(), { title: '' });
    pdf.addPage(lines);
    paint(pdf, lines.drawing);
    const path = (ending: string): string => join(folder, `${name}${ending}`);
    writeFileSync(path('.pdf'), await pdf.finish());
    writeFileSync(path('.svg'), renderSvg(lines, { title: name, description: name }, measure));
    const dots = `${DOTS_PER_INCH}`;
    execFileSync('pdftoppm', ['-r', dots, '-png', '-singlefile', path('.pdf'), path('-pdf')]);
    execFileSync('rsvg-convert', ['-d', dots, '-p', dots, path('.svg'), '-o', path('-svg.png')]);
    const [fromPdf, fromSvg] = [await raster(path('-pdf.png')), await raster(path('-svg.png'))];
    expect(Math.abs(fromPdf.width - fromSvg.width)).toBeLessThanOrEqual(1);
    expect(Math.abs(fromPdf.height - fromSvg.height)).toBeLessThanOrEqual(1);
    expect(strayed(fromPdf, fromSvg), name).toBeLessThan(0.01);
    expect(strayed(fromSvg, fromPdf), name).toBeLessThan(0.01);
  }
});
