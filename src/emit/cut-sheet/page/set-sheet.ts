import type { CutSheet, Section, SectionName } from '../content.js';
import { fillPages } from './fill-pages.js';
import { words } from './line.js';
import { setSection, setText } from './set-blocks.js';
import { type Item, moved, sideBySide, type Strip } from './strip.js';
import { BODY, FOOT, type Measure, SUMMARY, TITLES, typeset } from './type.js';

/** A page to fill, in points. */
export interface PageSize {
  readonly width: number;
  readonly height: number;
  /** Kept free on every side. */
  readonly margin: number;
}

/** The size of the drawing, in points. */
interface Box {
  readonly width: number;
  readonly height: number;
}

/** Lines are not set longer than this: longer ones are hard to follow. */
const LONGEST_LINE = 486;

/** From the foot of the text to the foot of the page's margin: room for the running foot. */
const FOOT_SPACE = 22;

/** Between the drawing and the column beside it. */
const BESIDE_DRAWING = 16;

/** The pages of a cut sheet: every item at its place on its page. */
export function setSheet(
  sheet: CutSheet,
  page: PageSize,
  drawing: Box,
  measure: Measure,
): readonly (readonly Item[])[] {
  const width = Math.min(LONGEST_LINE, page.width - 2 * page.margin);
  const height = page.height - 2 * page.margin - FOOT_SPACE;
  const left = (page.width - width) / 2;
  const body = rows(sheet, width, height, drawing, measure);
  const pages = fillPages([...setHead(sheet, width, measure), ...body], height);
  return pages.map((items, index) => [
    ...items.map((item) => moved(item, left, page.margin)),
    ...setFoot(sheet, index + 1, pages.length, width, measure).map((item) =>
      moved(item, left, page.height - page.margin - FOOT.leading),
    ),
  ]);
}

/** Title, name, what it is, and the notes, over a hairline. */
function setHead(
  { title, name, summary, notes }: CutSheet,
  width: number,
  measure: Measure,
): readonly Strip[] {
  const fitting = TITLES.find((style) => setText(title, width, style, measure, 0).length <= 2);
  const style = fitting ?? (TITLES.at(-1) as (typeof TITLES)[number]);
  return [
    ...setText(title, width, style, measure, 0),
    ...(name === title ? [] : setText(name, width, FOOT, measure, 2)),
    hairline(width, 7),
    ...setText(summary, width, SUMMARY, measure, 9),
    ...notes.flatMap((note) => setText(note, width, BODY, measure, 5)),
  ];
}

const hairline = (width: number, above: number): Strip => ({
  above,
  height: 1,
  items: [{ kind: 'hairline', x: 0, y: 0.5, width }],
  keepsWithNext: false,
});

/** The sections in the order of the work; what is short stands beside the drawing, unless it outgrows the page. */
function rows(
  sheet: CutSheet,
  width: number,
  height: number,
  drawing: Box,
  measure: Measure,
): readonly Strip[] {
  const set = (name: SectionName, across = width): readonly Strip[] => {
    const section = sheet.sections.find((one: Section) => one.name === name);
    return section ? setSection(section, across, measure) : [];
  };
  const beside = width - drawing.width - BESIDE_DRAWING;
  const cut = sideBySide([
    { x: 0, strips: [...set('cut', beside), ...set('finished', beside)] },
    { x: width - drawing.width, strips: [picture(drawing)] },
  ]);
  return [
    ...set('findings'),
    ...(cut.height <= height ? [cut] : [...set('cut'), picture(drawing), ...set('finished')]),
    ...set('marks'),
    ...set('corners'),
    ...whole(set('dry-fold')),
    ...whole(set('cautions')),
    ...set('steps'),
    ...whole(set('margins')),
  ];
}

/** Strips that stay on one page. */
const whole = (strips: readonly Strip[]): readonly Strip[] =>
  strips.map((strip, index) => ({ ...strip, keepsWithNext: index < strips.length - 1 }));

const picture = ({ width, height }: Box): Strip => ({
  above: 11,
  height,
  items: [{ kind: 'picture', x: 0, y: 0, width, height }],
  keepsWithNext: false,
});

/** The title, as much of it as there is room for, and which page of how many this is. */
function setFoot(
  { title }: CutSheet,
  page: number,
  pages: number,
  width: number,
  measure: Measure,
): readonly Item[] {
  const number = `page ${page} of ${pages}`;
  const numberWidth = measure(number, FOOT);
  const room = width - numberWidth - 24;
  return [words(shortened(typeset(title), room, measure), 0, FOOT), words(number, width - numberWidth, FOOT)];
}

function shortened(text: string, room: number, measure: Measure): string {
  if (measure(text, FOOT) <= room) return text;
  const characters = [...text];
  while (characters.length > 0 && measure(`${characters.join('')}…`, FOOT) > room) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}
