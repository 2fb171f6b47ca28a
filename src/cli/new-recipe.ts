/** What a bare length may be in a new recipe. */
export const NEW_UNITS = ['mm', 'cm', 'in'] as const;
export type NewUnits = (typeof NEW_UNITS)[number];

/** What its paper is called, and so its envelope cannot be: they share one set of names. */
export const NEW_PAPER = 'text';

/** A usual card, filled with a sheet of its own, in each of the units. */
const FIGURES: Readonly<Record<NewUnits, Readonly<Record<'card' | 'bulk' | 'sheet' | 'most', string>>>> = {
  mm: { card: '148 x 105', bulk: '1', sheet: '420 x 297', most: '220' },
  cm: { card: '14.8 x 10.5', bulk: '0.1', sheet: '42 x 29.7', most: '22' },
  in: { card: '5 1/2 x 4 1/4', bulk: '1/16', sheet: '12 x 12', most: '9' },
};

/** The text of a first recipe: valid, in the canonical layout, and explained line by line. */
export function newRecipe(name: string, units: NewUnits): string {
  const { card, bulk, sheet, most } = FIGURES[units];
  return `# One envelope. All that is not stated here follows from the card.

# What a bare number means: mm, cm or in.
units ${units}

# The sheet that it is cut from. With the weight, the cut sheet tells the envelope's mass.
paper ${NEW_PAPER} {
  sheet: ${sheet}
  weight: 120 gsm
}

envelope ${name} {
  title: "${titleOf(name)}"
  # The folded card, whichever way round.
  card: ${card}
  # Thickness of the filled card, with all that is stuck on it.
  bulk: ${bulk}
  paper: ${NEW_PAPER}
  # What must stay true, however the recipe changes; take away the # to have it checked.
  # expect blank <= ${most}
}
`;
}

/** `tide-card`: `Tide card` */
const titleOf = (name: string): string => (name.charAt(0).toUpperCase() + name.slice(1)).replaceAll('-', ' ');
