import type { Envelope } from '../../src/recipe/recipe.js';
import { type Resolved, resolve } from '../../src/recipe/resolve.js';
import { source } from '../../src/text/source.js';
import { type Beside, readerOf } from './compile-text.js';

/** Resolves a recipe's text, with the files it uses at hand; no disk. */
export const resolveText = (text: string, { name = 'recipe.plica', files = {} }: Beside = {}): Resolved =>
  resolve([{ id: name, source: source(name, text) }], readerOf({ ...files, [name]: text }));

/** The envelopes of a text in which nothing is wrong, by name. */
export function envelopesOf(text: string, beside: Beside = {}): (name: string) => Envelope {
  const { envelopes, diagnostics } = resolveText(text, beside);
  if (diagnostics.length > 0) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  return (name) => {
    const found = envelopes.find((envelope) => envelope.name === name);
    if (!found) throw new Error(`no envelope ${name}`);
    return found;
  };
}

/** What was found wrong, as `problem: the text it points at`. */
export const findingsOf = ({ diagnostics }: Resolved): readonly string[] =>
  diagnostics.map(
    ({ problem, primary: { span } }) => `${problem.name}: ${span.source.text.slice(span.start, span.end)}`,
  );
