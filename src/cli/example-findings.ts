import { type Compilation, compile } from '../compile.js';
import { diff } from '../diff/diff.js';
import { figuresChanged } from '../diff/figures-changed.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Example } from '../diagnostics/problem.js';
import { source } from '../text/source.js';

/** What Plica says of a text of an example: by itself, and beside how it was, where the example shows that. */
export function exampleFindings({ before }: Example, text: string): readonly Diagnostic[] {
  const after = compiled(text);
  const changed = before === undefined ? [] : figuresChanged(diff(compiled(before), after), 'before');
  return [...after.diagnostics, ...changed];
}

/** It stands by itself: any other file lies outside of it. */
const compiled = (text: string): Compilation =>
  compile([{ id: '', source: source('example.plica', text) }], () => ({ kind: 'outside-root' }));
