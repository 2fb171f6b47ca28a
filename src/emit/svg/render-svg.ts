/*
 * emit/svg/: drawings to SVG, true to size.
 * In: a Figure in mm (y up), and words about it. Out: the text of a file that stands alone.
 * Refuses to know: envelopes (but for the emitter, svg.ts) and fonts (it is handed a measure of widths).
 */
import type { Figure } from '../../drawing/figure.js';
import { INKS } from '../../drawing/inks.js';
import { lineKey } from '../../drawing/line-key.js';
import { LINE_KINDS } from '../../drawing/line-kinds.js';
import type { TextMeasure } from '../../drawing/text-measure.js';
import { type Group, groups } from './groups.js';
import { lineAttributes } from './line-attributes.js';
import { type Page, paintMark } from './paint.js';
import { element, number, text } from '../xml.js';

/** What a picture says besides its lines. */
export interface About {
  /** For a screen reader, and for a viewer's title bar. */
  readonly title: string;
  readonly description: string;
  /** White paper behind everything, for pages of any colour; off unless asked for, since a machine would cut it out. */
  readonly background?: boolean;
}

/** The shipped typeface, then whatever a reader has. */
const TYPEFACE = "'Source Sans 3', sans-serif";

/**
 * A picture of its true size: one unit of the file is one mm, in a named group for each kind of line, with the kind's
 * meaning as the group's title.
 */
export function renderSvg(figure: Figure, about: About, measure: TextMeasure): string {
  const { drawing, width, height } = figure;
  const page: Page = { height, measure };
  const meanings = new Map(lineKey(drawing).map(({ layer, words }) => [layer, words]));
  const size = { width: `${number(width)}mm`, height: `${number(height)}mm` };
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    ...size,
    viewBox: `0 0 ${number(width)} ${number(height)}`,
    lang: 'en',
    role: 'img',
    'aria-labelledby': 'title description',
    'font-family': TYPEFACE,
  };
  const content = [
    element('title', { id: 'title' }, text(about.title)),
    element('desc', { id: 'description' }, text(about.description)),
    ...(about.background ? [element('rect', { width, height, fill: INKS.paper.screen })] : []),
    ...groups(drawing).map((group) => paintGroup(page, group, meanings.get(group.layer))),
  ];
  return `${element('svg', attributes, content)}\n`;
}

const paintGroup = (page: Page, { id, layer, marks }: Group, meaning: string | undefined): string =>
  element('g', { id, ...lineAttributes(LINE_KINDS[layer]) }, [
    ...(meaning === undefined ? [] : [element('title', {}, text(meaning))]),
    ...marks.flatMap((mark) => paintMark(page, mark)),
  ]);
