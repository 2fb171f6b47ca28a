/*
 * emit/json/: every figure of some envelopes as one JSON text, for other programs; facts.schema.json says what it holds.
 * In: compiled recipes. Out: text that ends in a line end. Fields are added over time, never renamed.
 * Refuses to know: which of the figures anybody needs.
 */
import { jsonText } from '../../text/json-text.js';
import { position } from '../../text/source.js';
import type { Facts } from '../../folding/facts.js';
import { postFacts } from './post-facts.js';
import type { Job } from '../emitter.js';
import { type Found, found } from './found.js';

/** Lengths mm, areas mm², masses g, all as made, in full precision. What is unknown or does not apply is null. */
export function renderFacts(jobs: readonly Job[]): string {
  return `${jsonText({ format: 'plica-facts', version: 1, recipes: jobs.map(recipe) }, 2)}\n`;
}

function recipe({ envelope, facts, diagnostics }: Job) {
  const { source, start } = envelope.span;
  return recipeFacts(
    {
      name: envelope.name,
      title: envelope.title.value,
      file: source.name,
      line: position(source, start).line,
      findings: diagnostics.map((diagnostic) => found(diagnostic)),
    },
    facts,
  );
}

/** Where a recipe stands, and what is found about it. */
export interface Stated {
  readonly name: string;
  readonly title: string;
  readonly file: string;
  readonly line: number;
  readonly findings: readonly Found[];
}

/** One recipe of the facts JSON. */
export const recipeFacts = ({ name, title, file, line, findings }: Stated, facts: Facts) => ({
  name,
  title,
  file,
  line,
  ...facts,
  post: postFacts(facts),
  findings,
});
