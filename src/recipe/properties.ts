import type { BlockNode } from '../syntax/ast.js';
import { flapShape } from './kinds/flap-shape.js';
import { inset } from './kinds/inset.js';
import type { Kind } from './kinds/kind.js';
import {
  count,
  grammage,
  length,
  lengthOrSize,
  mass,
  pairOfLengths,
  plainNumber,
  share,
  size,
} from './kinds/length-kinds.js';
import { makes } from './kinds/makes.js';
import { postClasses } from './kinds/post-classes.js';
import { choice, corners, paperName, text, texts, words } from './kinds/word-kinds.js';

type Where = readonly BlockNode['type'][];

/** A property: where it may stand, what it takes, what holds if it is left out, and what it means. */
export interface Property<T> {
  readonly where: Where;
  readonly kind: Kind<T>;
  /** In words, for people; defaults.ts works it out. */
  readonly leftOut: string;
  readonly meaning: string;
  /** Whether `like` copies it. */
  readonly copied: boolean;
  /** Whether a broken value leaves the envelope as it is on paper. */
  readonly harmless: boolean;
}

const ENVELOPE: Where = ['envelope', 'style'];
const PAPER: Where = ['paper'];
const BATCH: Where = ['batch'];
const ANY: Where = ['envelope', 'style', 'paper', 'batch'];

const property = <T>(
  where: Where,
  kind: Kind<T>,
  leftOut: string,
  meaning: string,
  { copied = true, harmless = false } = {},
): Property<T> => ({ where, kind, leftOut, meaning, copied, harmless });

/** Every property, in the order in which grammar/reference.md lists them. */
export const PROPERTIES = {
  title: property(ANY, text, 'the name', 'shown on the cut sheet', {
    copied: false,
    harmless: true,
  }),
  note: property(ENVELOPE, texts, 'none', 'a paragraph each', { copied: false, harmless: true }),
  tags: property(ENVELOPE, words, 'none', 'group and filter', { harmless: true }),
  card: property(ENVELOPE, size, 'must be stated', 'the folded card'),
  bulk: property(ENVELOPE, length('0 or more'), '1 mm', 'thickness of the filled card, decorations included'),
  contents: property(ENVELOPE, mass, 'none', 'mass of what goes in'),
  depth: property(ENVELOPE, length('0 or more'), '0', 'wall of a box envelope'),
  ease: property(
    ENVELOPE,
    lengthOrSize('0 or more'),
    '1/4 in where `units in`, else 5 mm; 2 % of the card’s longer side if that is more; plus what `bulk` − `depth` is over 1 mm, at most 2 mm',
    'extra in width and height; a size is first along the flap’s hinge (width), then across it (height), however the card is written',
  ),
  face: property(ENVELOPE, size, '`card` + `ease`', 'a fixed outside size; the ease follows'),
  seam: property(
    ENVELOPE,
    length('0 or more'),
    '1/2 in where `units in`, else 12 mm; not more than an eighth of the face’s shorter side, never less than `tape`/2 + 1 mm + 1.5 · `tolerance` + 0.75 · `step`; or what a fixed `blank` leaves',
    'seam allowance',
  ),
  blank: property(
    ENVELOPE,
    lengthOrSize('above 0'),
    'derived',
    'a fixed blank (a size that is not square is reported by the check)',
  ),
  'side-mark': property(
    ENVELOPE,
    pairOfLengths,
    'derived',
    'fixed marks along the edge, from the side corners: one, or left, right',
  ),
  'seal-mark': property(
    ENVELOPE,
    length('0 or more'),
    'derived',
    'a fixed mark along the edge, from the seal corner',
  ),
  'bottom-mark': property(
    ENVELOPE,
    length('0 or more'),
    'derived',
    'a fixed mark along the edge, from the bottom corner',
  ),
  opens: property(ENVELOPE, choice('side', 'end'), '`side`', 'flap hinged on the long or the short edge'),
  shift: property(
    ENVELOPE,
    length('0 or more'),
    '0',
    'longer seal flap: by 2 · `shift` with a derived blank (bottom flap unchanged), by `shift` with a fixed one (bottom flap shorter by as much)',
  ),
  flap: property(
    ENVELOPE,
    flapShape,
    'pointed; cut only when needed',
    'shape of the seal flap (T: cut off the tip)',
  ),
  bottom: property(ENVELOPE, flapShape, 'pointed; cut only when needed', 'shape of the bottom flap'),
  sides: property(ENVELOPE, flapShape, 'pointed; cut only when needed', 'shape of the side flaps'),
  corners: property(
    ENVELOPE,
    corners,
    'flat: `folded`, `notched`; flat with caliper over 0.2 mm, and a box: `notched`',
    'what becomes of the corner pieces',
  ),
  fasten: property(
    ENVELOPE,
    choice('glue', 'tuck', 'seal'),
    '`glue`',
    'how the seal flap is held; decides the last step and the tape',
  ),
  step: property(ENVELOPE, length('above 0'), '1/16 in where `units in`, else 0.5 mm', 'the ruler’s step'),
  tolerance: property(
    ENVELOPE,
    length('0 or more'),
    '1/32 in where `units in`, else 0.8 mm',
    'how far a cut or a mark may be off',
  ),
  paper: property(ENVELOPE, paperName, 'none', 'the paper it is cut from'),
  tape: property(ENVELOPE, length('above 0'), '6 mm', 'width of the tape or glue line'),
  liner: property(
    ENVELOPE,
    inset,
    'none',
    'a lining over the inside of the face and the seal flap, this far inside their edges',
  ),
  'liner-paper': property(ENVELOPE, paperName, 'as `paper`', 'the paper that the lining is cut from'),
  post: property(ENVELOPE, postClasses, 'none', 'classes of post that must take the closed envelope', {
    harmless: true,
  }),
  sheet: property(PAPER, size, 'none', 'the sheet as it is bought'),
  weight: property(PAPER, grammage, 'none', 'mass per area: gsm, or lb with a grade'),
  caliper: property(
    PAPER,
    length('0 or more'),
    'estimated from `weight`, else 0.15 mm',
    'thickness of one sheet',
  ),
  grain: property(
    PAPER,
    choice('long', 'short'),
    'none',
    'whether the grain runs along the long or the short side',
    {
      harmless: true,
    },
  ),
  price: property(
    PAPER,
    plainNumber,
    'none',
    'for one sheet, in whatever currency the folder uses throughout',
    {
      harmless: true,
    },
  ),
  stock: property(PAPER, count, 'none', 'sheets there are', { harmless: true }),
  make: property(
    BATCH,
    makes,
    'must be stated',
    'which envelopes, how many of each, and from which paper if not its own',
  ),
  spoilage: property(
    BATCH,
    share,
    '0 %',
    'how many more of each are cut, for those that go wrong: rounded up for each',
  ),
} as const;

export type PropertyName = keyof typeof PROPERTIES;

/** What the value of a property is once it is read. */
export type ValueOf<Name extends PropertyName> =
  (typeof PROPERTIES)[Name] extends Property<infer T> ? T : never;

const BY_NAME: ReadonlyMap<string, Property<unknown>> = new Map(Object.entries(PROPERTIES));

export const propertyNamed = (name: string): Property<unknown> | undefined => BY_NAME.get(name);

export const isProperty = (name: string): name is PropertyName => BY_NAME.has(name);

/** The properties of one type of block. */
export const propertiesOf = (type: BlockNode['type']): readonly string[] =>
  [...BY_NAME].filter(([, { where }]) => where.includes(type)).map(([name]) => name);

/** Pairs that say one thing twice: in one block a conflict, along a `like` the nearer wins. */
export const ALTERNATIVES: readonly (readonly [
  one: readonly PropertyName[],
  other: readonly PropertyName[],
])[] = [
  [['blank'], ['seam']],
  [['face'], ['ease']],
  [['shift'], ['seal-mark', 'bottom-mark']],
];
