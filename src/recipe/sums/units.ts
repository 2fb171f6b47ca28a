import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import { report } from '../../diagnostics/problem.js';
import { UNITS, type Unit } from '../../measure/unit.js';
import { gsmPerPound } from '../../stock/paper-grades.js';
import type { NumberNode, UnitNode } from '../../syntax/ast.js';
import { nearest } from '../../text/nearest.js';
import { spanText } from '../../text/span.js';
import { isSize } from './is-size.js';
import { GRADES, gradeNamed, readingsOf } from './paper-weights.js';
import type { Place } from '../place.js';
import { missing, unknownName } from '../problems.js';
import { foldMeant } from '../meant/size-slips.js';
import { inKnownUnit, isIdle, unitMeant } from '../meant/unit-slips.js';
import { otherSize } from '../meant/unknown-word.js';

/** The unit of a number; null if there is no such unit, which is reported once. */
export function unitOf(node: UnitNode, number: NumberNode, place: Place): Unit | null {
  const unit = UNITS.get(node.text) ?? pounds(node.text);
  if (unit) return unit;
  const { badUnits, tell } = place.context;
  if (!badUnits.has(node)) tell(unknownUnit(node, number, place));
  badUnits.add(node);
  return null;
}

const POUNDS = /^lb(?: (\S+))?$/;

function pounds(text: string): Unit | undefined {
  const grade = gradeNamed(POUNDS.exec(text)?.[1]);
  return grade && { dimension: 'grammage', factor: gsmPerPound(grade) };
}

function unknownUnit(unit: UnitNode, number: NumberNode, place: Place): Diagnostic {
  const { text, span } = unit;
  const count = spanText({ ...number.span, end: span.start }).trimEnd();
  const [, pound, grade] = SAID_IN_POUNDS.exec(text.toLowerCase()) ?? [];
  if (pound && gradeNamed(grade)) return otherUnit(unit, text, count, `lb ${grade}`);
  if (pound) return gradeMissing(unit, grade, count);
  const folded = isSize(text, place) ? foldMeant(text, 1 / number.value) : null;
  if (folded !== null) return otherSize({ ...span, start: number.span.start }, folded);
  if (place.context.names.find(text, place.file)) {
    return report(unknownName, {
      message: `\`${text}\` is no unit but a name, and a product is written with \`*\``,
      at: span,
      help: `write \`${count} * ${text}\``,
      fix: [{ span: { ...span, start: number.span.start }, text: `${count} * ${text}` }],
    });
  }
  if (gradeNamed(text.toLowerCase())) return otherUnit(unit, text, count, `lb ${text.toLowerCase()}`);
  const meant = unitMeant(text);
  if (meant) return otherUnit(unit, text, count, meant === 'g' && place.what === '`weight`' ? 'gsm' : meant);
  if (isIdle(text, place.what)) {
    return report(unknownName, {
      message: `\`${text}\` is not a unit`,
      at: span,
      why: `what the number counts or measures is said by ${place.what}`,
      help: `write \`${count}\``,
      fix: [{ span: { ...span, start: number.span.start }, text: count }],
    });
  }
  const known = inKnownUnit(number.value, text);
  const near = nearest(text, NAMES);
  return report(unknownName, {
    message: `\`${text}\` is not a unit`,
    at: span,
    why: 'the units are mm, cm, in (or "), mil, um; gsm, and lb with a grade; g, oz; %',
    help: known
      ? `write \`${known}\`, or one of these units`
      : near.length > 0
        ? `did you mean \`${count} ${near.join(`\`, \`${count} `)}\`?`
        : 'write one of these units',
  });
}

/** The units that are words. */
const NAMES = [...UNITS.keys()].filter((unit) => /^[a-z]/.test(unit));

/** A unit of paper in pounds, with or without a grade, as people write it (lower case). */
const SAID_IN_POUNDS = /^(lbs?|pounds?|#)(?: (\S+))?$/;

/** A unit written otherwise than here, where the one that was meant is sure. */
function otherUnit({ text, span }: UnitNode, shown: string, count: string, meant: string): Diagnostic {
  return report(unknownName, {
    message: `\`${shown}\` is not a unit here`,
    at: span,
    ...(/^(pt|point)/i.test(text)
      ? { why: 'the points of paper are thousandths of an inch, which are called mil here' }
      : {}),
    help: `write \`${count}${meant === '%' ? '' : ' '}${meant}\``,
    fix: [{ span, text: meant }],
  });
}

/** A pound of paper means nothing without its grade. */
function gradeMissing({ text, span }: UnitNode, grade: string | undefined, count: string): Diagnostic {
  const near = grade ? (GRADE_SLIPS.get(grade) ?? nearest(grade, GRADES)[0]) : undefined;
  return report(grade ? unknownName : missing, {
    message: grade
      ? `\`${grade}\` is not a grade of paper here`
      : `\`${count} ${text}\` needs the grade of the paper`,
    at: span,
    why: [
      'a basis weight is the pounds of 500 sheets of the grade’s own basic size',
      ...readingsOf(count),
    ].join('; '),
    help: near
      ? `write \`${count} lb ${near}\``
      : `write \`${count} lb\` and one of ${GRADES.join(', ')}, as the wrapper says; or the weight in \`gsm\``,
  });
}

/** Other names of a grade (basic sizes shared, as the lists of paper-grades.ts print them). */
const GRADE_SLIPS: ReadonlyMap<string, string> = new Map([
  ['book', 'text'],
  ['offset', 'text'],
  ['writing', 'bond'],
  ['ledger', 'bond'],
  ['card', 'cover'],
  ['cardstock', 'cover'],
]);
