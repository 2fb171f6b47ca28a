import { report, type Report } from '../../diagnostics/problem.js';
import type { Dimension, Operator, Refusal } from '../../measure/quantity.js';
import type { BinaryNode } from '../../syntax/ast.js';
import { type Span, spanText } from '../../text/span.js';
import { letLabel } from './let-label.js';
import { readingsOf } from './paper-weights.js';
import { type Place, unitsMissing } from '../place.js';
import { missing, range, wrongKind } from '../problems.js';
import { quote } from '../quote.js';
import { A_DIMENSION, type Amount, kindOf, type Value } from './value.js';

/** Reports a value that is not of the wanted dimension. */
export function refuseConversion(
  refusal: Refusal,
  value: Value,
  wanted: Dimension,
  at: Span,
  place: Place,
): void {
  const { context, what } = place;
  if (refusal === 'no-units' && value.kind === 'quantity' && value.unitless) {
    unitsMissing(context, value.unitless);
    return;
  }
  const found = quote(at);
  if (refusal === 'bare') {
    context.tell(
      report(missing, {
        message: `${what} wants ${A_DIMENSION[wanted]}, and ${found} has no unit`,
        at,
        related: letLabel(at, place),
        ...(wanted === 'grammage' ? weightReadings(spanText(at)) : {}),
        help: COUNT.test(spanText(at))
          ? `write ${EXAMPLES[wanted](spanText(at))}`
          : `give its number a unit where it is written: ${EXAMPLES[wanted]('20')}`,
      }),
    );
    return;
  }
  const share = refusal === 'pure';
  context.tell(
    report(wrongKind, {
      message: share
        ? `${what} wants a length, and ${found} is a share of one`
        : `${what} wants ${A_DIMENSION[wanted]}, and ${found} is ${kindOf(value)}`,
      at,
      related: letLabel(at, place),
      ...(share ? { help: 'multiply it with a length, such as `50% * 10 mm`' } : mend(value, wanted, at)),
    }),
  );
}

/** One number, without a name or a sum. */
const COUNT = /^[\d½¼¾⅛⅜⅝⅞ ./]+$/;

/** What a weight without a unit may be. */
function weightReadings(count: string): Pick<Report, 'why'> {
  const readings = readingsOf(count);
  return readings.length === 0 ? {} : { why: [`it could be ${count} gsm`, ...readings].join('; ') };
}

/** The remedy; an edit where grams of paper can only be grams for each square metre. */
function mend(value: Value, wanted: Dimension, at: Span): Pick<Report, 'help' | 'fix'> {
  const found = value.kind === 'size' ? 'size' : value.quantity.dimension;
  if (wanted === 'grammage' && found === 'mass') {
    const grams = GRAMS.test(spanText(at));
    return grams
      ? {
          help: `write \`${spanText(at)}sm\`, which is grams for each square metre`,
          fix: [{ span: { ...at, start: at.end }, text: 'sm' }],
        }
      : { help: 'write a weight per area: `118 gsm`, or `80 lb text`' };
  }
  if (wanted === 'mass' && found === 'grammage')
    return { help: 'write the weight of the thing itself: `20 g`, or `1 oz`' };
  if (wanted === 'length' && found === 'size') return { help: 'write one length, not two sides' };
  return { help: `write ${EXAMPLES[wanted]('20')}` };
}

/** One number in grams. */
const GRAMS = /^[\d.]+ ?g$/;

/** How a value of each dimension is written. */
const EXAMPLES: Readonly<Record<Dimension, (count: string) => string>> = {
  number: (count) => `a plain number without a unit, such as \`${count}\``,
  length: () => 'a length, such as `12 mm` or `1/2 in`',
  area: () => 'an area as a product of two lengths, such as `2 mm * 3 mm`',
  mass: (count) => `\`${count} g\` or \`${count} oz\``,
  grammage: (count) => `\`${count} gsm\`, or pounds with a grade, such as \`${count} lb text\``,
};

const ACTS: Readonly<Record<Operator, (left: string, right: string) => string>> = {
  '+': (left, right) => `adds ${right} to ${left}`,
  '-': (left, right) => `takes ${right} from ${left}`,
  '*': (left, right) => `multiplies ${left} by ${right}`,
  '/': (left, right) => `divides ${left} by ${right}`,
};

/** Reports an operation that comes to nothing. */
export function refuseSum(
  refusal: Refusal,
  left: Amount,
  right: Amount,
  { operator, span, right: divisor }: BinaryNode,
  { context }: Place,
): void {
  const unitless = left.unitless ?? right.unitless;
  if (unitless && (refusal === 'no-units' || refusal === 'other-units')) {
    unitsMissing(context, unitless);
    return;
  }
  const sum = quote(span);
  const acts = ACTS[operator](kindOf(left), kindOf(right));
  const reports: Readonly<Record<Refusal, Omit<Report, 'at'>>> = {
    unlike: {
      message: `${sum} ${acts}, which comes to nothing known here`,
      help: 'give both sides units that go together',
    },
    'no-units': { message: `${sum} lacks a unit`, help: 'give its numbers units' },
    bare: {
      message: `${sum} ${acts}`,
      why: 'only a length may be written without a unit',
      help: 'give the plain number the unit of the other',
    },
    pure: {
      message: `${sum} ${acts}, and that number is a share, not a length`,
      help: 'multiply the share with a length first',
    },
    'other-units': {
      message: `${sum} puts plain numbers together that were written under different \`units\``,
      why: 'each would be a length of another unit',
      help: 'give the `let` a unit where it is declared',
    },
    'division-by-zero': {
      message: `${sum} divides by ${quote(divisor.span)}, which is 0`,
      help: 'divide by something above 0',
    },
  };
  const problem = refusal === 'division-by-zero' ? range : refusal === 'bare' ? missing : wrongKind;
  const at = refusal === 'division-by-zero' ? divisor.span : span;
  context.tell(report(problem, { at, ...reports[refusal] }));
}
