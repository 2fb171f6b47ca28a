import type { Lettering, Mark, Shape } from '../../drawing/drawing.js';
import { INKS } from '../../drawing/inks.js';
import { LINE_KINDS, type LineKind } from '../../drawing/line-kinds.js';
import type { TextMeasure } from '../../drawing/text-measure.js';
import { type Path, type Stretch, sweep } from '../../plane/path.js';
import { distance, type Point } from '../../plane/point.js';
import { plainLine } from '../../text/plain-line.js';
import { lineAttributes } from './line-attributes.js';
import { type Attributes, element, number, text } from '../xml.js';

/** A page whose points are given in mm from its lower left corner. */
export interface Page {
  /** In mm: what is y up in a drawing is measured from the upper edge in the file. */
  readonly height: number;
  readonly measure: TextMeasure;
}

/** The elements of a mark. The group about it says how it is drawn, but for samples of other lines. Blank lettering has none. */
export const paintMark = (page: Page, { layer, shape, like }: Mark): readonly string[] =>
  shape.kind === 'text'
    ? paintLettering(page, shape)
    : [
        element('path', {
          d: commands(page, shape).join(' '),
          ...(like && unlike(LINE_KINDS[layer])),
          ...(like && lineAttributes(LINE_KINDS[like])),
        }),
      ];

/** What a mark must not have from a dashed group about it. */
const unlike = ({ dashes }: LineKind): Attributes =>
  dashes.length > 0 ? { 'stroke-dasharray': 'none' } : {};

const onPage = ({ height }: Page, { x, y }: Point): string => `${number(x)} ${number(height - y)}`;

/** A shape's outline as the commands of a path. */
function commands(page: Page, shape: Exclude<Shape, Lettering>): readonly string[] {
  if (shape.kind === 'path') return closed(page, shape.path);
  const [start, ...others] = shape.kind === 'line' ? [shape.from, shape.to] : shape.points;
  return start ? [`M${onPage(page, start)}`, ...others.map((to) => `L${onPage(page, to)}`)] : [];
}

/** `Z` draws the last straight stretch, so that no point is there twice. */
function closed(page: Page, { start, stretches }: Path): readonly string[] {
  const drawn = stretches.map((stretch, index) => {
    const end = onPage(page, stretch.to);
    if (stretch.kind === 'arc') return `${arc(stretches[index - 1]?.to ?? start, stretch)} ${end}`;
    return index === stretches.length - 1 ? '' : `L${end}`;
  });
  return [`M${onPage(page, start)}`, ...drawn.filter((command) => command !== ''), 'Z'];
}

/** All of an arc's command but its end. Seen on the page, a sweep of 1 turns clockwise (SVG 2, section 9.3.8). */
function arc(from: Point, stretch: Extract<Stretch, { kind: 'arc' }>): string {
  const radius = number(distance(from, stretch.centre));
  const large = Math.abs(sweep(from, stretch)) > Math.PI ? 1 : 0;
  return `A${radius} ${radius} 0 ${large} ${stretch.clockwise ? 1 : 0}`;
}

const SEMI_BOLD = 600;

/** Its measured length is stated, so that in another typeface too it runs over nothing. */
function paintLettering(page: Page, shape: Lettering): readonly string[] {
  const { at, size, anchor, angleDegrees, weight } = shape;
  const words = plainLine(shape.text);
  if (words.trim() === '') return [];
  return [
    element(
      'text',
      {
        x: at.x,
        y: page.height - at.y,
        'font-size': size,
        ...(weight === 'bold' && { 'font-weight': SEMI_BOLD }),
        ...(anchor !== 'start' && { 'text-anchor': anchor }),
        textLength: page.measure(words, size, weight),
        lengthAdjust: 'spacingAndGlyphs',
        ...(angleDegrees !== 0 && { transform: `rotate(${number(-angleDegrees)} ${onPage(page, at)})` }),
        fill: INKS.black.screen,
        stroke: 'none',
      },
      text(words),
    ),
  ];
}
