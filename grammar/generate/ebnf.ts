import { SPELLINGS } from '../spellings.js';
import { byKind, type GrammarRule, grammarRules, type Part, type PartTable } from './grammar-rules.js';

/** The grammar in the notation of ISO/IEC 14977, but with nothing between the members of a sequence. */
export function ebnf(): string {
  const names = SPELLINGS.flatMap((spelling) => ('name' in spelling ? [spelling] : []));
  const rules = grammarRules();
  const width = Math.max(...[...rules, ...names].map(({ name }) => name.length));
  return [
    ABOUT,
    ...rules.map((rule) => written(rule, width)),
    '',
    ...names.map(({ name, means }) => `${name.padEnd(width)} = ? ${means} ? ;`),
    '',
  ].join('\n');
}

const ABOUT = `(* The grammar of Plica, edition 1. [ ] may be left out, { } is repeated or left out.

   Lines are laid out before these rules are applied: a comment ends where its line does; lines with
   nothing on them are passed over; no line-end is left after a comma or an opening brace, nor before
   a brace; one is put where it may be left out, before a closing brace and at the end of the file.
   Words become what their place makes them: \`units\` is a word like any other where a value stands. *)
`;

/** A rule on one line, or with each of its choices on one. */
function written({ name, part }: GrammarRule, width: number): string {
  const whole = alternatives(part);
  const line = whole.join(' | ');
  const body = line.length > LONGEST ? whole.join(`\n${' '.repeat(width)} | `) : line;
  return `${name.padEnd(width)} = ${body} ;`;
}

/** Choices that take more columns than this stand under each other. */
const LONGEST = 60;

const alternatives = (part: Part): readonly string[] =>
  part.kind === 'choice' ? part.parts.map(inLine) : [inLine(part)];

const inLine = (part: Part): string => byKind(NOTATION, part);

const NOTATION: PartTable<string> = {
  sign: ({ sign }) => `"${sign}"`,
  name: ({ name }) => name,
  sequence: ({ parts }) =>
    parts.map((part) => (part.kind === 'choice' ? `( ${inLine(part)} )` : inLine(part))).join(' '),
  choice: ({ parts }) => parts.map(inLine).join(' | '),
  optional: ({ part }) => `[ ${inLine(part)} ]`,
  repeated: ({ part }) => `{ ${inLine(part)} }`,
};
