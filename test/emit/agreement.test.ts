/*
 * One drawing, many files: SVG, DXF, PDF and FOLD of a recipe agree on what is cut and scored, each read back by a library that
 * had no part in writing it, within 0.01 mm.
 */
import { svgPathProperties } from 'svg-path-properties';
import { expect, test } from 'vitest';
import { dxf } from '../../src/emit/dxf/dxf.js';
import type { Job } from '../../src/emit/emitter.js';
import { print } from '../../src/emit/print-pdf/print-pdf.js';
import { svg } from '../../src/emit/svg/svg.js';
import { lengthOf, onlyPolyline, readDxf } from '../support/dxf-file.js';
import { EXTREMES } from '../support/extremes.js';
import { foldFile, pointOf } from '../support/fold-file.js';
import { emitOptions } from '../support/pdf-pages.js';
import { pdfPaths } from '../support/pdf-paths.js';
import { specJobs } from '../support/spec-jobs.js';
import { pathsOf, readSvg } from '../support/svg-file.js';

const AGREED = 0.01;
const OPTIONS = emitOptions();

interface Point {
  readonly x: number;
  readonly y: number;
}

/** A line, its ends in a fixed order. */
type Ends = readonly [Point, Point];

/** What a file says of the paper: mm from the lower left corner of what is cut, y up, edges square to the page. */
interface Read {
  readonly cut: { readonly length: number; readonly width: number; readonly height: number };
  /** By kind of score; in order. */
  readonly scores: Readonly<Record<Kind, readonly Ends[]>>;
}

type Kind = 'score' | 'second-score' | 'odd-score';
const KINDS: readonly Kind[] = ['score', 'second-score', 'odd-score'];

function read(length: number, outline: readonly Point[], scoresOf: (kind: Kind) => readonly Ends[]): Read {
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  const moved = ({ x, y }: Point): Point => ({ x: x - left, y: y - low });
  const scores = (kind: Kind) =>
    inRows(
      scoresOf(kind)
        .map(([a, b]): Ends => inOrder([moved(a), moved(b)]))
        .sort(([a], [b]) => before(a, b)),
    );
  return {
    cut: { length, width: Math.max(...xs) - left, height: Math.max(...ys) - low },
    scores: {
      score: scores('score'),
      'second-score': scores('second-score'),
      'odd-score': scores('odd-score'),
    },
  };
}

/** From the left, then from below; what lies nearer than half a mm is alike. */
const before = (a: Point, b: Point): number => Math.round(2 * (a.x - b.x)) || Math.round(2 * (a.y - b.y));
const inOrder = ([a, b]: Ends): Ends => (before(a, b) <= 0 ? [a, b] : [b, a]);

/** The corners of a path, and the ends of one that is a line. */
const cornersOf = (commands: string): readonly Point[] =>
  new svgPathProperties(commands).getParts().map(({ start }) => start);
const endsOf = (commands: string): Ends => {
  const [part] = new svgPathProperties(commands).getParts();
  return [part?.start ?? { x: 0, y: 0 }, part?.end ?? { x: 0, y: 0 }];
};

async function fileOf(emitter: typeof svg, job: Job): Promise<Uint8Array> {
  const [file] = await emitter.emit(job, OPTIONS);
  return file?.bytes ?? new Uint8Array();
}

async function fromSvg(job: Job): Promise<Read> {
  const { groups } = readSvg(new TextDecoder().decode(await fileOf(svg, job)));
  const up = ({ x, y }: Point): Point => ({ x, y: -y });
  const [cut = '', ...others] = pathsOf(groups.get('cut'));
  expect(others).toEqual([]);
  return read(new svgPathProperties(cut).getTotalLength(), cornersOf(cut).map(up), (kind) =>
    pathsOf(groups.get(kind))
      .map(endsOf)
      .map(([a, b]): Ends => [up(a), up(b)]),
  );
}

async function fromDxf(job: Job): Promise<Read> {
  const file = readDxf(await fileOf(dxf, job));
  const cut = onlyPolyline(file, 'cut');
  return read(lengthOf(cut), cut.vertices, (kind) =>
    file.lines
      .filter(({ layer }) => layer === kind)
      .map(({ vertices: [a, b] }): Ends => [a ?? { x: 0, y: 0 }, b ?? { x: 0, y: 0 }]),
  );
}

/** Units of a PDF in a mm (ISO 32000-1, 8.3.2.3: 1/72 in). */
const POINT = 25.4 / 72;

const LAYERS: Readonly<Record<Kind, string>> = {
  score: 'Score',
  'second-score': 'Second score',
  'odd-score': 'Score from the other face',
};

async function fromPdf(job: Job): Promise<Read> {
  const paths = await pdfPaths(await fileOf(print, job));
  const on = (name: string): readonly string[] =>
    paths.filter(({ layer }) => layer === name).map(({ commands }) => commands);
  const mm = ({ x, y }: Point): Point => ({ x: x * POINT, y: y * POINT });
  const [cut = '', ...others] = on('Cut');
  expect(others).toEqual([]);
  return read(new svgPathProperties(cut).getTotalLength() * POINT, cornersOf(cut).map(mm), (kind) =>
    on(LAYERS[kind])
      .map(endsOf)
      .map(([a, b]): Ends => [mm(a), mm(b)]),
  );
}

function fromFold(job: Job): Read {
  const { flat } = foldFile(job);
  // The format's frame stands on the blank's bottom corner.
  const at = (vertex: number): Point => {
    const { x, y } = pointOf(flat.vertices_coords[vertex] ?? []);
    return { x: (x + y) / Math.SQRT2, y: (y - x) / Math.SQRT2 };
  };
  const edges = flat.edges_vertices.map(([from, to], index) => ({
    ends: [at(from), at(to)] as Ends,
    assignment: flat.edges_assignment[index],
    score: flat['edges_plica:score'][index],
  }));
  const boundary = edges.filter(({ assignment }) => assignment === 'B');
  const kindOf = ({ assignment, score }: (typeof edges)[number]): Kind | null => {
    if (assignment === 'B') return null;
    return assignment === 'M' ? 'odd-score' : score === 'second' ? 'second-score' : 'score';
  };
  return read(
    boundary.reduce((sum, { ends }) => sum + apart(...ends), 0),
    boundary.flatMap(({ ends }) => ends),
    (kind) => edges.filter((edge) => kindOf(edge) === kind).map(({ ends }) => ends),
  );
}

const apart = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

/** Lines that meet end to end and run on straight, as one: a score may be written in parts where others end on it. */
function inRows(lines: readonly Ends[]): readonly Ends[] {
  const rows: Ends[] = [];
  for (const [from, to] of lines) {
    const found = rows.findIndex(([start, end]) => apart(end, from) < AGREED && isStraight(start, from, to));
    const row = rows[found];
    if (row) rows[found] = [row[0], to];
    else rows.push([from, to]);
  }
  return rows;
}

const isStraight = (a: Point, b: Point, c: Point): boolean =>
  Math.abs((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x)) < AGREED * apart(a, c);

const all = { ...specJobs(), ...EXTREMES };

test.each(Object.entries(all))('%s', async (_, job) => {
  const first = await fromSvg(job);
  // A flat envelope has at least its four scores, a box four more.
  expect(first.scores.score.length).toBeGreaterThanOrEqual(4);
  expect(first.scores['second-score']).toHaveLength(job.folding.made.second ? 4 : 0);
  const others = { dxf: await fromDxf(job), pdf: await fromPdf(job), fold: fromFold(job) };
  for (const [name, other] of Object.entries(others)) {
    for (const part of ['length', 'width', 'height'] as const)
      expect(Math.abs(other.cut[part] - first.cut[part]), `${name}: ${part}`).toBeLessThan(AGREED);
    for (const kind of KINDS) {
      expect(other.scores[kind], `${name}: ${kind}`).toHaveLength(first.scores[kind].length);
      other.scores[kind].forEach((ends, index) => {
        const [a, b] = first.scores[kind][index] as Ends;
        expect(apart(ends[0], a), `${name}: ${kind} ${index}`).toBeLessThan(AGREED);
        expect(apart(ends[1], b), `${name}: ${kind} ${index}`).toBeLessThan(AGREED);
      });
    }
  }
});
