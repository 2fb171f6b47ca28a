import { type Edit, inItsLineEnds } from '../text/edit.js';
import type { Span } from '../text/span.js';
import type { Diagnostic, Label, Severity } from './diagnostic.js';

/** A kind of problem, declared beside the code that reports it. Its name is never reused. */
export interface Problem {
  /** The kebab-case name, the same in file name, test folder, JSON and page of explanation. */
  readonly name: string;
  readonly severity: Severity;
  /** What it means on paper, in a sentence. */
  readonly meaning: string;
  /** Why it matters, in a sentence. */
  readonly matters: string;
  /** How it is usually mended, in a sentence. */
  readonly remedy: string;
  readonly example: Example;
  /** Who says so: a published source, or common practice. None where it follows from the geometry or from the language. */
  readonly source?: string;
}

/** A short recipe with this problem and no other, and the same recipe mended. */
export interface Example {
  /** For a problem that only a comparison shows: the recipe as it was. */
  readonly before?: string;
  readonly wrong: string;
  readonly mended: string;
}

/** What a report adds to a problem. */
export interface Report {
  readonly message: string;
  readonly at: Span;
  readonly label?: string;
  readonly related?: readonly Label[];
  readonly why?: string;
  readonly help?: string;
  readonly fix?: readonly Edit[];
  /** Overrides the problem's own severity (a note about a sheet, a failed post class …). */
  readonly severity?: Severity;
}

/** Makes the finding. Its edits are written with the line ends of the text that they go into. */
export const report = (problem: Problem, what: Report): Diagnostic => ({
  problem,
  severity: what.severity ?? problem.severity,
  message: what.message,
  primary: { span: what.at, text: what.label ?? '' },
  related: what.related ?? [],
  why: what.why ?? null,
  help: what.help ?? null,
  fix: what.fix?.map(inItsLineEnds) ?? null,
});

/** The problems that some findings are of, each once, in the order in which they are first met. */
export const problemsIn = (diagnostics: readonly Diagnostic[]): readonly Problem[] => [
  ...new Map(diagnostics.map(({ problem }) => [problem.name, problem])).values(),
];
