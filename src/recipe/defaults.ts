import { fits } from '../measure/slack.js';
import { MM_PER, type Units } from '../measure/unit.js';
import { stated } from './gathered.js';
import type { Gathered } from './likes.js';
import type { Stated } from './origin.js';
import type { PropertyName, ValueOf } from './properties.js';
import type { Caliper, CornerTreatment, Envelope, Paper, Size } from './recipe.js';
import type { Span } from '../text/span.js';

/** An envelope's name, and the units of its file. */
export interface Named {
  readonly name: string;
  readonly span: Span;
  readonly statement: Span;
  readonly units: Units;
}

/** The papers that an envelope names; null where it names none. */
export interface NamedPapers {
  readonly paper: Stated<Paper | null> | null;
  readonly linerPaper: Stated<Paper | null> | null;
}

/**
 * Fills in what is left out, by the table of grammar/reference.md. Needs a card; lengths mm. A derived ease or seam has
 * the origin `default`, also where a fixed face or blank is what it follows from.
 */
export function withDefaults(
  { name, span, statement, units }: Named,
  card: Stated<Size>,
  papers: NamedPapers,
  gathered: Gathered,
): Envelope {
  const byDefault = <T>(value: T): Stated<T> => ({ value, origin: { kind: 'default', span } });
  const or = <Name extends PropertyName, const T>(property: Name, value: T): Stated<ValueOf<Name> | T> =>
    stated(gathered, property) ?? byDefault(value);
  const turned = (size: Stated<Size>): Stated<Size> => ({
    ...size,
    value: turnedBy(opens.value, size.value),
  });
  const house = units === 'in' ? INCH_HOUSE : METRIC_HOUSE;

  const opens = or('opens', 'side');
  const bulk = or('bulk', 1);
  const depth = or('depth', 0);
  const shift = or('shift', 0);
  const step = or('step', house.step);
  const tolerance = or('tolerance', house.tolerance);
  const tape = or('tape', 6);
  const sideMarks = or('side-mark', null);
  const blank = or('blank', null);
  const paper = papers.paper ?? byDefault(null);
  const linerPaper = papers.linerPaper ?? byDefault(paper.value);
  const caliper = caliperOf(paper.value);

  const turnedCard = turned(card);
  const statedFace = stated(gathered, 'face');
  const fixedFace = statedFace && turned(statedFace);
  const ease = fixedFace
    ? byDefault(difference(fixedFace.value, turnedCard.value))
    : or('ease', easeFor(turnedCard.value, house.ease, bulk.value - depth.value));
  const face = fixedFace ?? byDefault(sum(turnedCard.value, ease.value));
  const seam = or(
    'seam',
    blank.value
      ? seamLeft(blank.value, face.value, depth.value, shift.value)
      : seamFor(face.value, house.seam, tape.value / 2 + 1 + 1.5 * tolerance.value + 0.75 * step.value),
  );

  return {
    name,
    span,
    statement,
    units,
    title: or('title', name),
    note: or('note', []),
    tags: or('tags', []),
    card: turnedCard,
    bulk,
    contents: or('contents', null),
    depth,
    ease,
    face,
    seam,
    blank,
    sideMarks,
    sealMark: or('seal-mark', null),
    bottomMark: or('bottom-mark', null),
    opens,
    shift,
    flap: or('flap', null),
    bottom: or('bottom', null),
    sides: or('sides', null),
    corners: or('corners', cornersFor(depth.value, caliper)),
    fasten: or('fasten', 'glue'),
    step,
    tolerance,
    paper,
    caliper,
    tape,
    liner: or('liner', null),
    linerPaper,
    linerCaliper: caliperOf(linerPaper.value),
    post: or('post', []),
    expects: gathered.expects,
    expectsPost: gathered.expectsPost,
    layers: gathered.layers,
  };
}

const inch = MM_PER.in;

/** What a house that works in inches has at hand, and one that works in millimetres. */
const INCH_HOUSE = { ease: inch / 4, seam: inch / 2, step: inch / 16, tolerance: inch / 32 };
const METRIC_HOUSE = { ease: 5, seam: 12, step: 0.5, tolerance: 0.8 };

/** Width along the flap's hinge: the long side, or the short one where the envelope opens at its end. */
function turnedBy(opens: 'side' | 'end', { width, height }: Size): Size {
  const long = Math.max(width, height);
  const short = Math.min(width, height);
  return opens === 'side' ? { width: long, height: short } : { width: short, height: long };
}

const sum = (one: Size, other: Size): Size => ({
  width: one.width + other.width,
  height: one.height + other.height,
});

const difference = (one: Size, other: Size): Size => ({
  width: one.width - other.width,
  height: one.height - other.height,
});

/** The house's ease, 2 % of a large card, and room for what the walls do not take of a thick one. */
function easeFor({ width, height }: Size, house: number, overhang: number): Size {
  const ease = Math.max(house, 0.02 * Math.max(width, height)) + Math.min(2, Math.max(0, overhang - 1));
  return { width: ease, height: ease };
}

/** The house's seam, or an eighth of a small face's shorter side; never less than the tape needs (`least`). */
const seamFor = ({ width, height }: Size, house: number, least: number): number =>
  Math.max(least, Math.min(house, Math.min(width, height) / 8));

/** What a fixed blank leaves: negative where the creases do not cross, which a check reports. */
const seamLeft = (blank: Size, face: Size, depth: number, shift: number): number =>
  ((blank.width + blank.height) / 2 - (face.width + face.height + 2 * depth + 2 * shift) / Math.SQRT2) / 2;

/** The caliper of a paper in mm; see DEVELOPERS.md for the estimate. */
function caliperOf(paper: Paper | null): Caliper {
  if (paper?.caliper) return { value: paper.caliper.value, basis: 'stated' };
  if (paper?.weight) return { value: (paper.weight.value * BULK) / 1000, basis: 'estimated' };
  return { value: 0.15, basis: 'assumed' };
}

/** cm³/g, or µm for each g/m²: uncoated papers run about 1.2 to 1.4 (from memory). */
const BULK = 1.3;

/** Paper up to this caliper in mm folds into ears that lie flat (common practice, no source). */
const THIN = 0.2;

function cornersFor(depth: number, { value }: Caliper): { bottom: CornerTreatment; seal: CornerTreatment } {
  const folds = depth === 0 && fits(value, THIN);
  return { bottom: folds ? 'folded' : 'notched', seal: 'notched' };
}
