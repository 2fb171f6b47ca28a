/** One character that is a fraction, and its value. */
const glyphValues: ReadonlyMap<string, readonly [over: number, under: number]> = new Map([
  ['½', [1, 2]],
  ['⅓', [1, 3]],
  ['⅔', [2, 3]],
  ['¼', [1, 4]],
  ['¾', [3, 4]],
  ['⅕', [1, 5]],
  ['⅖', [2, 5]],
  ['⅗', [3, 5]],
  ['⅘', [4, 5]],
  ['⅙', [1, 6]],
  ['⅚', [5, 6]],
  ['⅐', [1, 7]],
  ['⅛', [1, 8]],
  ['⅜', [3, 8]],
  ['⅝', [5, 8]],
  ['⅞', [7, 8]],
  ['⅑', [1, 9]],
  ['⅒', [1, 10]],
]);

export const fractionGlyphs = [...glyphValues.keys()].join('');

/** What is wrong with a number, and how it may have been meant (each reading a number or a sum as written). */
export interface BadNumber {
  readonly wrong: string;
  readonly why?: string;
  readonly readings: readonly string[];
  /** What to do where there is no reading to choose. */
  readonly help?: string;
}

/** The value of a number as written (`12`, `.5`, `5 1/2`, `5½`), or what is wrong with it. */
export function readNumber(image: string): number | BadNumber {
  const value = decimal(image) ?? glyph(image) ?? fraction(image);
  if (value === null) return slips.find(({ pattern }) => pattern.test(image))?.say(image) ?? unreadable;
  if (typeof value === 'number' && !Number.isFinite(value))
    return { wrong: 'has too many digits', readings: [] };
  return value;
}

const unreadable: BadNumber = {
  wrong: 'is not a number',
  why: 'a number is written `12`, `0.5`, `1/2` or `5 1/2`',
  readings: [],
};

const decimal = (image: string): number | null =>
  /^(?:\d+(?:\.\d+)?|\.\d+)$/.test(image) ? Number(image) : null;

/** `½`, `5½` and `5 ½` */
function glyph(image: string): number | null {
  const parts = /^(\d*)[ \t]*(\D)$/.exec(image);
  const value = glyphValues.get(parts?.[2] ?? '');
  return value === undefined ? null : Number(parts?.[1]) + value[0] / value[1];
}

/** `1/2` and `5 1/2` */
function fraction(image: string): number | BadNumber | null {
  const parts = /^(?:(\d+)[ \t]+)?(\d+)\/(\d+)$/.exec(image);
  if (parts === null) return null;
  const [, whole, over = '', under = ''] = parts;
  if (Number(under) === 0) {
    return { wrong: 'divides by zero', readings: [], help: 'write a number above zero under the stroke' };
  }
  if (Number(over) < Number(under)) return Number(whole ?? 0) + Number(over) / Number(under);
  return {
    wrong: 'is not a fraction',
    why: `a fraction is less than one, and ${over}/${under} is ${rounded(Number(over) / Number(under))}`,
    readings: unfold(whole, over, under),
  };
}

/** `51/2` is 25 1/2 when it is meant, 5 1/2 when a space was lost. */
function unfold(whole: string | undefined, over: string, under: string): string[] {
  if (over.length > 6) return [];
  const wholes = Number(whole ?? 0) + Math.floor(Number(over) / Number(under));
  const rest = Number(over) % Number(under);
  const readings = [rest === 0 ? String(wholes) : `${wholes} ${rest}/${under}`];
  if (whole !== undefined) return readings;
  for (let cut = over.length - 1; cut > 0; cut--) {
    const part = over.slice(cut);
    if (Number(part) > 0 && Number(part) < Number(under) && !part.startsWith('0')) {
      readings.push(`${over.slice(0, cut)} ${part}/${under}`);
    }
  }
  return readings.slice(0, 3);
}

const rounded = (value: number): string => String(Math.round(value * 1e4) / 1e4);

interface Slip {
  readonly pattern: RegExp;
  readonly say: (image: string) => BadNumber;
}

/** Numbers joined wrongly, the telling ones first. */
const slips: readonly Slip[] = [
  {
    pattern: /[⁄−–]/,
    say: (image) => {
      const typed = image.replace(/⁄/g, '/').replace(/[−–]/g, '-');
      const read = readNumber(typed);
      return {
        wrong: 'has a stroke or a dash that only looks like `/` or `-`',
        readings: typeof read === 'number' ? [typed] : read.readings,
      };
    },
  },
  {
    pattern: /^\d+-\d+\/\d+$/,
    say: (image) => ({
      wrong: 'joins a whole number and a fraction by a hyphen',
      why: 'a mixed number takes a space, and a difference a space on both sides of the `-`',
      readings: [image.replace('-', ' '), image.replace('-', ' - ')],
    }),
  },
  {
    pattern: /^[\d./]+-[\d./-]+$/,
    say: (image) => ({
      wrong: 'joins numbers by a hyphen',
      why: 'a `-` between values has a space on both sides, and a range is no value',
      readings: [],
      help: `write one number, or \`${image.replaceAll('-', ' - ')}\` for a difference`,
    }),
  },
  {
    pattern: /^[1-9]\d{0,2}(?:,\d{3})+$/,
    say: (image) => ({
      wrong: 'has a comma inside',
      why: 'thousands are not set apart, decimals follow a point, and a list has a space after its comma',
      readings: [image.replaceAll(',', ''), image.replaceAll(',', ', ')],
    }),
  },
  {
    pattern: /^\d+,\d+$/,
    say: (image) => ({
      wrong: 'has a comma inside',
      why: 'decimals follow a point, and a list has a space after its comma',
      readings: [image.replace(',', '.'), image.replace(',', ', ')],
    }),
  },
  {
    pattern: /,/,
    say: (image) => ({
      wrong: 'joins numbers by a comma',
      why: 'a list has a space after its comma',
      readings: [image.replaceAll(',', ', ')],
    }),
  },
  {
    pattern: /^\d+\.$/,
    say: (image) => ({
      wrong: 'ends in a point',
      readings: [image.slice(0, -1)],
    }),
  },
  {
    pattern: /^[\d.]+(?:\/[\d.]+)+$/,
    say: (image) => ({
      wrong: 'is not a fraction',
      why: 'a fraction is one whole number over another; a `/` that divides has a space on both sides',
      readings: [image.replaceAll('/', ' / ')],
    }),
  },
  {
    pattern: /^\d+(?:\.\d+)?[eE][-+]?\d{1,2}$/,
    say: (image) => ({
      wrong: 'has an exponent',
      why: 'numbers are written out',
      readings: writtenOut(Number(image)),
    }),
  },
];

function writtenOut(value: number): string[] {
  const text = String(value);
  return text.includes('e') ? [] : [text];
}
