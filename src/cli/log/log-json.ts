import { mainFigures } from '../../diff/main-figures.js';
import { changeOf } from '../../diff/render-json.js';
import { jsonText } from '../../text/json-text.js';
import type { Told } from './told.js';

/** The history of an envelope for programs; log.schema.json says what it holds. The newest first. */
export const logJson = (path: string, name: string, told: readonly Told[]): string =>
  `${jsonText({ format: 'plica-log', version: 1, file: path, name, changes: told.map(toldOf) }, 2)}\n`;

const toldOf = ({ point: { commit, path }, change, isFirst, isCutOff }: Told) => ({
  commit: commit && {
    hash: commit.hash,
    parents: commit.parents,
    date: commit.date,
    subject: commit.subject,
  },
  file: path,
  isFirst,
  isCutOff,
  reason: change.kind === 'hidden' ? change.reason : null,
  change: changed(change),
});

/** A change as in a difference; where an envelope is stated, the figures that it is known by come from nothing. */
function changed(change: Told['change']): object {
  if (change.kind === 'hidden') return changeOf({ kind: 'unreadable', name: change.name, side: 'after' });
  return change.kind === 'added'
    ? { ...changeOf(change), figures: mainFigures(change.after) }
    : changeOf(change);
}
