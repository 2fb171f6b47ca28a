import type { Diagnostic } from '../../../diagnostics/diagnostic.js';
import type { Bench } from '../bench.js';
import type { Section, Term } from '../content.js';
import { capitalised, sentences, stopped } from '../words.js';

/** What the checks have to say, before any paper is cut. */
export function findings({ diagnostics }: Bench): Section | null {
  if (diagnostics.length === 0) return null;
  return {
    name: 'findings',
    heading: 'Before you cut',
    blocks: [
      ...(diagnostics.some(({ severity }) => severity === 'error')
        ? [
            {
              kind: 'paragraph' as const,
              text: 'This recipe will not make a sound envelope. Mend what is listed as an error first.',
            },
          ]
        : []),
      { kind: 'terms', terms: diagnostics.map(finding) },
    ],
  };
}

const finding = ({ problem, severity, message, why, help }: Diagnostic): Term => ({
  label: capitalised(severity),
  text: sentences(
    stopped(capitalised(message)),
    why && stopped(capitalised(why)),
    help && stopped(`To mend it: ${help}`),
    `[${problem.name}]`,
  ),
});
