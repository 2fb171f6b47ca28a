import type { Figure } from '../../../drawing/figure.js';
import type { Size } from '../../../recipe/recipe.js';
import { POINTS_PER_MM } from '../../pdf/document.js';
import type { CutSheet, Section, SectionName } from '../content.js';
import { picture } from './picture.js';
import { setSection, setText } from './set-blocks.js';
import { setLineKey } from './set-line-key.js';
import { reach, sideBySide, type Strip } from './strip.js';
import { HEADING, type Measure } from './type.js';

/** Between what stands side by side. */
const GUTTER = 18;

/** Words are not set in a narrower column. */
const NARROWEST = 110;

/** Sets a section as wide as wanted; one that the sheet does not have is nothing. */
type Set = (name: SectionName, across: number) => readonly Strip[];

/** What a sheet shows besides its words: the dimensioned blank, and the fold step by step, a row of pictures each. */
export interface Pictures {
  readonly blank: Figure;
  readonly fold: readonly Figure[];
}

/** The sections in the order of the work; what is narrow stands side by side where a page of this size has room. */
export function arrange(sheet: CutSheet, pictures: Pictures, page: Size, measure: Measure): readonly Strip[] {
  const { width } = page;
  const set: Set = (name, across) => {
    const section = sheet.sections.find((one: Section) => one.name === name);
    return section ? setSection(section, across, measure) : [];
  };
  return [
    ...set('findings', width),
    ...cutBesideDrawing(set, pictures.blank, page, measure),
    ...marksBesideDryFold(set, width),
    ...set('corners', width),
    ...set('zones', width),
    ...whole(set('tape', width)),
    ...set('cautions', width),
    ...foldInPictures(pictures.fold, width, measure),
    ...set('steps', width),
    ...marginsBesideFinished(set, width),
  ];
}

function cutBesideDrawing(set: Set, figure: Figure, page: Size, measure: Measure): readonly Strip[] {
  const drawn = figure.width * POINTS_PER_MM;
  const key = (across: number): readonly Strip[] => setLineKey(figure.drawing, across, measure);
  const beside = page.width - drawn - GUTTER;
  const together = sideBySide([
    { x: 0, strips: [...set('cut', beside), ...key(beside)] },
    { x: page.width - drawn, strips: [picture(figure, 11)] },
  ]);
  return together.height <= page.height
    ? [together]
    : [...set('cut', page.width), picture(figure, 11), ...key(page.width)];
}

/** Between rows of pictures, and under their heading. */
const ROW_GAP = 13;
const UNDER_HEADING = 6;

/** Each row is whole on its page, the first under the heading. */
const foldInPictures = (rows: readonly Figure[], width: number, measure: Measure): readonly Strip[] => [
  ...setText('The fold, step by step', width, HEADING, measure, 11).map((strip) => ({
    ...strip,
    keepsWithNext: true,
  })),
  ...rows.map((row, index) => picture(row, index === 0 ? UNDER_HEADING : ROW_GAP)),
];

function marksBesideDryFold(set: Set, width: number): readonly Strip[] {
  const dryFold = reach(set('dry-fold', width / 2));
  const left = width - dryFold - GUTTER;
  const marks = set('marks', left);
  return reach(marks) <= left
    ? [
        sideBySide([
          { x: 0, strips: marks },
          { x: left + GUTTER, strips: set('dry-fold', dryFold) },
        ]),
      ]
    : [...set('marks', width), ...whole(set('dry-fold', width))];
}

function marginsBesideFinished(set: Set, width: number): readonly Strip[] {
  const margins = reach(set('margins', width));
  const left = width - margins - GUTTER;
  return left < NARROWEST
    ? [...whole(set('margins', width)), ...whole(set('finished', width))]
    : [
        sideBySide([
          { x: 0, strips: set('margins', margins) },
          { x: margins + GUTTER, strips: set('finished', left) },
        ]),
      ];
}

/** Strips that stay on one page. */
const whole = (strips: readonly Strip[]): readonly Strip[] =>
  strips.map((strip, index) => ({ ...strip, keepsWithNext: index < strips.length - 1 }));
