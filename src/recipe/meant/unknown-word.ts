import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import { report } from '../../diagnostics/problem.js';
import { sizeNames } from '../../stock/sizes.js';
import type { WordNode } from '../../syntax/ast.js';
import type { Span } from '../../text/span.js';
import { EXPECT_NAMES } from '../expect-names.js';
import { A_KIND, type Declaration } from '../names.js';
import type { Context, Place } from '../place.js';
import { unknownName, wrongKind } from '../problems.js';
import { quote } from '../quote.js';
import { unitWords } from '../../../grammar/words.js';
import { gramsForMetre } from './grams-for-metre.js';
import { sizeMeant } from './size-slips.js';
import type { RecipeFile } from '../uses.js';

/** Reports a word that stands for no number and no size; says nothing where broken writing may hide its name. */
export function unknownWord(node: WordNode, place: Place): void {
  const { context, file } = place;
  const declaration = context.names.find(node.text, file);
  if (declaration) context.tell(otherKind(node, declaration));
  else if (context.names.complete(file)) context.tell(unknown(node, place));
}

const otherKind = (node: WordNode, { kind, node: declared }: Declaration): Diagnostic =>
  report(wrongKind, {
    message: `${quote(node.span)} is ${A_KIND[kind]}, and a number or a size is wanted here`,
    at: node.span,
    related: [{ span: declared.name.span, text: 'declared here' }],
    help: `give the number or size a name with \`let\`, and use that`,
  });

function unknown(node: WordNode, { context, file }: Place): Diagnostic {
  const { span, text } = node;
  const name = quote(span);
  if (text === 'default') {
    return report(unknownName, {
      message: '`default` stands alone after its colon',
      at: span,
      why: 'it leaves a property to what follows from the rest, and that is no number to reckon with',
      help: 'write a value, or `default` and nothing else',
    });
  }
  if (unitWords.has(text)) {
    return report(unknownName, {
      message: `${name} is a unit, and no number stands before it`,
      at: span,
      help: `write the number right before it, such as \`10 ${text}\``,
    });
  }
  const grams = gramsForMetre(span);
  if (grams) return grams;
  const meant = sizeMeant(text, (word) => context.names.find(word, file)?.kind === 'let');
  if (meant) return otherSize(span, meant);
  if (context.isProperty(text)) {
    return report(unknownName, {
      message: `${name} is a property, and properties are not names`,
      at: span,
      help: `give its value a name, such as \`let my-${text} = …\`, and write that name in both places`,
    });
  }
  if (EXPECT_NAMES.has(text)) {
    return report(unknownName, {
      message: `${name} is worked out from the recipe, and may only be asked for`,
      at: span,
      help: `write \`expect ${text} = …\` on a line of its own`,
    });
  }
  return undeclared(node, 'no name of a size or a `let`', ['let'], context, file, sizeNames());
}

/** A size written otherwise than here, where the one that was meant is sure. */
export const otherSize = (at: Span, meant: string): Diagnostic =>
  report(unknownName, {
    message: `${quote(at)} is not the name of a size`,
    at,
    ...(meant.includes(' ')
      ? { why: 'a sheet is folded with a word of its own before it, and a space between' }
      : {}),
    help: `write \`${meant}\``,
    fix: [{ span: at, text: meant }],
  });

/** A name that is not known at all: it may be known elsewhere, or misspelt. */
export function undeclared(
  { span, text }: WordNode,
  what: string,
  kinds: readonly Declaration['kind'][],
  { names }: Context,
  file: RecipeFile,
  others: Iterable<string> = [],
): Diagnostic {
  const elsewhere = names.elsewhere(text, file);
  const lower = names.find(text.toLowerCase(), file);
  if (lower && kinds.includes(lower.kind)) return otherwiseKnown(span, text.toLowerCase());
  const near = names.near(text, file, kinds, others);
  return report(unknownName, {
    message: `${quote(span)} is ${what}`,
    at: span,
    ...(elsewhere && kinds.includes(elsewhere.kind)
      ? {
          related: [
            { span: elsewhere.node.name.span, text: 'declared here, in a file that this one does not use' },
          ],
          help: `add \`use "${pathBetween(file.source.name, elsewhere.file.source.name)}"\` near the top`,
        }
      : { help: near.length > 0 ? `did you mean ${anyOf(near)}?` : declare(kinds, text) }),
  });
}

/** A name with capitals that is declared without. */
const otherwiseKnown = (at: Span, name: string): Diagnostic =>
  report(unknownName, {
    message: `${quote(at)} is declared in lower case`,
    at,
    why: 'names are in lower case, and capitals make another name',
    help: `write \`${name}\``,
    fix: [{ span: at, text: name }],
  });

/** `a`, `b` or `c`, in backticks. */
export const anyOf = (words: readonly string[]): string => {
  const quoted = words.map((word) => `\`${word}\``);
  return [quoted.slice(0, -1).join(', '), ...quoted.slice(-1)].filter((part) => part !== '').join(' or ');
};

/** Declared names are lower case, whatever the word that was to name one. */
const declare = ([kind]: readonly Declaration['kind'][], word: string): string => {
  const name = word.toLowerCase();
  const declaration = kind === 'let' ? `let ${name} = …` : `${kind} ${name} { … }`;
  return `declare it: \`${declaration}\`, or \`use\` the file that does`;
};

/** The path from one file's folder to another file, as `use` writes it. */
function pathBetween(from: string, to: string): string {
  const folders = from.split('/').slice(0, -1);
  const parts = to.split('/');
  let shared = 0;
  while (shared < folders.length && shared < parts.length - 1 && folders[shared] === parts[shared]) shared++;
  return [...folders.slice(shared).map(() => '..'), ...parts.slice(shared)].join('/');
}
