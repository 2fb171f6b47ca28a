import { report } from '../../diagnostics/problem.js';
import type { ItemNode, PhraseNode, WordNode } from '../../syntax/ast.js';
import { nearest } from '../../text/nearest.js';
import { type Span, spanText, through } from '../../text/span.js';
import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import { type Kind, notAWord, one, upTo } from './kind.js';
import { A_KIND, type BlockDeclaration } from '../names.js';
import type { Place } from '../place.js';
import { repeated, unknownName, wrongKind } from '../problems.js';
import { quote, quoteText } from '../quote.js';
import type { CornerTreatment } from '../recipe.js';
import { anyOf, undeclared } from '../meant/unknown-word.js';
import { wordMeant } from '../meant/word-slips.js';

export const text: Kind<string> = {
  wants: 'a string',
  read: (items, place) => {
    const [first] = items;
    if (first === undefined) return null;
    if (noneQuoted(items)) return unquotedAll(items, place);
    return upTo(1, items, 'one string', place) ? stringOf(first, place) : null;
  },
};

export const texts: Kind<readonly string[]> = {
  wants: 'strings with commas between them',
  read: (items, place) =>
    noneQuoted(items) ? unquotedAll(items, place) : allOf(items.map((item) => stringOf(item, place))),
};

export const words: Kind<readonly string[]> = {
  wants: 'words with commas between them',
  read: (items, place) => {
    const read = allOf(items.map((item) => wordOf(item, 'a word', place)?.text ?? null));
    if (read === null) return null;
    const again = read.findIndex((word, index) => read.indexOf(word) < index);
    if (again < 0) return read;
    place.context.tell(
      report(repeated, {
        message: `${place.what} names \`${read[again]}\` twice`,
        at: (items[again] as ItemNode).span,
        related: [
          { span: (items[read.indexOf(read[again] as string)] as ItemNode).span, text: 'first here' },
        ],
        help: 'leave one out',
      }),
    );
    return null;
  },
};

export const choice = <const Word extends string>(...offered: readonly Word[]): Kind<Word> =>
  one(anyOf(offered), (item, place) => choose(item, offered, place));

/** One word for both pairs, or two: the bottom pair, the seal pair. */
export const corners: Kind<{ readonly bottom: CornerTreatment; readonly seal: CornerTreatment }> = {
  wants: '`folded` or `notched`, or two with a comma: the bottom pair, the seal pair',
  read: (items, place) => {
    if (!upTo(2, items, 'one word, or two: the bottom pair, the seal pair', place)) return null;
    const read = items.map((item) => choose(item, ['folded', 'notched'] as const, place));
    const [bottom = null, seal = bottom] = read;
    return bottom === null || seal === null ? null : { bottom, seal };
  },
};

/** The paper of that name. */
export const paperName: Kind<BlockDeclaration> = one('the name of a paper', (item, place) => {
  if (item.kind === 'number' && item.unit !== null) {
    place.context.tell(figureOfPaper(item.unit.text, item.span, place));
    return null;
  }
  const word = wordOf(item, 'the name of a paper', place);
  return word && blockNamed(word, 'paper', place);
});

/** `paper: 120 gsm` */
function figureOfPaper(unit: string, at: Span, { what }: Place): Diagnostic {
  const property = /^(?:gsm|lb)/.test(unit) ? 'weight' : 'caliper';
  return report(wrongKind, {
    message: `${what} wants the name of a paper, and ${quote(at)} is a figure of one`,
    at,
    help: `declare the paper outside this block, \`paper my-paper { ${property}: ${spanText(at)} }\`, and write \`my-paper\` here`,
  });
}

/** The block of a type that a word names; null where there is none, which is reported. */
export function blockNamed(
  word: WordNode,
  type: 'paper' | 'envelope',
  place: Place,
): BlockDeclaration | null {
  const { context, file } = place;
  const declaration = context.names.find(word.text, file);
  if (declaration?.kind === type) return declaration;
  const name = `the name of ${A_KIND[type]}`;
  if (declaration) {
    context.tell(
      report(wrongKind, {
        message: `${quote(word.span)} is ${A_KIND[declaration.kind]}, and ${place.what} wants ${name}`,
        at: word.span,
        related: [{ span: declaration.node.name.span, text: 'declared here' }],
        help: `name ${A_KIND[type]}, or declare one: \`${type} my-${word.text} { … }\``,
      }),
    );
  } else if (context.names.complete(file)) {
    context.tell(undeclared(word, `no ${type} that is known here`, [type], context, file));
  }
  return null;
}

const allOf = <T>(read: readonly (T | null)[]): readonly T[] | null =>
  read.every((each) => each !== null) ? read : null;

const noneQuoted = (items: readonly ItemNode[]): boolean => items.every(({ kind }) => kind !== 'string');

/** A sentence with commas in it, left without quotes, is one string. */
function unquotedAll(items: readonly ItemNode[], place: Place): null {
  const [first] = items;
  const last = items.at(-1);
  return first && last ? unquoted(through(first.span, last.span), place) : null;
}

function stringOf(item: ItemNode, place: Place): string | null {
  return item.kind === 'string' ? item.value : unquoted(item.span, place);
}

function unquoted(at: Span, place: Place): null {
  const text = `"${spanText(at).replaceAll(/["\\]/g, '\\$&').replaceAll(/\s+/g, ' ')}"`;
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} wants a string, and ${quote(at)} stands without quotes`,
      at,
      help: `write ${quoteText(text)}`,
      fix: [{ span: at, text }],
    }),
  );
  return null;
}

function wordOf(item: ItemNode, wants: string, place: Place): WordNode | null {
  if (item.kind === 'word') return item;
  if (item.kind === 'string') return notAWord(item, wants, place);
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} wants ${wants}, and ${quote(item.span)} is not one word`,
      at: item.span,
      help:
        item.kind === 'phrase'
          ? 'join the words with hyphens, or put a comma between them'
          : `write ${wants}`,
    }),
  );
  return null;
}

/** `long side` for `long`: its first word is meant where no other of the words could be. */
function moreThanAWord({ span, atoms }: PhraseNode, offered: readonly string[], place: Place): null {
  const said = atoms.map((atom) => spanText(atom.span)).filter((word) => offered.includes(word));
  const [meant, ...others] = spanText(atoms[0]?.span ?? span) === said[0] ? said : [];
  place.context.tell(
    report(wrongKind, {
      message: `${place.what} is one word, ${anyOf(offered)}, and ${quote(span)} is more`,
      at: span,
      ...(meant === undefined || others.length > 0
        ? { help: `write ${anyOf(offered)}${others.length > 0 ? ', with a comma between two' : ''}` }
        : { help: `write \`${meant}\``, fix: [{ span, text: meant }] }),
    }),
  );
  return null;
}

function choose<Word extends string>(item: ItemNode, offered: readonly Word[], place: Place): Word | null {
  if (item.kind === 'phrase') return moreThanAWord(item, offered, place);
  const word = wordOf(item, anyOf(offered), place);
  if (word === null) return null;
  const found = offered.find((each) => each === word.text);
  if (found !== undefined) return found;
  const near = wordMeant(word.text, offered) ?? nearest(word.text, offered)[0];
  const sure = offered.find((each) => each === word.text.toLowerCase());
  place.context.tell(
    report(unknownName, {
      message: `${place.what} is ${anyOf(offered)}, not ${quote(word.span)}`,
      at: word.span,
      ...(sure
        ? { help: `write \`${sure}\``, fix: [{ span: word.span, text: sure }] }
        : { help: near ? `did you mean \`${near}\`?` : `write ${anyOf(offered)}` }),
    }),
  );
  return null;
}
