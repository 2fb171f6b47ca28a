import type { ArtifactChange, Fix, Location, Log, PhysicalLocation, Region, Result } from 'sarif';
import type { Edit } from '../text/edit.js';
import { jsonText } from '../text/json-text.js';
import type { Span } from '../text/span.js';
import type { Diagnostic, Label } from './diagnostic.js';
import { type Problem, problemsIn } from './problem.js';
import { region } from './region.js';
import { uriOf } from './uri.js';

/** The program that a log names as its maker. */
export interface Tool {
  readonly name: string;
  readonly version: string;
}

/**
 * The findings as SARIF 2.1.0 (OASIS), for code hosts and editors: the same facts as the JSON. What there is to say of a
 * finding, its why and its help are the lines of its message.
 */
export function renderSarif(diagnostics: readonly Diagnostic[], { name, version }: Tool): string {
  const problems = problemsIn(diagnostics);
  const index = new Map(problems.map((problem, at) => [problem.name, at]));
  const log: Log = {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name, version, rules: problems.map(ruleOf) } },
        columnKind: 'unicodeCodePoints',
        newlineSequences: ['\r\n', '\n', '\r'],
        results: diagnostics.map((found) => resultOf(found, index.get(found.problem.name) ?? -1)),
      },
    ],
  };
  return `${jsonText(log, 2)}\n`;
}

const ruleOf = ({ name, severity, meaning, matters, remedy }: Problem) => ({
  id: name,
  shortDescription: words(meaning),
  fullDescription: words(matters),
  help: words(remedy),
  defaultConfiguration: { level: severity },
});

function resultOf(found: Diagnostic, ruleIndex: number): Result {
  const { problem, severity, message, primary, related, why, help, fix } = found;
  const said = [message, why === null ? [] : `why: ${why}`, help === null ? [] : `help: ${help}`].flat();
  return {
    ruleId: problem.name,
    ruleIndex,
    level: severity,
    message: words(said.join('\n')),
    locations: [locationOf(primary)],
    relatedLocations: related.map(locationOf),
    ...(fix === null ? {} : { fixes: [fixOf(fix, help)] }),
  };
}

/** A text as a message of the log: braces stand doubled, since single ones hold arguments (section 3.11.5). */
const words = (text: string) => ({ text: text.replace(/[{}]/g, '$&$&') });

const locationOf = ({ span, text }: Label): Location => ({
  physicalLocation: placeOf(span),
  ...(text === '' ? {} : { message: words(text) }),
});

const placeOf = (span: Span): PhysicalLocation => ({
  artifactLocation: { uri: uriOf(span.source.name) },
  region: regionOf(span),
});

function regionOf(span: Span): Region {
  const { line, column, endLine, endColumn } = region(span);
  return { startLine: line, startColumn: column, endLine, endColumn };
}

/** All edits of a finding, file by file: they belong together. */
function fixOf(edits: readonly Edit[], help: string | null): Fix {
  const files = [...new Set(edits.map(({ span }) => span.source))];
  return {
    ...(help === null ? {} : { description: words(help) }),
    artifactChanges: files.map(
      (source): ArtifactChange => ({
        artifactLocation: { uri: uriOf(source.name) },
        replacements: edits
          .filter(({ span }) => span.source === source)
          .map(({ span, text }) => ({ deletedRegion: regionOf(span), insertedContent: { text } })),
      }),
    ),
  };
}
