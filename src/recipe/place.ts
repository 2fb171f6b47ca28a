import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import type { ItemNode, LetNode, NumberNode, UnitNode } from '../syntax/ast.js';
import type { Source } from '../text/source.js';
import { type Span, spanText } from '../text/span.js';
import type { Names } from './names.js';
import { missing, wrongKind } from './problems.js';
import type { RecipeFile } from './uses.js';
import type { Value } from './sums/value.js';

/** What the evaluation of every value shares. */
export interface Context {
  readonly names: Names;
  /** Whether a word is the name of a property: those are no names of values. */
  readonly isProperty: (word: string) => boolean;
  readonly tell: (finding: Diagnostic) => void;
  /** Worked out before any property is read; null was broken and has been reported. */
  readonly lets: Map<LetNode, Value | null>;
  /** Units already reported: one unit may serve several items. */
  readonly badUnits: Set<UnitNode>;
  /** Files whose missing `units` have been reported. */
  readonly unitless: Set<Source>;
}

/** Where one value stands, and what was met while it was read. */
export interface Place {
  readonly context: Context;
  readonly file: RecipeFile;
  /** What is being read, as findings name it: `bulk`, `let hand`, `expect blank`. */
  readonly what: string;
  /** Whether the place speaks of a sheet, where an ISO name cannot be a US envelope's. */
  readonly sheet: boolean;
  /** Bare numbers that take the unit of a later item. */
  readonly carried: ReadonlyMap<NumberNode, UnitNode>;
  /** Bare numbers of this value that became lengths. */
  readonly bare: Span[];
  /** Numbers of this value in a unit of length other than the file's own. */
  readonly foreign: Span[];
}

/** Opens a place for the items of one value. */
export const placeFor = (
  context: Context,
  file: RecipeFile,
  what: string,
  items: readonly ItemNode[],
  sheet = false,
): Place => ({ context, file, what, sheet, carried: carriedUnits(items), bare: [], foreign: [] });

/** In a size or a list, a bare number takes the unit of the next item that is one number with a unit. */
function carriedUnits(items: readonly ItemNode[]): ReadonlyMap<NumberNode, UnitNode> {
  const carried = new Map<NumberNode, UnitNode>();
  let unit: UnitNode | null = null;
  for (const item of items.toReversed()) {
    for (const part of item.kind === 'size' ? [item.second, item.first] : [item]) {
      if (part.kind !== 'number') continue;
      if (part.unit) unit = part.unit;
      else if (unit) carried.set(part, unit);
    }
  }
  return carried;
}

/** Reports a bare length and a foreign unit within one value; true where they are not mixed. */
export function unmixed({ context, file, what, bare, foreign }: Place): boolean {
  const [number] = bare;
  const [other] = foreign;
  if (number === undefined || other === undefined) return true;
  const text = spanText(number);
  context.tell(
    report(wrongKind, {
      message: `${what} mixes the bare number \`${text}\`, which \`units ${file.units}\` makes ${text} ${file.units}, with \`${spanText(other)}\``,
      at: number,
      label: 'no unit of its own',
      related: [{ span: other, text: 'another unit' }],
      help: `write \`${text} ${file.units}\`, or give it the other unit`,
    }),
  );
  return false;
}

/** Reports that a bare number was to be a length in a file without `units`; once for each file. */
export function unitsMissing({ unitless, tell }: Context, number: Span): void {
  if (unitless.has(number.source)) return;
  unitless.add(number.source);
  const text = spanText(number);
  tell(
    report(missing, {
      message: `\`${text}\` has no unit, and this file does not state its \`units\``,
      at: number,
      why: `it could be ${text} mm, ${text} cm or ${text} in`,
      help: 'write `units in`, `units mm` or `units cm` on the first line',
    }),
  );
}
