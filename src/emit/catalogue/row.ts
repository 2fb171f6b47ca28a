import type { Facts } from '../../folding/facts.js';
import { postNamed } from '../../recipe/post-named.js';
import { found } from '../json/found.js';
import type { Job } from '../emitter.js';
import { position } from '../../text/source.js';
import type { Row } from './leaf.js';

/** Where a recipe's file is, and what its leaf is called. */
export interface Kept {
  /** The recipe's file from the project's root, with `/`. */
  readonly file: string;
  readonly leaf: string;
  readonly pages: number;
}

/** The row of a sound recipe. */
export function rowOf(job: Job, { file, leaf, pages }: Kept): Row {
  const { envelope, facts } = job;
  const { source, start } = envelope.span;
  return {
    name: envelope.name,
    title: envelope.title.value,
    file,
    line: position(source, start).line,
    tags: envelope.tags.value,
    units: envelope.units,
    step: envelope.step.value,
    card: facts.card,
    room: {
      width: facts.margins.roomWidth + facts.card.width,
      height: facts.margins.roomHeight + facts.card.height,
      depth: facts.margins.roomDepth === null ? null : facts.margins.roomDepth + facts.card.bulk,
    },
    depth: facts.depth,
    blank: facts.blank,
    marks: {
      left: marksOf(facts.scores.left),
      right: marksOf(facts.scores.right),
      seal: marksOf(facts.scores.seal),
      bottom: marksOf(facts.scores.bottom),
    },
    paper: paperOf(job),
    post: postNamed(envelope),
    findings: job.diagnostics.map((diagnostic) => found(diagnostic, file)),
    pages,
    leaf,
  };
}

const marksOf = (scores: Facts['scores']['left']): readonly number[] =>
  scores.map(({ alongEdge }) => alongEdge);

function paperOf({ envelope, facts }: Job): Row['paper'] {
  const paper = envelope.paper.value;
  if (paper === null) return null;
  const { sheet } = facts;
  return {
    name: paper.name,
    title: paper.title,
    sheet: sheet && { width: sheet.width, height: sheet.height, copies: sheet.copies },
  };
}
