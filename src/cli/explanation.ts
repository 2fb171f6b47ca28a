import type { Problem } from '../diagnostics/problem.js';
import { type Palette, plain, renderText } from '../diagnostics/render-text.js';
import { wrap } from '../text/wrap.js';
import {
  BATCH_PROBLEMS,
  CHANGE_PROBLEMS,
  FOLDING_PROBLEMS,
  LANGUAGE_PROBLEMS,
  PROBLEMS,
} from '../problems.js';
import { exampleFindings } from './example-findings.js';

/** How a text for people is set. */
export interface Page {
  readonly width: number;
  readonly palette?: Palette | undefined;
}

/** A rule told in full: what it means on paper, why it matters, a recipe that breaks it, what is said of that, the cure. */
export function explanation(problem: Problem, { width, palette = plain }: Page): string {
  const { name, severity, meaning, matters, remedy, example } = problem;
  const prose = (text: string): string => indented(lines(text, width - INDENT.length).join('\n'));
  const part = (heading: string, body: string): string => `${palette.strong(heading)}\n${body}\n`;
  return [
    part(`${palette[severity](`${severity}[${name}]`)}`, prose(meaning)),
    part('Why it matters', prose(matters)),
    ...(example.before === undefined ? [] : [part('A recipe before', indented(example.before))]),
    part('A recipe with it', indented(example.wrong)),
    part('What Plica says', indented(renderText(exampleFindings(example, example.wrong), palette))),
    part('What mends it', prose(remedy)),
    part('The recipe mended', indented(example.mended)),
    ...(problem.source === undefined ? [] : [part('Where this comes from', prose(problem.source))]),
  ].join('\n');
}

/** Every rule with its severity and its meaning: of the language, of the folded envelope, and of what changed. */
export function listOfRules({ width, palette = plain }: Page): string {
  const columns = Math.max(...PROBLEMS.map(({ name }) => name.length));
  const row = ({ name, severity, meaning }: Problem): string => {
    const margin = INDENT.length + columns + GRADE + 2;
    const [first, ...others] = lines(meaning, Math.max(NARROWEST, width - margin));
    const grade = palette[severity](severity) + ' '.repeat(GRADE - severity.length);
    return [
      `${INDENT}${palette.strong(name)}${' '.repeat(columns - name.length)}  ${grade}${first}`,
      ...others.map((line) => ' '.repeat(margin) + line),
    ].join('\n');
  };
  const group = (heading: string, problems: readonly Problem[]): string =>
    `${palette.strong(heading)}\n${problems.map(row).join('\n')}\n`;
  return [
    group('Of the language', LANGUAGE_PROBLEMS),
    group('Of the envelope as folded', FOLDING_PROBLEMS),
    group('Of a batch', BATCH_PROBLEMS),
    group('Of what changed', CHANGE_PROBLEMS),
    '`plica explain RULE` tells more of one.\n',
  ].join('\n');
}

const INDENT = '  ';
/** Width of the column of severities. */
const GRADE = 'warning  '.length;
/** A column of prose narrower than this is no easier to read than lines that the terminal breaks. */
const NARROWEST = 24;

const lines = (text: string, width: number): readonly string[] => wrap(text, width, ({ length }) => length);

const indented = (text: string): string => text.trimEnd().replace(/^(?=.)/gm, INDENT);
