/*
 * emit/fit/: what fits, as a sheet of words and for programs.
 * In: a SheetFit or a CardFit. Out: content of a sheet, JSON.
 * Refuses to know: how it was found.
 */
import type { CardFit, SheetFit } from '../../fit/fit.js';
import { STEP } from '../../fit/largest-card.js';
import type { Tried } from '../../fit/wish.js';
import type { Cell, Section, Sheet, Term } from '../cut-sheet/content.js';
import { both, type Lengths, lengths } from '../cut-sheet/lengths.js';

/** What can be made from a sheet, in words; recipes are told of where files were given. */
export function sheetFitWords(fit: SheetFit, filesAreGiven: boolean): Sheet {
  const say = lengths({ units: fit.units, step: STEP[fit.units] });
  const walls = fit.depth > 0 ? `, with walls ${both(say.read(fit.depth))} high` : '';
  return {
    name: '',
    title: `From a sheet of ${say.readSize(fit.sheet).read}`,
    summary: `One envelope for each, cut from one sheet${walls}; all that is not said follows by default.`,
    notes: [],
    sections: [largest(fit, say), byName(fit, say), ...(filesAreGiven ? [atHand(fit, say)] : [])],
  };
}

const largest = ({ largest: shapes }: SheetFit, say: Lengths): Section<string> =>
  table({
    heading: 'The largest card of a shape',
    headings: ['Shape', 'Card', 'Blank', 'Side mark', 'End mark', 'Crossing', 'Seams'],
    rows: shapes.map(({ shape, found }): readonly Cell[] => {
      if (found === null) return [shape.name, 'none', '', '', '', '', ''];
      const { facts } = found.tried;
      return [
        shape.name,
        say.readSize(found.wish.card).read,
        say.read(facts.blank.width).read,
        say.read(markOf(found.tried, 'left')).read,
        say.read(markOf(found.tried, 'seal')).read,
        say.exact(facts.margins.crossing).read,
        say.exact(facts.margins.seamOverlap).read,
      ];
    }),
    none: '',
  });

const byName = ({ sizes }: SheetFit, say: Lengths): Section<string> =>
  table({
    heading: 'Sizes by name',
    headings: ['Card', 'Its size', 'Blank', 'Sheet yields'],
    rows: sizes.map(({ name, wish, tried, copies }) => [
      name,
      say.readSize(wish.card),
      say.read(tried.facts.blank.width),
      String(copies),
    ]),
    none: 'None: the sheet is too small.',
  });

const atHand = ({ recipes }: SheetFit, say: Lengths): Section<string> =>
  table({
    heading: 'Recipes at hand',
    headings: ['Envelope', 'Blank', 'Sheet yields'],
    rows: recipes.map(({ name, blank, copies }) => [name, say.readSize(blank), String(copies)]),
    none: 'None of those given is cut from so small a sheet.',
  });

const markOf = ({ facts }: Tried, flap: 'left' | 'seal'): number => facts.scores[flap][0]?.alongEdge ?? 0;

interface Listing {
  readonly heading: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  /** What is said where there are no rows. */
  readonly none: string;
}

const table = ({ heading, headings, rows, none }: Listing): Section<string> => ({
  name: heading,
  heading,
  blocks: [rows.length > 0 ? { kind: 'table', headings, rows } : { kind: 'paragraph', text: none }],
});

/** The recipe for a card, in words; papers and envelopes are told of where files were given. */
export function cardFitWords(fit: CardFit, filesAreGiven: boolean): Sheet {
  const { wish, tried, papers, takers } = fit;
  const say = lengths({ units: wish.units, step: STEP[wish.units] });
  return {
    name: '',
    title: `For a card of ${say.readSize(wish.card).read}`,
    summary:
      wish.blank === undefined
        ? 'What follows from the card, by default.'
        : 'What a blank that is cut already leaves this card.',
    notes: [],
    sections: [
      { name: 'recipe', heading: 'The envelope', blocks: [{ kind: 'terms', terms: terms(tried, say) }] },
      ...(filesAreGiven
        ? [
            table({
              heading: 'Papers that hold it',
              headings: ['Paper', 'Sheet', 'Sheet yields', 'In stock'],
              rows: papers.map(({ paper, sheet, copies }) => [
                paper.name,
                say.readSize(sheet),
                String(copies),
                paper.stock === null ? '' : String(paper.stock),
              ]),
              none: 'None of those given has a sheet that is large enough.',
            }),
            table({
              heading: 'Envelopes that take it as they are, the snuggest first',
              headings: ['Envelope', 'Room in width', 'Room in height'],
              rows: takers.map(({ envelope: { name }, facts: { margins } }) => [
                name,
                say.exact(margins.roomWidth),
                say.exact(margins.roomHeight),
              ]),
              none: 'None of those given.',
            }),
          ]
        : []),
    ],
  };
}

function terms(tried: Tried, say: Lengths): readonly Term[] {
  const { facts, envelope } = tried;
  const { margins, worst, card, depth } = facts;
  return [
    { label: 'Blank', text: `${both(say.read(facts.blank.width))}, square` },
    {
      label: 'Marks',
      text: `${both(say.read(markOf(tried, 'left')))} from the side corners, ${both(say.read(markOf(tried, 'seal')))} from the end corners`,
    },
    { label: 'Ease', text: both(say.exact(envelope.ease.value.width)) },
    {
      label: 'Seam',
      text: `${both(say.exact(envelope.seam.value))}; the flaps lie ${both(say.exact(margins.seamOverlap))} over each other`,
    },
    {
      label: 'Walls',
      text:
        depth > 0
          ? `${both(say.exact(depth))} as made, for a filled card ${both(say.exact(card.bulk))} thick`
          : `none, for a filled card ${both(say.exact(card.bulk))} thick`,
    },
    {
      label: 'Room',
      text: `${both(say.exact(margins.roomWidth))} in width and ${both(say.exact(margins.roomHeight))} in height; at worst ${both(say.exact(worst.roomWidth))} and ${both(say.exact(worst.roomHeight))}`,
    },
    {
      label: 'Crossing',
      text: `the marks on an edge pass each other by ${both(say.exact(margins.crossing))}`,
    },
  ];
}
