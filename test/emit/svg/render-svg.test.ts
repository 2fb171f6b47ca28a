/* SVG of drawings made up by hand: what is written is what another parser, and another reader of paths, make of it. */
import { svgPathProperties } from 'svg-path-properties';
import { expect, test } from 'vitest';
import { type Drawing, lettering, line, outline, path, polyline } from '../../../src/drawing/drawing.js';
import { type About, renderSvg } from '../../../src/emit/svg/render-svg.js';
import type { Path } from '../../../src/plane/path.js';
import { pathsOf, readSvg } from '../../support/svg-file.js';

const HEIGHT = 100;

/** Every letter is half an em wide. */
const half = (text: string, size: number): number => (text.length * size) / 2;

const ABOUT: About = { title: 'Tide table', description: 'A card of neap tides.' };

const written = (drawing: Drawing, about: Partial<About> = {}): string =>
  renderSvg({ drawing, width: 210, height: HEIGHT }, { ...ABOUT, ...about }, half);

const read = (drawing: Drawing, about: Partial<About> = {}) => readSvg(written(drawing, about));

const at = (x: number, y: number) => ({ x, y });
const square = (x: number, y: number, side: number) => [
  at(x, y),
  at(x + side, y),
  at(x + side, y + side),
  at(x, y + side),
];

test('a unit of the file is a millimetre, since width and height in mm are those of the view', () => {
  // CSS Values and Units 4, section 6.2: 1in = 96px = 2.54cm, 1mm = 1/10 cm. SVG 2, section 8.2: the view box is fitted to
  // width and height, so that with the same numbers a unit is 96/25.4 px.
  const { root } = read([]);
  expect(root.namespaceURI).toBe('http://www.w3.org/2000/svg');
  expect([root.getAttribute('width'), root.getAttribute('height')]).toEqual(['210mm', '100mm']);
  expect(root.getAttribute('viewBox')).toBe('0 0 210 100');
});

test('a screen reader is told title and description first', () => {
  const { root, elements } = read([line('cut', at(0, 0), at(1, 1))]);
  expect(root.getAttribute('role')).toBe('img');
  const named = (root.getAttribute('aria-labelledby') ?? '').split(' ');
  expect(named).toEqual(elements.slice(1, 3).map((each) => each.getAttribute('id')));
  expect(elements.slice(1, 3).map(({ tagName, textContent }) => [tagName, textContent])).toEqual([
    ['title', 'Tide table'],
    ['desc', 'A card of neap tides.'],
  ]);
});

test('up in the drawing is up on the page', () => {
  const { groups } = read([line('cut', at(10, 90), at(20, 75.5)), polyline('cut', square(0, 0, 5))]);
  expect(pathsOf(groups.get('cut'))).toEqual(['M10 10 L20 24.5', 'M0 100 L5 100 L5 95 L0 95']);
});

test('each kind of line has one group, drawn and explained as the kind is', () => {
  const { groups } = read([
    line('cut', at(0, 0), at(9, 0)),
    line('score', at(0, 1), at(9, 1)),
    line('cut', at(0, 2), at(9, 2)),
    lettering('5 1/16 in', at(0, 3), 3, {}, 'dimension'),
    line('score', at(0, 4), at(9, 4)),
  ]);
  expect([...groups.keys()]).toEqual(['cut', 'score', 'dimension']);
  expect([...groups.values()].map((group) => pathsOf(group).length)).toEqual([2, 2, 0]);
  const [cut, score] = [...groups.values()];
  expect(cut?.getElementsByTagName('title')[0]?.textContent).toBe('cut');
  expect(score?.getElementsByTagName('title')[0]?.textContent).toContain('folds towards you');
  // Widths 2 : 1, dashes of 12 and gaps of 3 line widths (ISO 128-2, from memory).
  expect([cut?.getAttribute('stroke-width'), score?.getAttribute('stroke-width')]).toEqual(['0.5', '0.25']);
  expect([cut?.getAttribute('stroke-dasharray'), score?.getAttribute('stroke-dasharray')]).toEqual([
    null,
    '3 0.75',
  ]);
  expect([cut?.getAttribute('fill'), score?.getAttribute('fill')]).toEqual(['none', 'none']);
});

test('a sample looks like the line that it explains and lies in no group that a machine cuts', () => {
  const { groups } = read([
    line('cut', at(0, 0), at(9, 0)),
    { ...line('sample', at(0, 50), at(22, 50)), like: 'cut' },
    { ...line('sample', at(0, 60), at(22, 60)), like: 'score' },
  ]);
  expect(pathsOf(groups.get('cut')).length).toBe(1);
  const samples = [...(groups.get('sample')?.getElementsByTagName('path') ?? [])];
  expect(samples.map((sample) => sample.getAttribute('stroke-width'))).toEqual(['0.5', '0.25']);
  expect(samples.map((sample) => sample.getAttribute('stroke-dasharray'))).toEqual([null, '3 0.75']);
});

/** A pie of three quarters: from the right counter-clockwise to the foot, and back by way of the centre. */
const PIE: Path = {
  start: at(70, 50),
  stretches: [
    { kind: 'arc', centre: at(50, 50), to: at(50, 30), clockwise: false },
    { kind: 'line', to: at(50, 50) },
    { kind: 'line', to: at(70, 50) },
  ],
};

/** A square of 40 with a quarter of a circle of radius 10 bitten out of its lower left corner. */
const BITTEN: Path = {
  start: at(20, 10),
  stretches: [
    { kind: 'line', to: at(50, 10) },
    { kind: 'line', to: at(50, 50) },
    { kind: 'line', to: at(10, 50) },
    { kind: 'line', to: at(10, 20) },
    { kind: 'arc', centre: at(10, 10), to: at(20, 10), clockwise: true },
  ],
};

test.each([
  // 3/4 of 2πr and two radii, r = 20; its arc's middle lies up and to the left.
  ['a large arc', PIE, 30 * Math.PI + 40, 0, at(50 - 20 / Math.SQRT2, 50 + 20 / Math.SQRT2)],
  // Four sides of 40, two of them shorter by 10, and πr/2; its arc's middle lies off the corner, inside the square.
  ['a hollow arc', BITTEN, 140 + 5 * Math.PI, 4, at(10 + 10 / Math.SQRT2, 10 + 10 / Math.SQRT2)],
])('%s stays an arc, on its side', (_, shape, length, part, middle) => {
  const [d = ''] = pathsOf(read([path('cut', shape)]).groups.get('cut'));
  expect(d.match(/A/g)?.length).toBe(1);
  expect(d.endsWith('Z')).toBe(true);
  const outlined = new svgPathProperties(d);
  // The reader measures arcs along chords.
  expect(outlined.getTotalLength()).toBeCloseTo(length, 2);
  const arc = outlined.getParts()[part];
  const seen = arc?.getPointAtLength(arc.length / 2);
  expect(seen?.x).toBeCloseTo(middle.x, 2);
  expect(HEIGHT - (seen?.y ?? 0)).toBeCloseTo(middle.y, 2);
});

test('a closed outline passes each corner once', () => {
  const [d] = pathsOf(read([outline('cut', square(10, 10, 20))]).groups.get('cut'));
  expect(d).toBe('M10 90 L30 90 L30 70 L10 70 Z');
});

test('paper laid over paper covers it, and what is drawn on it', () => {
  const { groups } = read([
    outline('inside', square(0, 0, 50)),
    outline('edge', square(0, 0, 50)),
    outline('inside', square(0, 60, 5)),
    outline('show-side', square(10, 10, 50)),
    outline('edge', square(10, 10, 50)),
    line('hidden', at(0, 0), at(9, 9)),
    outline('edge', square(15, 15, 5)),
  ]);
  expect([...groups].map(([id, group]) => [id, pathsOf(group).length])).toEqual([
    ['inside', 1],
    ['edge', 1],
    ['inside-2', 1],
    ['show-side', 1],
    ['edge-2', 2],
    ['hidden', 1],
  ]);
  const paper = groups.get('show-side');
  expect([paper?.getAttribute('fill'), paper?.getAttribute('stroke')]).toEqual(['#ffffff', 'none']);
});

test('only where it is asked for, white paper lies behind everything', () => {
  const first = (background: boolean) => {
    const { elements } = read([outline('inside', square(0, 0, 5))], { background });
    return elements[3];
  };
  expect(first(false)?.tagName).toBe('g');
  const paper = first(true);
  expect(['width', 'height', 'fill', 'stroke'].map((name) => paper?.getAttribute(name))).toEqual([
    '210',
    '100',
    '#ffffff',
    null,
  ]);
});

test('lettering keeps its measured length in any typeface', () => {
  const { groups } = read([lettering('5 1/16 in', at(10, 20), 3)]);
  const [text] = groups.get('lettering')?.getElementsByTagName('text') ?? [];
  const said = Object.fromEntries([...(text?.attributes ?? [])].map(({ name, value }) => [name, value]));
  expect(said).toEqual({
    x: '10',
    y: '80',
    'font-size': '3',
    // Nine letters of half an em.
    textLength: '13.5',
    lengthAdjust: 'spacingAndGlyphs',
    fill: '#000000',
    stroke: 'none',
  });
  expect(text?.textContent).toBe('5 1/16 in');
});

test('lettering is turned counter-clockwise about its place, anchored, and bold where it is', () => {
  const { groups } = read([
    lettering('up', at(10, 20), 3, { angleDegrees: 90, anchor: 'middle', weight: 'bold' }),
  ]);
  const [text] = groups.get('lettering')?.getElementsByTagName('text') ?? [];
  // SVG turns clockwise on the page (SVG 2, section 8.5; CSS Transforms 1).
  expect(text?.getAttribute('transform')).toBe('rotate(-90 10 80)');
  expect(text?.getAttribute('text-anchor')).toBe('middle');
  expect(text?.getAttribute('font-weight')).toBe('600');
});

test.each([
  ['<script>alert("1")</script>', '<script>alert("1")</script>'],
  [']]> & &amp; <!-- --> <?x?> \'"', ']]> & &amp; <!-- --> <?x?> \'"'],
  ['turned \u202Eround\u202C', 'turned round'],
  ['two\nlines\r\u0000\u001B[31m', 'two lines   [31m'],
  ['shell \u{1F41A} \u6F6E', 'shell \u{1F41A} \u6F6E'],
  ['half \uD83D', 'half \uFFFD'],
  ['never \uFFFE\uFFFF', 'never \uFFFD\uFFFD'],
])('%j is shown as the text that it is', (hostile, shown) => {
  const text = written([lettering(hostile, at(0, 0), 3)], { title: hostile, description: hostile });
  // Through bytes, as a file is.
  const { words, elements } = readSvg(new TextDecoder().decode(new TextEncoder().encode(text)));
  expect([words('title'), words('desc'), words('text')]).toEqual([shown, shown, shown]);
  expect(elements.map(({ tagName }) => tagName)).toEqual(['svg', 'title', 'desc', 'g', 'text']);
});

test('blank lettering is left out', () => {
  expect(read([lettering('\u200B', at(0, 0), 3), lettering(' ', at(0, 0), 3)]).words('text')).toBe(null);
});

test('numbers have four decimals at most, no exponent and no sign before nothing', () => {
  const { groups } = read([
    line('cut', at(1e-9, 100 + 1e-9), at(-1e-7, 1 / 3)),
    line('cut', at(1e7, 0), at(-0, 0)),
  ]);
  expect(pathsOf(groups.get('cut'))).toEqual(['M0 0 L0 99.6667', 'M10000000 100 L0 100']);
});
