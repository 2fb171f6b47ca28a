import { ebnf } from '../../grammar/generate/ebnf.js';
import { COMMON_OPTIONS } from '../../src/cli/arguments.js';
import { COMMANDS } from '../../src/cli/commands/index.js';
import type { Option } from '../../src/cli/command.js';
import type { Example, Problem } from '../../src/diagnostics/problem.js';
import { UNITS } from '../../src/measure/unit.js';
import { PROBLEMS } from '../../src/problems.js';
import { CATALOGUE_PROPERTIES } from '../../src/recipe/catalogue-properties.js';
import { FIGURES } from '../../src/recipe/expect-names.js';
import { PROPERTIES } from '../../src/recipe/properties.js';
import { gsmPerPound, PAPER_GRADES } from '../../src/stock/paper-grades.js';
import { type Bounds, POST_CLASSES, type PostClass } from '../../src/stock/post-classes.js';
import { ISO_SIZES, type SizeRow } from '../../src/stock/sizes-iso.js';
import { US_CARDS, US_SHEETS } from '../../src/stock/sizes-us.js';
import { SOURCES } from '../../src/stock/sources.js';
import { position, source } from '../../src/text/source.js';
import { compileText } from './compile-text.js';

/** The parts of the reference that the code itself tells, by the name in the comment above each. */
export const REFERENCE_PARTS: Readonly<Record<string, () => string>> = {
  properties: () => properties('envelope'),
  'paper properties': () => properties('paper'),
  'batch properties': () => properties('batch'),
  'catalogue properties': () =>
    table(
      ['name', 'value', 'if left out', 'meaning'],
      Object.entries(CATALOGUE_PROPERTIES).map(([name, { kind, leftOut, meaning }]) => [
        code(name),
        kind.wants,
        leftOut,
        meaning,
      ]),
    ),
  units: () => table(['unit', 'measures', 'is'], units()),
  grades: () =>
    table(
      ['grade', 'basic size', '1 lb is'],
      PAPER_GRADES.map((grade) => [
        code(grade.name),
        `${grade.basicSize.join(' × ')} in`,
        `${short(gsmPerPound(grade))} gsm`,
      ]),
    ),
  sizes: () => table(['sizes', 'mm', 'sources'], sizes()),
  'post classes': () =>
    table(
      [
        'class',
        'longer side, mm',
        'shorter side, mm',
        'thickness, mm',
        'mass, g',
        'and',
        'edition',
        'sources',
      ],
      POST_CLASSES.map((post) => [
        `${code(post.name)} ${post.title}`,
        ...[post.length, post.height, post.thickness, post.mass].map(between),
        postRest(post),
        post.edition,
        post.sources.replaceAll(';', ', '),
      ]),
    ),
  sources: () =>
    [...SOURCES].map(([id, { title, edition }]) => `- **${id}**: ${title}; ${edition}`).join('\n'),
  figures: () =>
    table(
      ['name', 'kind', 'is'],
      FIGURES.map(([name, dimension, meaning]) => [code(name), dimension, meaning]),
    ),
  findings: () =>
    table(
      ['rule', 'severity', 'what it means'],
      PROBLEMS.map(({ name, severity, meaning }) => [code(name), severity, meaning]),
    ),
  'findings explained': () => PROBLEMS.map(explained).join('\n\n'),
  commands: () =>
    table(
      ['command', 'does'],
      COMMANDS.map(({ name, operands, summary }) => [code(`plica ${name} ${operands}`.trim()), summary]),
    ),
  options: () => table(['command', 'option', 'meaning'], options()),
  grammar: () => `\`\`\`\n${ebnf()}\`\`\``,
};

const MARKED = /(<!-- begin: ([a-z ]+) -->\n)[^]*?(<!-- end -->)/g;

/** A page with each marked part as the code tells it now. */
export const withFreshParts = (page: string): string =>
  page.replace(MARKED, (_, begin: string, name: string, end: string) => {
    const part = REFERENCE_PARTS[name];
    if (part === undefined) throw new Error(`the page has a part ${name}, which nothing tells`);
    return `${begin}\n${part()}\n\n${end}`;
  });

/** The names of the parts that a page marks. */
export const partsIn = (page: string): readonly string[] =>
  [...page.matchAll(MARKED)].map(([, , name = '']) => name);

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  [heads, heads.map(() => '---'), ...rows]
    .map((row) => `| ${row.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`)
    .join('\n');

const code = (text: string): string => `\`${text}\``;

/** At most three decimals. */
const short = (value: number): string => String(Number(value.toFixed(3)));

const properties = (type: 'envelope' | 'paper' | 'batch'): string =>
  table(
    ['name', 'value', 'if left out', 'meaning'],
    Object.entries(PROPERTIES)
      .filter(([, { where }]) => where.includes(type))
      .map(([name, { kind, leftOut, meaning }]) => [code(name), kind.wants, leftOut, meaning]),
  );

/** What one of a unit is, in the inner unit of what it measures. */
const INNER = { length: ' mm', mass: ' g', grammage: ' g/m²', number: '' };

/** `140 to 235`, `up to 5`, `at least 90` */
function between({ min, max }: Bounds): string {
  if (min !== null && max !== null) return `${short(min)} to ${short(max)}`;
  if (max !== null) return `up to ${short(max)}`;
  return min === null ? '' : `at least ${short(min)}`;
}

const postRest = ({ sum, ratio, thin, evenOnly, fromMemory, disputed }: PostClass): string =>
  [
    ...(sum === null ? [] : [`the three measures together ${between({ min: null, max: sum })}`]),
    ...(ratio === null
      ? []
      : [
          `longer over shorter side ${between(ratio)}${ratio.outside === 'surcharge' ? ', else for more' : ''}`,
        ]),
    ...(thin === null
      ? []
      : [
          `longer than ${short(thin.length)} or higher than ${short(thin.height)}, at least ${short(thin.thickness)} thick, else for more`,
        ]),
    ...(evenOnly ? ['no box'] : []),
    ...(fromMemory === null ? [] : [`from memory: ${fromMemory}`]),
    ...(disputed === null ? [] : [disputed]),
  ].join('; ');

/** Names that say the same thing share a row. */
function units(): readonly (readonly string[])[] {
  const rows = new Map<string, string[]>();
  for (const [name, { dimension, factor }] of UNITS) {
    const is = `${dimension}\n${Number(factor.toPrecision(6))}${INNER[dimension]}`;
    rows.set(is, [...(rows.get(is) ?? []), code(name)]);
  }
  return [...rows].map(([is, names]) => [names.join(' '), ...is.split('\n')]);
}

/** The named sizes, a series a row. */
function sizes(): readonly (readonly string[])[] {
  const series = new Map<string, SizeRow[]>();
  for (const row of [...ISO_SIZES, ...US_SHEETS, ...US_CARDS]) {
    const name = /^(us-a|[A-Z]+)\d+$/.exec(row[0])?.[1] ?? row[0];
    series.set(name, [...(series.get(name) ?? []), row]);
  }
  return [...series].map(([name, rows]) => [
    code(rows.length === 1 ? name : `${rows[0]?.[0]} … ${rows.at(-1)?.[0]}`),
    rows.map(([size, width, height]) => `${size}: ${short(width)} × ${short(height)}`).join('; '),
    [...new Set(rows.flatMap(([, , , sources]) => sources.split(';')))].join(', '),
  ]);
}

const options = (): readonly (readonly string[])[] => [
  ...COMMANDS.flatMap(({ name, options: own }) => own.map((option) => [code(name), ...told(option)])),
  ...COMMON_OPTIONS.map((option) => ['every', ...told(option)]),
];

const told = ({ name, value, choices, meaning }: Option): readonly string[] => [
  code(['--' + name, ...(value === null ? [] : [choices?.join('|') ?? value])].join(' ')),
  meaning,
];

function explained({ name, severity, meaning, matters, remedy, example, source: from }: Problem): string {
  return [
    `### ${code(name)} (${severity})`,
    meaning,
    `*Why it matters:* ${matters}`,
    ...comparedWith(example),
    `*What mends it:* ${remedy}`,
    fenced('plica', example.mended),
    ...(from === undefined ? [] : [`*Where this comes from:* ${from}.`]),
  ].join('\n\n');
}

/** A recipe with the finding; beside how it was, where only a comparison shows it (by itself nothing is wrong with it). */
const comparedWith = ({ before, wrong }: Example): readonly string[] =>
  before === undefined
    ? [fenced('plica-wrong', marked(wrong))]
    : ['*As it was:*', fenced('plica', before), '*With the finding:*', fenced('plica', wrong)];

const fenced = (language: string, text: string): string => `\`\`\`${language}\n${text}\`\`\``;

/** A text with a comment at the end of each line in which something is found. */
function marked(text: string): string {
  const lines = text.split('\n');
  for (const { problem, primary } of compileText(text).diagnostics) {
    const { line } = position(source('', text), primary.span.start);
    lines[line - 1] += `  # ${problem.name}`;
  }
  return lines.join('\n');
}
