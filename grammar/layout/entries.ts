import { shown } from '../slip.js';
import { absent, is, readAs, spanOf, type Token } from '../token.js';
import { Colon, Compare, Equals, Expect, FirstOfPhrase, Section, Text } from '../tokens.js';
import { askedOnly } from '../words.js';
import { readAstray } from './astray.js';
import { readBlockEnd } from './block-end.js';
import { readExpectMark } from './expect-mark.js';
import { finishLine } from './finish-line.js';
import { joinedName } from './joined-name.js';
import { isMark, isOtherMark, mendMark, restOfEntry } from './marks.js';
import {
  beginsValue,
  type OpenBlock,
  passLine,
  peek,
  restOfLine,
  say,
  spanOfAll,
  type Work,
} from './work.js';

/** An entry of the open block, what stands there instead, or the block's end. */
export function readEntry(work: Work): void {
  if (readBlockEnd(work)) return;
  const open = work.open as OpenBlock;
  const first = peek(work) as Token;
  if (readAstray(work, first, open)) return;
  work.next++;
  if (isSection(work, first, open)) {
    readSection(work, first);
    return;
  }
  readEntryMark(work, first);
  finishLine(work);
}

const isSection = (work: Work, first: Token, open: OpenBlock): boolean =>
  first.image === 'section' && (is(peek(work), Text) || open.type === 'catalogue') && !is(peek(work), Colon);

/** `section "Title":`, then what it takes. */
function readSection(work: Work, first: Token): void {
  const title = peek(work);
  if (!is(title, Text)) {
    const words = restOfLine(work);
    const end = words.findIndex((token) => is(token, Colon));
    const named = spanOfAll(work, end < 0 ? words.slice(0, 1) : words.slice(0, end));
    const written = named === null ? 'Title' : work.source.text.slice(named.start, named.end);
    say(work, {
      message: 'a section begins with its title, between quotes',
      at: named ?? spanOf(work.source, first),
      help: `write \`section "${written}": \`, then names of envelopes, or \`tagged\` and a tag`,
    });
    passLine(work);
    return;
  }
  work.tokens.push(readAs(Section, first), title as Token);
  work.next++;
  if (!isMark(work, Colon)) {
    const after = peek(work);
    if (isOtherMark(work) || beginsValue(after)) work.tokens.push(mendMark(work, title as Token, Colon, ':'));
  }
  finishLine(work);
}

/** The property's name and its colon, or `expect`. */
function readEntryMark(work: Work, first: Token): void {
  const { tokens } = work;
  if (readExpectMark(work, first)) return;
  const name = joinedName(work, first, 2, (ahead) => is(peek(work, ahead), Colon, Equals)) ?? first;
  const after = peek(work);
  if (is(after, Compare) || (is(after, Equals) && askedOnly.has(name.image))) {
    sayExpect(work, name, after as Token);
    tokens.push(absent(Expect, first.startOffset), name);
    return;
  }
  tokens.push(name);
  if (isMark(work, Colon)) {
    passSecondColon(work);
    return;
  }
  if (isOtherMark(work) || beginsValue(after)) tokens.push(mendMark(work, name, Colon, ':'));
}

/** `flap: rounded: 8`: a colon within the value. */
function passSecondColon(work: Work): void {
  const [first, word, second] = [peek(work), peek(work, 1), peek(work, 2)];
  if (first === undefined || word === undefined || !measured.has(word.image) || !is(second, Colon)) return;
  const at = spanOf(work.source, second as Token);
  say(work, {
    message: `no ${shown(second)} follows ${shown(word)} here`,
    at,
    help: 'take it out; one `:` stands after the name of the property',
    fix: [{ span: at, text: work.source.text[at.end] === ' ' ? '' : ' ' }],
  });
  work.next += 3;
  work.tokens.push(first, beginsValue(peek(work)) ? readAs(FirstOfPhrase, word) : word);
}

/** Words of a value that a length follows. */
const measured: ReadonlySet<string> = new Set(['rounded', 'blunt', 'inset']);

function sayExpect(work: Work, name: Token, sign: Token): void {
  if (sign.payload === null) return;
  const { source } = work;
  const span = spanOfAll(work, restOfEntry(work, 1));
  const value = span === null ? 'VALUE' : source.text.slice(span.start, span.end);
  const at = spanOf(source, name);
  say(work, {
    message: `what \`${name.image}\` must come to is stated by an \`expect\``,
    at,
    help: `write \`expect ${name.image} ${sign.image} ${value}\``,
    fix: [{ span: { ...at, end: at.start }, text: 'expect ' }],
  });
}
