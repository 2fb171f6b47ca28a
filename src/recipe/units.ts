import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import { printNumber } from '../measure/number.js';
import { UNITS, type Unit } from '../measure/unit.js';
import { gsmPerPound, PAPER_GRADES, type PaperGrade } from '../stock/paper-grades.js';
import type { NumberNode, UnitNode } from '../syntax/ast.js';
import { nearest } from '../text/nearest.js';
import { spanText } from '../text/span.js';
import type { Place } from './place.js';
import { missing, unknownName } from './problems.js';

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

const gradeNamed = (name: string | undefined): PaperGrade | undefined =>
  PAPER_GRADES.find((grade) => grade.name === name);

/** Words that are tried for a unit, and the unit that was meant. */
const SLIPS: ReadonlyMap<string, string> = new Map([
  ...sameAs('in', 'inch', 'inches', 'ins'),
  ...sameAs('cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'),
  ...sameAs('mm', 'mms', 'millimetre', 'millimetres', 'millimeter', 'millimeters'),
  ...sameAs('mil', 'pt', 'pts', 'point', 'points', 'mils', 'thou', 'thous'),
  ...sameAs('um', 'micron', 'microns'),
  ...sameAs('gsm', 'gms'),
  ...sameAs('g', 'gr', 'gram', 'grams', 'gramme', 'grammes'),
  ...sameAs('oz', 'ozs', 'ounce', 'ounces'),
  ...sameAs('%', 'percent'),
]);

function sameAs(unit: string, ...slips: readonly string[]): (readonly [string, string])[] {
  return slips.map((slip) => [slip, unit]);
}

function unknownUnit(unit: UnitNode, number: NumberNode, place: Place): Diagnostic {
  const count = spanText({ ...number.span, end: unit.span.start }).trimEnd();
  if (POUNDS.test(unit.text) || /^(lbs|pounds?)( |$)/.test(unit.text)) return gradeMissing(unit, count);
  const { text, span } = unit;
  if (place.context.names.find(text, place.file)) {
    return report(unknownName, {
      message: `\`${text}\` is no unit but a name, and a product is written with \`*\``,
      at: span,
      help: `write \`${count} * ${text}\``,
      fix: [{ span, text: `* ${text}` }],
    });
  }
  const lower = text.toLowerCase();
  const meant = SLIPS.get(lower) ?? (UNITS.has(lower) ? lower : undefined);
  if (meant) {
    return report(unknownName, {
      message: `\`${text}\` is not a unit here`,
      at: span,
      ...(/^(pt|point)/.test(lower)
        ? { why: 'the points of paper are thousandths of an inch, which are called mil here' }
        : {}),
      help: `write \`${count}${meant === '%' ? '' : ' '}${meant}\``,
      fix: [{ span, text: meant }],
    });
  }
  const near = nearest(text, UNITS.keys());
  return report(unknownName, {
    message: `\`${text}\` is not a unit`,
    at: span,
    why: 'the units are mm, cm, in (or "), mil, um; gsm, and lb with a grade; g, oz; %',
    help:
      near.length > 0
        ? `did you mean \`${count} ${near.join(`\`, \`${count} `)}\`?`
        : 'write one of these units',
  });
}

/** A pound of paper means nothing without its grade. */
function gradeMissing({ text, span }: UnitNode, count: string): Diagnostic {
  const grade = text.split(' ')[1];
  const near = grade ? (GRADE_SLIPS.get(grade) ?? nearest(grade, GRADES)[0]) : undefined;
  const pounds = Number(count);
  const worth = (name: string): string => {
    const found = gradeNamed(name);
    return found && Number.isFinite(pounds)
      ? `${count} lb ${name} is ${printNumber(pounds * gsmPerPound(found), 1)} gsm`
      : '';
  };
  return report(grade ? unknownName : missing, {
    message: grade
      ? `\`${grade}\` is not a grade of paper here`
      : `\`${count} ${text}\` needs the grade of the paper`,
    at: span,
    why: [
      'a basis weight is the pounds of 500 sheets of the grade’s own basic size',
      ...[worth('text'), worth('cover')].filter((words) => words !== ''),
    ].join('; '),
    help: near
      ? `write \`${count} lb ${near}\``
      : `write \`${count} lb\` and one of ${GRADES.join(', ')}, as the wrapper says; or the weight in \`gsm\``,
  });
}

const GRADES = PAPER_GRADES.map(({ name }) => name);

/** Other names of a grade (basic sizes shared, as the lists of paper-grades.ts print them). */
const GRADE_SLIPS: ReadonlyMap<string, string> = new Map([
  ['book', 'text'],
  ['offset', 'text'],
  ['writing', 'bond'],
  ['ledger', 'bond'],
  ['card', 'cover'],
  ['cardstock', 'cover'],
]);
