import type { Size } from '../../../recipe/recipe.js';
import type { Sheet } from '../content.js';
import { fillPages } from './fill-pages.js';
import { words } from './line.js';
import { setText } from './set-blocks.js';
import { type Item, moved, type Strip } from './strip.js';
import { BODY, FOOT, type Measure, SUMMARY, TITLES, typeset } from './type.js';

/** A page to fill, in points. */
export interface PageSize {
  readonly width: number;
  readonly height: number;
  /** Kept free on every side. */
  readonly margin: number;
}

/** Lines are not set longer than this: longer ones are hard to follow. */
const LONGEST_LINE = 486;

/** From the foot of the text to the foot of the page's margin: room for the running foot. */
const FOOT_SPACE = 19;

/** What stands below the head, set for the text of a page of this size. */
export type Arrange = (page: Size, measure: Measure) => readonly Strip[];

/** The pages of a sheet: every item at its place on its page. */
export function setSheet(
  sheet: Sheet,
  page: PageSize,
  arrange: Arrange,
  measure: Measure,
): readonly (readonly Item[])[] {
  const width = Math.min(LONGEST_LINE, page.width - 2 * page.margin);
  const height = page.height - 2 * page.margin - FOOT_SPACE;
  const left = (page.width - width) / 2;
  const body = arrange({ width, height }, measure);
  const pages = fillPages([...setHead(sheet, width, measure), ...body], height);
  return pages.map((items, index) => [
    ...items.map((item) => moved(item, left, page.margin)),
    ...setFoot(sheet, index + 1, pages.length, width, measure).map((item) =>
      moved(item, left, page.height - page.margin - FOOT.leading),
    ),
  ]);
}

/** Title, what it is, and the notes, over a hairline. */
function setHead({ title, summary, notes }: Sheet, width: number, measure: Measure): readonly Strip[] {
  const fitting = TITLES.find((style) => setText(title, width, style, measure, 0).length <= 2);
  const style = fitting ?? (TITLES.at(-1) as (typeof TITLES)[number]);
  return [
    ...setText(title, width, style, measure, 0),
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

/** Name and title, as much of it as there is room for, and which page of how many this is. */
function setFoot(
  { name, title }: Sheet,
  page: number,
  pages: number,
  width: number,
  measure: Measure,
): readonly Item[] {
  const number = `page ${page} of ${pages}`;
  const numberWidth = measure(number, FOOT);
  const room = width - numberWidth - 24;
  return [
    words(shortened(typeset(name === title ? name : `${name} · ${title}`), room, measure), 0, FOOT),
    words(number, width - numberWidth, FOOT),
  ];
}

function shortened(text: string, room: number, measure: Measure): string {
  if (measure(text, FOOT) <= room) return text;
  const characters = [...text];
  while (characters.length > 0 && measure(`${characters.join('')}…`, FOOT) > room) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}
