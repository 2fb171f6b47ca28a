import { printNumber } from '../../measure/number.js';
import { gsmPerPound, PAPER_GRADES, type PaperGrade } from '../../stock/paper-grades.js';

export const GRADES = PAPER_GRADES.map(({ name }) => name);

export const gradeNamed = (name: string | undefined): PaperGrade | undefined =>
  PAPER_GRADES.find((grade) => grade.name === name);

/** g/m² of so many pounds of a grade. */
export const gsmOf = (pounds: number, grade: PaperGrade): number => pounds * gsmPerPound(grade);

/** `65 lb text is 96.2 gsm; 65 lb cover is 175.8 gsm`: the two readings met most; nothing of a count that is no plain number. */
export const readingsOf = (count: string): readonly string[] =>
  Number.isFinite(Number(count))
    ? PAPER_GRADES.filter(({ name }) => name === 'text' || name === 'cover').map(
        (grade) => `${count} lb ${grade.name} is ${printNumber(gsmOf(Number(count), grade), 1)} gsm`,
      )
    : [];
