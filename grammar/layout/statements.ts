import type { TokenType } from 'chevrotain';
import { shown } from '../slip.js';
import { is, meantAs, readAs, spanOf, type Token } from '../token.js';
import { CloseBrace, Let, OpenBrace, Semicolon, Units, Use, Word } from '../tokens.js';
import { statementWords } from '../words.js';
import { finishLine, passSemicolon } from './finish-line.js';
import { readHeader } from './header.js';
import { mendEquals } from './marks.js';
import { meantName } from './name.js';
import { mendPath, mendUnits } from './settings.js';
import { listOfStatements, meantStatement, readBareUnit } from './unknown-statement.js';
import {
  headerFollows,
  isBlock,
  looksLikeEntry,
  passBlock,
  passLine,
  passStatement,
  peek,
  remove,
  say,
  type Work,
} from './work.js';

/** A statement, as far as its line or its block's opening brace; what is none is reported and passed over. */
export function readStatement(work: Work): void {
  const first = peek(work) as Token;
  if (is(first, Word)) readWords(work, first);
  else if (is(first, CloseBrace)) passBrace(work, first);
  else if (is(first, Semicolon)) passSemicolon(work, first);
  else if (is(first, OpenBrace)) {
    say(work, {
      message: 'a block begins with what it states',
      at: spanOf(work.source, first),
      help: 'write `envelope NAME {`, `style NAME {` or `paper NAME {`',
    });
    passBlock(work);
  } else {
    if (first.payload !== null)
      say(work, {
        message: `a statement cannot begin with ${shown(first)}`,
        at: spanOf(work.source, first),
        help: `begin the line with ${listOfStatements}`,
      });
    passLine(work);
  }
}

export function readKnownStatement(work: Work, first: Token, type: TokenType): void {
  work.astray = false;
  work.statements++;
  work.next++;
  work.tokens.push(readAs(type, first));
  if (isBlock(type)) {
    readHeader(work, first);
    return;
  }
  if (type === Units) mendUnits(work, first);
  if (type === Use) mendPath(work);
  if (type === Let) {
    const name = peek(work);
    mendEquals(work, name === undefined ? name : meantName(work, name));
  }
  finishLine(work);
}

function readWords(work: Work, first: Token): void {
  const type = statementWords.get(first.image);
  if (readBareUnit(work, first)) return;
  if (isPropertyAstray(work, first)) {
    passPropertyAstray(work, first);
    return;
  }
  if (type !== undefined) {
    readKnownStatement(work, first, type);
    return;
  }
  work.astray = false;
  const meant = meantStatement(work, first);
  if (meant === null) work.passed.push(passStatement(work));
  else readKnownStatement(work, meantAs(Word, first, meant), statementWords.get(meant) as TokenType);
}

/** Of the words that begin a statement only `paper` is a property too; `paper: kraft {` begins a block all the same. */
function isPropertyAstray(work: Work, first: Token): boolean {
  if (!looksLikeEntry(work)) return false;
  const type = statementWords.get(first.image.toLowerCase());
  return type === undefined || (isBlock(type) && !headerFollows(work, 2));
}

function passPropertyAstray(work: Work, first: Token): void {
  if (!work.astray) {
    const mark = peek(work, 1);
    const inBlock = 'put it between the `{` and the `}` of the envelope, style or paper it belongs to';
    say(work, {
      message: `\`${first.image}\` stands outside any block`,
      at: spanOf(work.source, first),
      help: mark?.image === '=' ? `write \`let ${first.image} = …\`, or ${inBlock}` : inBlock,
    });
  }
  work.astray = true;
  passLine(work);
}

function passBrace(work: Work, brace: Token): void {
  if (!work.astray)
    say(work, {
      message: 'this `}` closes nothing',
      at: spanOf(work.source, brace),
      ...remove(work, brace),
    });
  work.next++;
}
