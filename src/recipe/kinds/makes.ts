import { report } from '../../diagnostics/problem.js';
import type { AtomNode, ItemNode, WordNode } from '../../syntax/ast.js';
import { type Span, spanText } from '../../text/span.js';
import type { Kind } from './kind.js';
import { count } from './length-kinds.js';
import type { BlockDeclaration } from '../names.js';
import type { Place } from '../place.js';
import { limit } from '../../syntax/problems.js';
import { range, wrongKind } from '../problems.js';
import { quote } from '../quote.js';
import { blockNamed } from './word-kinds.js';

/** More than these envelopes of a kind, or kinds, are no work for two hands. */
const MOST_OF_ONE = 100_000;
const MOST_KINDS = 200;

/** So many of one envelope, as a batch asks for them. */
export interface Make {
  readonly envelope: BlockDeclaration;
  readonly count: number;
  /** Null: from the envelope's own. */
  readonly paper: BlockDeclaration | null;
  /** Covers the item. */
  readonly span: Span;
}

const MAKE = '`NAME COUNT` or `NAME COUNT on PAPER`';

/** What a batch makes. One envelope may stand there several times, on several papers. */
export const makes: Kind<readonly Make[]> = {
  wants: `envelopes with their number, ${MAKE}, with commas between them`,
  read: (items, place) => {
    const extra = items[MOST_KINDS];
    if (extra) {
      place.context.tell(tooMany(extra.span));
      return null;
    }
    const read = items.map((item) => makeOf(item, place));
    return read.every((make) => make !== null) ? read : null;
  },
};

function makeOf(item: ItemNode, place: Place): Make | null {
  const atoms = item.kind === 'phrase' ? item.atoms : [];
  const [name, number, on, paperName, ...more] = atoms;
  const isWhole = on === undefined || (isWord(on) && on.text === 'on' && paperName && isWord(paperName));
  if (!name || !isWord(name) || !number || !isWhole || more.length > 0) return notAMake(item, place);
  const envelope = blockNamed(name, 'envelope', place);
  const paper = paperName && isWord(paperName) ? blockNamed(paperName, 'paper', place) : null;
  const made = countOf(number, place);
  if (envelope === null || made === null || (paperName && paper === null)) return null;
  return { envelope, count: made, paper, span: item.span };
}

const isWord = (atom: AtomNode): atom is WordNode => atom.kind === 'word';

/** The number of an envelope: whole, 1 or more. */
function countOf(number: AtomNode, place: Place): number | null {
  const read = count.read([number], place);
  if (read === null || (read >= 1 && read <= MOST_OF_ONE)) return read;
  place.context.tell(
    report(range, {
      message: `${quote(number.span)} of an envelope are asked for, and it must be 1 to ${MOST_OF_ONE}`,
      at: number.span,
      help:
        read < 1 ? 'leave the envelope out, or write how many of it' : 'share them out among several batches',
    }),
  );
  return null;
}

/** `40 tides`, `tides x 40` and `tides 40 of kraft` as they are written here; null where it would be a guess. */
function makeMeant(text: string): string | null {
  const { groups } = COUNT_FIRST.exec(text) ?? NAME_FIRST.exec(text) ?? {};
  if (groups === undefined) return null;
  const { name, count: number, paper } = groups;
  return `${name} ${number}${paper === undefined ? '' : ` on ${paper}`}`;
}

const NAME = '[a-z][a-z\\d-]*';
const ON_PAPER = `(?: (?:on|of|in|from) (?<paper>${NAME}))?`;
const COUNT_FIRST = new RegExp(`^(?<count>\\d+) ?(?:x )?(?<name>${NAME})${ON_PAPER}$`);
const NAME_FIRST = new RegExp(`^(?<name>${NAME})(?: ?\\* ?| x | )(?<count>\\d+)${ON_PAPER}$`);

function notAMake(item: ItemNode, place: Place): null {
  const meant = makeMeant(spanText(item.span).replace(/\s+/g, ' '));
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} takes ${MAKE}, not ${quote(item.span)}`,
      at: item.span,
      ...(meant
        ? { help: `write \`${meant}\``, fix: [{ span: item.span, text: meant }] }
        : item.kind === 'word'
          ? { help: `say how many: \`${item.text} 40\`` }
          : {
              help: 'write such as `half-letter 40` or `half-letter 40 on kraft`, with a comma between two',
            }),
    }),
  );
  return null;
}

const tooMany = (at: Span) =>
  report(limit, {
    message: `a batch makes at most ${MOST_KINDS} kinds of envelope`,
    at,
    help: 'share them out among several batches',
  });
