import { jsonText } from '../../text/json-text.js';
import type { Plan, PlannedPaper } from '../../plan/plan.js';

/** Plans for programs: lengths mm, masses g, in full precision; null is unknown. Fields are added over time, never renamed. */
export const planJson = (plans: readonly Plan[]): string =>
  `${jsonText({ format: 'plica-plan', version: 1, batches: plans.map(ofBatch) }, 2)}\n`;

const ofBatch = ({ batch, orders, papers, tape, cost, mass }: Plan) => ({
  name: batch.name,
  title: batch.title,
  units: batch.units,
  spoilage: batch.spoilage,
  envelopes: orders.map(({ order: { envelope, facts, count }, cut }) => ({
    name: envelope.name,
    title: envelope.title.value,
    asked: count,
    cut,
    blank: facts.blank,
    paper: envelope.paper.value?.name ?? null,
    linerPaper: facts.liner ? (envelope.linerPaper.value?.name ?? null) : null,
  })),
  papers: papers.map(ofPaper),
  tape,
  cost,
  mass,
});

const ofPaper = ({
  paper,
  sheet,
  pieces,
  layouts,
  sheets,
  bound,
  rows,
  used,
  cost,
  short,
}: PlannedPaper) => ({
  name: paper.name,
  title: paper.title,
  sheet,
  sheets,
  atLeast: bound,
  plainRows: rows,
  used,
  stock: paper.stock,
  short,
  price: paper.price,
  cost,
  pieces,
  layouts: layouts.map(({ sheets: alike, pieces: counts, cuts, steps, offcuts }) => ({
    sheets: alike,
    pieces: counts,
    cuts,
    steps,
    offcuts,
  })),
});
