/*
 * grammar/generate/: the grammar drawn and written out, from the parser itself.
 * In: the rules that the parser has recorded. Out: the text of plica.ebnf, the page railroad.html.
 * Refuses to know: recipes. Nothing of plica itself needs this room; the tests keep what it makes fresh.
 */
import type { ISerializedGast } from 'chevrotain';
import { RecipeParser } from '../recipe-parser.js';
import { type Spelling, SPELLINGS } from '../spellings.js';

/** A part of a rule. */
export type Part =
  | { readonly kind: 'sign'; readonly sign: string }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'sequence'; readonly parts: readonly Part[] }
  | { readonly kind: 'choice'; readonly parts: readonly Part[] }
  | { readonly kind: 'optional'; readonly part: Part }
  | { readonly kind: 'repeated'; readonly part: Part };

/** What becomes of each kind of part. */
export type PartTable<Result> = {
  readonly [Kind in Part['kind']]: (part: Extract<Part, { readonly kind: Kind }>) => Result;
};

/** What a table makes of a part. */
export const byKind = <Result>(table: PartTable<Result>, part: Part): Result =>
  (table[part.kind] as (part: Part) => Result)(part);

export interface GrammarRule {
  readonly name: string;
  readonly part: Part;
}

/** Every rule of the parser, in the order in which it declares them. */
export const grammarRules = (): readonly GrammarRule[] =>
  new RecipeParser({ analyse: true })
    .getSerializedGastProductions()
    .map((rule) => ({ name: nameOf(rule), part: sequence(rule) }));

/** What the library calls a thing: a rule, or a kind of token. */
const nameOf = (node: ISerializedGast): string => (node as ISerializedGast & { readonly name: string }).name;

/** The parts that the library's nodes stand for. */
const READERS: Readonly<Record<string, (node: ISerializedGast) => Part>> = {
  Terminal: (node) => spelled(nameOf(node)),
  NonTerminal: (node) => ({ kind: 'name', name: nameOf(node) }),
  Alternative: (node) => sequence(node),
  Alternation: (node) => choice((node.definition ?? []).map(read)),
  Option: (node) => ({ kind: 'optional', part: sequence(node) }),
  Repetition: (node) => ({ kind: 'repeated', part: sequence(node) }),
  RepetitionMandatory: (node) => ({
    kind: 'sequence',
    parts: [sequence(node), { kind: 'repeated', part: sequence(node) }],
  }),
};

function read(node: ISerializedGast): Part {
  const reader = READERS[node.type];
  if (reader === undefined) throw new Error(`the grammar uses ${node.type}, which is not drawn yet`);
  return reader(node);
}

function sequence({ definition = [] }: ISerializedGast): Part {
  const parts = definition.map(read);
  return parts.length === 1 ? (parts[0] as Part) : { kind: 'sequence', parts };
}

/** A choice within a choice is one choice. */
const choice = (parts: readonly Part[]): Part => ({
  kind: 'choice',
  parts: parts.flatMap((part) => (part.kind === 'choice' ? part.parts : [part])),
});

const BY_TOKEN: ReadonlyMap<string, Spelling> = new Map(
  SPELLINGS.map((spelling) => [spelling.type.name, spelling]),
);

function spelled(token: string): Part {
  const spelling = BY_TOKEN.get(token);
  if (spelling === undefined) throw new Error(`the token ${token} has no spelling`);
  if ('name' in spelling) return { kind: 'name', name: spelling.name };
  const signs = spelling.signs.map((sign): Part => ({ kind: 'sign', sign }));
  return signs.length === 1 ? (signs[0] as Part) : { kind: 'choice', parts: signs };
}
