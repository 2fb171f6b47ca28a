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
  /** Into how many parts a sheet's long side is folded, once or twice. */
  const folds: { [word: string]: readonly number[] } = { half: [2], third: [3], quarter: [2, 2] };
  const number = '(\\d+/\\d+|\\d+(?:[.,]\\d+)?(?:[ -]\\d+/\\d+)?|\\.\\d+)';
  const unit = '(mm|cm|inches|inch|in|mil|"|″)?';
  const idle = 'a an the for my of card cards envelope envelopes takes fits please'.split(' ');
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

  /** What is not read yet: pieces are taken out of it. */
  let rest = ` ${typed.toLowerCase()} `
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (glyph) => ` ${glyphs[glyph]}`)
    .replace(/[,;.?!](?= )/g, ' ')
    .replace(/ +/g, ' ');
  const take = (pattern: RegExp): RegExpExecArray | null => {
    const found = pattern.exec(rest);
    if (found) rest = `${rest.slice(0, found.index)} ${rest.slice(found.index + found[0].length)}`;
    return found;
  };

  const takeThick = (): number | null => {
    const thick =
      take(new RegExp(`(?:up to |at most |max )?${number} ?${unit} ?(?:thick|deep|high)\\b`)) ??
      take(new RegExp(`(?:up to|at most) ${number} ?${unit}(?![a-z])`));
    return thick && inMm(thick[1], thick[2]);
  };
  const takeSize = (): Query['card'] => {
    const size = take(new RegExp(`${number} ?${unit} ?(?:x|×|by) ?${number} ?${unit}(?![a-z])`));
    return size && { width: inMm(size[1], size[2], size[4]), height: inMm(size[3], size[4], size[2]) };
  };
  const takeSheet = (): Query['card'] => {
    const words = rest.trim().split(' ');
    const at = words.findIndex((word) => Object.hasOwn(sizes, word));
    const sheet = sizes[words[at] ?? ''];
    if (sheet === undefined) return null;
    const parts = folds[words[at - 1] ?? ''] ?? [];
    const [width, height] = parts.reduce<readonly number[]>(
      ([short = 0, long = 0], part) => [long / part, short].sort((a, b) => a - b),
      sheet,
    );
    words.splice(parts.length === 0 ? at : at - 1, parts.length === 0 ? 1 : 2);
    rest = words.join(' ');
    return { width: width ?? 0, height: height ?? 0 };
  };

  const thick = takeThick();
  const read = takeSize() ?? takeSheet();
  const card =
    read && read.width > 0 && read.height > 0 && Number.isFinite(read.width + read.height) ? read : null;
  const isAsked = (word: string): boolean => /[\p{L}\p{N}]/u.test(word) && !(card && idle.includes(word));
  return { card, thick, words: rest.split(' ').filter(isAsked) };
}
