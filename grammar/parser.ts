import type { Diagnostic } from '../src/diagnostics/diagnostic.js';
import { report } from '../src/diagnostics/problem.js';
import type { FileNode } from '../src/syntax/ast.js';
import { limit } from '../src/syntax/problems.js';
import { tooLong } from '../src/syntax/too-long.js';
import { LONGEST_TEXT } from '../src/text/longest.js';
import type { Source } from '../src/text/source.js';
import type { Span } from '../src/text/span.js';
import { layOut } from './layout/layout.js';
import { lex } from './lexer.js';
import { RecipeParser } from './recipe-parser.js';
import { mostSlips } from './slip.js';
import { strangerIn } from './stranger.js';

export interface Parsed {
  readonly file: FileNode;
  /** A finding for every slip. */
  readonly diagnostics: readonly Diagnostic[];
  /** What is no slip, and yet wants a look before the text is trusted. */
  readonly doubts: readonly Diagnostic[];
}

/** The tree of a text, and a finding for every slip. Whatever the text, it comes to a tree and never throws. */
export function parse(source: Source): Parsed {
  const empty: FileNode = {
    kind: 'file',
    span: { source, start: 0, end: source.text.length },
    source,
    statements: [],
    comments: [],
  };
  const { length } = source.text;
  const unread = (diagnostics: readonly Diagnostic[]): Parsed => ({ file: empty, diagnostics, doubts: [] });
  if (length > LONGEST_TEXT) return unread([tooLong(source, length, 'characters')]);
  const stranger = strangerIn(source);
  if (stranger) return unread([stranger]);
  const lexed = lex(source);
  const laid = layOut(source, lexed.tokens);
  const slips = inOrder([...outside(lexed.diagnostics, laid.passed), ...laid.diagnostics]);
  if (slips.length > mostSlips) return unread(tooMany(slips));
  parser ??= new RecipeParser({ analyse: false });
  const parsed = parser.read(source, laid.tokens);
  const found = oneForAPlace(inOrder([...slips, ...parsed.diagnostics]));
  if (found.length > mostSlips) return unread(tooMany(found));
  const file = { ...empty, statements: parsed.statements, comments: lexed.comments };
  return { file, diagnostics: found, doubts: lexed.doubts };
}

/** Built at the first need, once. */
let parser: RecipeParser | undefined;

const inOrder = (findings: readonly Diagnostic[]): readonly Diagnostic[] =>
  findings.toSorted((a, b) => a.primary.span.start - b.primary.span.start);

/** What is wrong with one place is said once, as it was first seen. */
function oneForAPlace(findings: readonly Diagnostic[]): readonly Diagnostic[] {
  const said = new Set<string>();
  return findings.filter(({ problem, primary: { span } }) => {
    const place = `${problem.name} ${span.start} ${span.end}`;
    return !said.has(place) && said.add(place);
  });
}

/** The findings that lie in none of some spans, which are in order and apart from each other. */
function outside(findings: readonly Diagnostic[], spans: readonly Span[]): readonly Diagnostic[] {
  if (spans.length === 0) return findings;
  let next = 0;
  return inOrder(findings).filter(({ primary: { span } }) => {
    while ((spans[next]?.end ?? Number.POSITIVE_INFINITY) <= span.start) next++;
    return span.start < (spans[next]?.start ?? Number.POSITIVE_INFINITY);
  });
}

function tooMany(slips: readonly Diagnostic[]): readonly Diagnostic[] {
  const shown = slips.slice(0, mostSlips);
  const last = shown.at(-1) as Diagnostic;
  const finding = report(limit, {
    message: 'this file has too many slips to be a recipe',
    at: last.primary.span,
    why: `the first ${mostSlips} are shown, and none of its statements is used`,
    help: 'see whether it is a recipe at all, and mend the first of them',
  });
  return [...shown, finding];
}
