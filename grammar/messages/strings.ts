import type { Report } from '../../src/diagnostics/problem.js';
import type { Edit } from '../../src/text/edit.js';
import { lineText, position } from '../../src/text/source.js';
import { shown } from '../slip.js';
import { endOf, is, spanOf } from '../token.js';
import { Colon, Comma, Eol, FirstOfPhrase, NumberToken, Stray, Text, Unclosed, Word } from '../tokens.js';
import type { Stop } from './stop.js';

/** `title: "The 5" card"`, `title: "The "old" card"` */
export function quoteInString({ source, token, before }: Stop): Report | null {
  if (before === undefined || !is(before, Text)) return null;
  const close = endOf(before) - 1;
  const inches = /[0-9¼-¾⅐-⅞]/.test(source.text[close - 1] ?? '');
  if (!inches && (endOf(before) !== token.startOffset || !is(token, Word))) return null;
  const { line } = position(source, close);
  const end = (source.lineStarts[line - 1] ?? 0) + lineText(source, line).length;
  const rest = source.text.slice(close, end).replace(/#[^"]*$/, '');
  const marks = [...rest.matchAll(/"/g)].map(({ index }) => close + index);
  if (marks.length < 2) return null;
  const sure = !/",/.test(rest) && !is(token, Colon);
  const edits: Edit[] = marks
    .slice(0, -1)
    .map((at) => ({ span: { source, start: at, end: at }, text: '\\' }));
  return {
    message: inches ? 'the string ends at the inch mark inside it' : 'the string ends at the quote inside it',
    at: { source, start: close, end: close + 1 },
    label: 'the string ends here',
    help: inches
      ? 'write `\\"` for an inch mark in a string, or `in`'
      : 'write `\\"` for a quote in a string',
    ...(sure ? { fix: edits } : {}),
  };
}

/** `8 1/2 "` */
export function inchMarkApart({ source, token, before }: Stop): Report | null {
  if (before === undefined || !is(before, NumberToken) || !is(token, Text, Unclosed)) return null;
  const gap = { source, start: endOf(before), end: token.startOffset };
  const second = is(token, Text) ? /[0-9¼-¾⅐-⅞]([ \t]+)["”]$/.exec(token.image) : null;
  const fix: Edit[] = [{ span: gap, text: '' }];
  if (second?.[1] !== undefined) {
    const end = endOf(token) - 1;
    fix.push({ span: { source, start: end - second[1].length, end }, text: '' });
  }
  return {
    message: 'an inch mark touches its number',
    at: { source, start: token.startOffset, end: token.startOffset + 1 },
    help: `write \`${before.image}"\` or \`${before.image} in\``,
    ...(token.image.startsWith('"') ? { fix } : {}),
  };
}

/** `title: "Half letter` */
export function unclosedString({ source, token }: Stop): Report | null {
  if (!is(token, Unclosed)) return null;
  const end = token.startOffset + token.image.trimEnd().length;
  return {
    message: 'this string is not closed',
    at: { source, start: token.startOffset, end: token.startOffset + 1 },
    why: 'a string ends on its line',
    help:
      token.image.trim() === '"'
        ? 'take the quote out, or write the string after it'
        : `write \`${token.image.trimEnd()}"\``,
    ...(token.image.trim() === '"' ? {} : { fix: [{ span: { source, start: end, end }, text: '"' }] }),
  };
}

/** `note: "Dry it flat." "Then cut."` */
export function stringsSideBySide({ source, line, token, before, after }: Stop): Report | null {
  if (before === undefined || !is(before, Text) || !is(token, Text) || !is(line[1], Colon)) return null;
  const end = endOf(before);
  // Where they touch, or more than a list follows, a quote within a string is likelier.
  if (end === token.startOffset || !is(after[0], Eol, Comma, Text)) return null;
  const listed = line[0]?.image === 'note' || line[0]?.image === 'tags';
  return {
    message: 'two strings stand side by side',
    at: spanOf(source, token),
    help: listed
      ? 'put a comma between the items of a list'
      : 'put all of it between two quotes, or a comma between the items of a list',
    ...(listed ? { fix: [{ span: { source, start: end, end }, text: ',' }] } : {}),
  };
}

/** `flap: "rounded" 3/8` */
export function quotedWord({ source, token, before }: Stop): Report | null {
  if (before === undefined || !is(before, Text) || !is(token, NumberToken, Word)) return null;
  const value = String(before.payload ?? '');
  const bare = /^[a-z][a-z0-9-]*$/.test(value);
  const at = spanOf(source, before);
  return {
    message: `nothing follows a string but a comma, and ${shown(token)} does`,
    at,
    help: bare
      ? `write \`${value} ${token.image}\`, without quotes`
      : 'put all of it between the quotes, or a comma after them',
    ...(bare ? { fix: [{ span: at, text: value }] } : {}),
  };
}

/** `note: From the same blank.`, `title: The year's tides`, `title: Tides!` */
export function unquotedText({ source, line, token }: Stop): Report | null {
  if (!is(line[0], Word) || !is(line[1], Colon)) return null;
  const [first, second, third] = line.slice(2);
  const begun = is(first, Word, FirstOfPhrase);
  const apostrophe = begun && is(token, Stray) && token.image === "'";
  const quoted = is(token, Text) || (is(token, Stray) && /^[!?]/.test(token.image));
  const sentence = begun && quoted && /^(?:title|note)$/.test(line[0]?.image ?? '');
  const words = apostrophe || sentence || (is(first, FirstOfPhrase) && is(second, Word) && is(third, Word));
  if (!words || first === undefined) return null;
  const last = line.at(-2);
  if (last === undefined) return null;
  const at = spanOf(source, first, last);
  const text = source.text.slice(at.start, at.end);
  return {
    message: 'text that is only shown stands between double quotes',
    at,
    help: `write \`"${text.replaceAll('"', "'")}"\``,
    ...(/["\\\r\n]/.test(text) ? {} : { fix: [{ span: at, text: `"${text}"` }] }),
  };
}
