import type { Recipe, Side } from './difference.js';

/**
 * Tells of an envelope that a side lacks whether it may only be that its writing there has mistakes: in a file that it is
 * worked out from on the other side, or in one that states it or is used by it. Files are known by their names in messages.
 */
export function unreadableIn({
  recipes,
  diagnostics,
  texts = [],
}: Side): (envelope: Recipe['envelope']) => boolean {
  const ofRules = new Set(recipes.flatMap((recipe) => recipe.diagnostics));
  const broken = new Set(
    diagnostics
      .filter((finding) => finding.severity === 'error' && !ofRules.has(finding))
      .map(({ primary }) => primary.span.source),
  );
  const files = new Set([...broken].map(({ name }) => name));
  const names = new Set(
    [...[...broken].map(({ text }) => text), ...texts].flatMap((text) =>
      [...text.matchAll(HEADER)].map(([, name]) => name),
    ),
  );
  return (envelope) => names.has(envelope.name) || filesOf(envelope).some((file) => files.has(file));
}

/** The header of an envelope's block, at the start of its line. */
const HEADER = /^[ \t]*envelope[ \t]+([a-z][a-z0-9-]*)/gim;

/** The files that an envelope is worked out from. */
const filesOf = ({ span, layers, paper, linerPaper }: Recipe['envelope']): readonly string[] => [
  span.source.name,
  ...[...layers, ...(paper.value?.layers ?? []), ...(linerPaper.value?.layers ?? [])].flatMap(({ entries }) =>
    [...entries.values()].map((entry) => entry.span.source.name),
  ),
];
