import type { Diagnostic } from '../diagnostics/diagnostic.js';

/** Findings of rules, counted rule by rule, that `after` has more of than `before`. */
export function appeared(before: readonly Diagnostic[], after: readonly Diagnostic[]): readonly Diagnostic[] {
  const [older, newer] = [byRule(before), byRule(after)];
  return [...newer].flatMap(([rule, found]) => {
    const had = older.get(rule) ?? [];
    const more = Math.max(0, found.length - had.length);
    return unheardFirst(found, had).slice(0, more);
  });
}

function byRule(findings: readonly Diagnostic[]): ReadonlyMap<string, readonly Diagnostic[]> {
  const rules = new Map<string, Diagnostic[]>();
  for (const finding of findings) {
    const rule = `${finding.problem.name} ${finding.severity}`;
    const found = rules.get(rule);
    if (found) found.push(finding);
    else rules.set(rule, [finding]);
  }
  return rules;
}

/** Those that say what none said before, then the others. */
function unheardFirst(found: readonly Diagnostic[], had: readonly Diagnostic[]): readonly Diagnostic[] {
  const heard = new Set(had.map(({ message }) => message));
  return [
    ...found.filter(({ message }) => !heard.has(message)),
    ...found.filter(({ message }) => heard.has(message)),
  ];
}
