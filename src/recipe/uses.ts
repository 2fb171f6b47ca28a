import { parse } from '../../grammar/parser.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import { isUnits, type Units } from '../measure/unit.js';
import type { FileNode, UseNode } from '../syntax/ast.js';
import { limit } from '../syntax/problems.js';
import { recipePath } from '../syntax/recipe-path.js';
import { lengthRead } from '../syntax/too-long.js';
import { nearest } from '../text/nearest.js';
import { lineText, position, type Source } from '../text/source.js';
import type { Span } from '../text/span.js';
import { circlePath, placesShown } from './circle.js';
import { cycle, outsideRoot, unknownName, wrongKind } from './problems.js';
import type { Input, Reader } from './reader.js';
import { allWithin } from './slips.js';
import { unitMeant } from './meant/unit-slips.js';

/** A file that takes part: given to the command, or used by one that is. */
export interface RecipeFile {
  readonly id: string;
  readonly source: Source;
  readonly node: FileNode;
  /** What a bare length is written in; `broken`: stated wrongly, and reported. */
  readonly units: Units | 'none' | 'broken';
  readonly given: boolean;
  /** The files it uses itself, in order. */
  readonly uses: readonly RecipeFile[];
  /** False where a slip of writing or a broken `use` may hide names. */
  readonly complete: boolean;
  /** How many statements and entries it has. */
  readonly statements: number;
  /** Where its writing is broken. */
  readonly slips: readonly Span[];
}

/** How many files deep `use` may lead. */
const MOST_DEEP = 50;
/** Statements and entries in all files together. */
export const MOST_STATEMENTS = 100_000;

type OpenFile = {
  -readonly [Key in keyof RecipeFile]: Key extends 'uses' ? RecipeFile[] : RecipeFile[Key];
};

/** A file on the way down from a given one, and the `use` that led to it. */
interface Step {
  readonly id: string;
  readonly by: UseNode | null;
}

/**
 * Reads the given files and all that they use, each once, in the order in which they are met. Reports slips of writing,
 * unknown `units`, uses that cannot be followed, circles, and more statements than the limit; then no file is returned.
 */
export function loadFiles(
  inputs: readonly Input[],
  read: Reader,
  tell: (finding: Diagnostic) => void,
): readonly RecipeFile[] {
  const loaded = new Map<string, OpenFile>();
  const given = new Set(inputs.map(({ id }) => id));
  let statements = 0;

  const load = (id: string, source: Source, path: readonly Step[]): RecipeFile => {
    const { file: node, diagnostics, doubts } = parse(source);
    [...diagnostics, ...doubts].forEach(tell);
    const slips = diagnostics.map(({ primary }) => primary.span);
    const file: OpenFile = {
      id,
      source,
      node,
      units: unitsOf(node, slips, tell),
      given: given.has(id),
      uses: [],
      complete: allWithin(slips, node.statements),
      statements: countStatements(node),
      slips,
    };
    loaded.set(id, file);
    statements += file.statements;
    for (const use of node.statements) {
      if (statements > MOST_STATEMENTS) break;
      if (use.kind !== 'use') continue;
      const used = follow(use, id, path);
      if (used === null) file.complete = false;
      else if (!file.uses.includes(used)) file.uses.push(used);
    }
    return file;
  };

  const follow = (use: UseNode, from: string, path: readonly Step[]): RecipeFile | null => {
    const slip = pathSlip(use);
    if (slip) return refuse(slip);
    const result = read(use.path.value, from);
    if (result.kind === 'outside-root') return refuse(outside(use));
    if (result.kind === 'too-large') return refuse(tooLarge(use, result.bytes));
    if (result.kind === 'unreadable') return refuse(unreadable(use, result.reason));
    const start = path.findIndex(({ id }) => id === result.id);
    if (start >= 0) return refuse(useCycle([...path.slice(start + 1).map(({ by }) => by), use]));
    const known = loaded.get(result.id);
    if (known) return known;
    if (path.length > MOST_DEEP) return refuse(tooDeep(use));
    return load(result.id, result.source, [...path, { id: result.id, by: use }]);
  };

  const refuse = (finding: Diagnostic): null => {
    tell(finding);
    return null;
  };

  for (const { id, source } of inputs) {
    if (!loaded.has(id)) load(id, source, [{ id, by: null }]);
    if (statements > MOST_STATEMENTS) {
      tell(tooMany([...loaded.values()].at(-1) as RecipeFile));
      return [];
    }
  }
  return [...loaded.values()];
}

const countStatements = ({ statements }: FileNode): number =>
  statements.reduce((sum, statement) => sum + 1 + ('entries' in statement ? statement.entries.length : 0), 0);

/** The units of a file; one that comes late, or again, the parser has reported. */
function unitsOf(
  { statements, source }: FileNode,
  slips: readonly Span[],
  tell: (finding: Diagnostic) => void,
): RecipeFile['units'] {
  const stated = statements.find((statement) => statement.kind === 'units');
  if (stated === undefined) {
    const meant = slips.some((slip) =>
      /^\s*units\b/.test(lineText(source, position(source, slip.start).line)),
    );
    return meant ? 'broken' : 'none';
  }
  const { text, span } = stated.unit;
  if (isUnits(text)) return text;
  tell(unknownUnits(span, text));
  return 'broken';
}

function unknownUnits(at: Span, word: string): Diagnostic {
  const sure = unitMeant(word);
  const meant = sure && isUnits(sure) ? sure : nearest(word, ['mm', 'cm', 'in'])[0];
  return report(unknownName, {
    message: `\`units\` is \`mm\`, \`cm\` or \`in\`, not \`${word}\``,
    at,
    help: meant ? `write \`units ${meant}\`` : 'write `units mm`, `units cm` or `units in`',
    ...(meant && meant === sure ? { fix: [{ span: at, text: meant }] } : {}),
  });
}

/** What is wrong with a path before any file is looked for. */
function pathSlip({ path }: UseNode): Diagnostic | null {
  const { value } = path;
  const message = PATH_SLIPS.find(([wrong]) => wrong.test(value))?.[1];
  if (message === undefined) return null;
  return report(wrongKind, { message: message(value), at: path.span, help: pathHelp(value) });
}

const PATH_SLIPS: readonly (readonly [wrong: RegExp, message: (path: string) => string])[] = [
  [/^\s*$/, () => 'this `use` names no file'],
  [/\\/, (path) => `the path \`${path}\` has backslashes, and paths here use \`/\``],
  [
    /^([A-Za-z]:)?\//,
    (path) =>
      `the path \`${path}\` starts at the machine’s root, and paths here start at the file they stand in`,
  ],
  [/(^|\/)\.{0,2}$/, (path) => `\`${path}\` is a folder, and \`use\` names one file`],
  [/(?<!\.plica)$/, (path) => `the path \`${path}\` does not end in \`.plica\``],
];

/** The path as it was likely meant; what has no ending may be a folder. */
function pathHelp(value: string): string {
  const meant = recipePath(value);
  if (meant === null)
    return 'write the path of a recipe file from the folder of this one, such as `use "papers.plica"`';
  const orIn = /^[^.\\]*$/.test(value) && !value.startsWith('/');
  return `write \`use "${meant}"\`${orIn ? `; of a folder, name a file: \`use "${value}/NAME.plica"\`` : ''}`;
}

const outside = ({ path }: UseNode): Diagnostic =>
  report(outsideRoot, {
    message: `\`${path.value}\` lies outside the project’s folder`,
    at: path.span,
    help: 'move or copy that file into the project, and `use` it there',
  });

const unreadable = ({ path }: UseNode, reason: string): Diagnostic =>
  report(unknownName, {
    message: `the file \`${path.value}\` cannot be read`,
    at: path.span,
    why: reason,
    help: 'spell the path from the folder of this file, with `/` between folders',
  });

const tooLarge = ({ path }: UseNode, bytes: number | null): Diagnostic =>
  report(limit, {
    message: `the file \`${path.value}\` is too long to be a recipe`,
    at: path.span,
    why: lengthRead(bytes, 'bytes'),
    help: 'split that file, and `use` its parts',
  });

function useCycle(uses: readonly (UseNode | null)[]): Diagnostic {
  const [first, ...others] = uses.filter((use) => use !== null) as [UseNode, ...UseNode[]];
  const names = [first, ...others].map(({ span }) => span.source.name);
  return report(cycle, {
    message: `these files use each other in a circle: ${circlePath(names)}`,
    at: first.path.span,
    related: placesShown(others).map(({ path }) => ({
      span: path.span,
      text: `which uses \`${path.value}\``,
    })),
    help: 'move what they share into a file that uses neither',
  });
}

const tooDeep = ({ path }: UseNode): Diagnostic =>
  report(limit, {
    message: `\`use\` leads more than ${MOST_DEEP} files deep here`,
    at: path.span,
    why: `this would be file ${MOST_DEEP + 1} below the one given; at most ${MOST_DEEP}`,
    help: 'use the file that states what is needed directly',
  });

const tooMany = ({ node, source }: RecipeFile): Diagnostic =>
  report(limit, {
    message: `more than ${MOST_STATEMENTS} statements are too many for one command`,
    at: { source, start: node.span.start, end: node.span.start },
    why: 'statements and entries of all given and used files, counted up to this file',
    help: 'give the command fewer files, or a smaller one',
  });
