/** A size by name, in mm. */
export interface Sizes {
  readonly [name: string]: readonly [short: number, long: number];
}

/** What was asked for: a card to hold, words to be found, or both. Lengths mm; null: not asked for. */
export interface Query {
  readonly card: { readonly width: number; readonly height: number } | null;
  readonly thick: number | null;
  /** Lower case. */
  readonly words: readonly string[];
}

/**
 * Reads what is typed into the search: `5 x 7 in`, `148 x 105 mm`, `A6`, `half letter`, with or without `up to 4 mm thick`, and words.
 * A bare number goes by `units`. It runs in the page, so it names nothing outside itself.
 */
export function readQuery(typed: string, sizes: Sizes, units: string): Query {
  const perUnit: { [unit: string]: number } = {
    mm: 1,
    cm: 10,
    in: 25.4,
    '"': 25.4,
    '″': 25.4,
    inch: 25.4,
    inches: 25.4,
    mil: 0.0254,
  };
  const glyphs: { [glyph: string]: string } = {
    '½': '1/2',
    '¼': '1/4',
    '¾': '3/4',
    '⅛': '1/8',
    '⅜': '3/8',
    '⅝': '5/8',
    '⅞': '7/8',
    '⅓': '1/3',
    '⅔': '2/3',
  };
  const number = '(\\d+/\\d+|\\d+(?:[.,]\\d+)?(?:[ -]\\d+/\\d+)?|\\.\\d+)';
  const unit = '(mm|cm|inches|inch|in|mil|"|″)?';
  const idle = [
    'a',
    'an',
    'the',
    'for',
    'my',
    'of',
    'card',
    'cards',
    'envelope',
    'envelopes',
    'takes',
    'fits',
    'please',
  ];
  const valueOf = (written: string): number =>
    written
      .replace(',', '.')
      .split(/[ -]/)
      .reduce((sum, part) => {
        const [over, under] = part.split('/');
        return sum + Number(over) / (under === undefined ? 1 : Number(under));
      }, 0);
  const inMm = (value: string | undefined, its: string | undefined, other?: string): number =>
    valueOf(value ?? '') * (perUnit[its ?? other ?? units] ?? 1);

  let rest = ` ${typed.toLowerCase()} `
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (glyph) => ` ${glyphs[glyph]}`)
    .replace(/[,;.?!](?= )/g, ' ')
    .replace(/ +/g, ' ');
  const take = (pattern: RegExp): RegExpExecArray | null => {
    const found = pattern.exec(rest);
    if (found) rest = `${rest.slice(0, found.index)} ${rest.slice(found.index + found[0].length)}`;
    return found;
  };
  const depth =
    take(new RegExp(`(?:up to |at most |max )?${number} ?${unit} ?(?:thick|deep|high)\\b`)) ??
    take(new RegExp(`(?:up to|at most) ${number} ?${unit}(?![a-z])`));
  const size = take(new RegExp(`${number} ?${unit} ?(?:x|×|by) ?${number} ?${unit}(?![a-z])`));
  let card: { width: number; height: number } | null = null;
  if (size) card = { width: inMm(size[1], size[2], size[4]), height: inMm(size[3], size[4], size[2]) };
  else {
    const words = rest.trim().split(' ');
    const at = words.findIndex((word) => Object.hasOwn(sizes, word));
    const named = sizes[words[at] ?? ''];
    if (named) {
      let [width, height] = named;
      const parts: { [fold: string]: number } = { half: 2, third: 3, quarter: 4 };
      const fold = parts[words[at - 1] ?? ''] ?? 1;
      const halve = (): void => {
        [width, height] = [height / 2, width].sort((a, b) => a - b) as [number, number];
      };
      if (fold === 3) [width, height] = [height / 3, width].sort((a, b) => a - b) as [number, number];
      if (fold === 2 || fold === 4) halve();
      if (fold === 4) halve();
      card = { width, height };
      words.splice(fold === 1 ? at : at - 1, fold === 1 ? 1 : 2);
      rest = words.join(' ');
    }
  }
  const fits =
    card !== null && card.width > 0 && card.height > 0 && Number.isFinite(card.width + card.height);
  return {
    card: fits ? card : null,
    thick: depth ? inMm(depth[1], depth[2]) : null,
    words: rest.split(' ').filter((word) => /[\p{L}\p{N}]/u.test(word) && !(fits && idle.includes(word))),
  };
}
