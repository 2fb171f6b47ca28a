import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import type { Source } from '../../src/text/source.js';
import type { Span } from '../../src/text/span.js';
import { mostSlips } from '../slip.js';
import { is, type Token } from '../token.js';
import { CloseBrace, OpenBrace } from '../tokens.js';
import { closeBlock } from './block-end.js';
import { readEntry } from './entries.js';
import { readStatement } from './statements.js';
import { passLineEnds, type Work } from './work.js';

export interface Layout {
  readonly tokens: Token[];
  readonly diagnostics: readonly Diagnostic[];
  /** What was not read at all, after its one finding. */
  readonly passed: readonly Span[];
}

/**
 * Lines and blocks: what the parser is handed is a run of statements, each closed by one line end; a block holds
 * entries, each closed by one line end. Line ends after a comma and about braces are taken out or put in, words that begin
 * a line become what they mean there, and braces are paired; what had to be mended is reported. A text with too many slips
 * is given up.
 */
export function layOut(source: Source, scanned: readonly Token[]): Layout {
  const work: Work = {
    source,
    scanned,
    next: 0,
    tokens: [],
    moved: [],
    diagnostics: [],
    open: null,
    pairs: pairsOf(scanned),
    statements: 0,
    astray: false,
    passed: [],
  };
  while (passLineEnds(work)) {
    if (work.diagnostics.length > mostSlips)
      return { tokens: [], diagnostics: work.diagnostics, passed: work.passed };
    if (work.open === null) readStatement(work);
    else readEntry(work);
  }
  if (work.open !== null) closeBlock(work, work.open);
  return { tokens: work.tokens.concat(work.moved), diagnostics: work.diagnostics, passed: work.passed };
}

/** The braces that pair, innermost first, wherever they stand. */
function pairsOf(scanned: readonly Token[]): ReadonlyMap<Token, number> {
  const pairs = new Map<Token, number>();
  const open: Token[] = [];
  for (const [index, token] of scanned.entries()) {
    if (is(token, OpenBrace)) open.push(token);
    const last = is(token, CloseBrace) ? open.pop() : undefined;
    if (last !== undefined) pairs.set(last, index);
  }
  return pairs;
}
