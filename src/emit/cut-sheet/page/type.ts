/** A size of type: points, with the distance from one baseline to the next. */
export interface Style {
  readonly font: 'regular' | 'bold';
  readonly size: number;
  readonly leading: number;
  /** How dark: words to read, or words beside them. */
  readonly ink: 'full' | 'quiet';
}

/** The width of a text in a style, in points. */
export type Measure = (text: string, style: Style) => number;

export const BODY: Style = { font: 'regular', size: 9.5, leading: 12.4, ink: 'full' };
export const STRONG: Style = { ...BODY, font: 'bold' };
/** Figures are read at arm's length. */
export const FIGURES: Style = { font: 'regular', size: 10, leading: 12.6, ink: 'full' };
export const BESIDE: Style = { ...FIGURES, ink: 'quiet' };
export const HEADING: Style = { font: 'bold', size: 11.5, leading: 15.5, ink: 'full' };
export const COLUMN_HEADING: Style = { font: 'regular', size: 8.5, leading: 11, ink: 'quiet' };
export const KEY: Style = { font: 'regular', size: 8.5, leading: 11, ink: 'full' };
export const FOOT: Style = { font: 'regular', size: 8.5, leading: 11, ink: 'quiet' };
export const SUMMARY: Style = { font: 'regular', size: 11, leading: 15, ink: 'full' };

/** Sizes for the title, the largest first: the first in which it takes at most two lines, or else the last. */
export const TITLES: readonly Style[] = [26, 21, 17, 14].map((size) => ({
  font: 'bold',
  size,
  leading: Math.round(size * 1.2),
  ink: 'full',
}));

/** Where a baseline lies in its line, as a share of the leading. */
export const BASELINE = 0.74;

/**
 * A text with the fractions of a ruler's reading (`11 1/4 in`) as real ones: a narrow no-break space, and a fraction slash about
 * which the font sets the figures small.
 */
export const typeset = (text: string): string =>
  text.replace(
    FRACTION,
    (_, whole: string | undefined, numerator: string, denominator: string) =>
      `${whole ? `${whole.trimEnd()}\u202f` : ''}${numerator}\u2044${denominator}`,
  );

/** Whole inches, if any, and a fraction, before a unit or the `×` of a size. */
const FRACTION = /(?<![\d./])(\d+[ \u00a0])?(\d+)\/(\d+)(?=[ \u00a0](?:in\b|×))/g;
