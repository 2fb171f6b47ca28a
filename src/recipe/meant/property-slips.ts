import type { BlockNode } from '../../syntax/ast.js';

/** Words that people try for a property, and the one that was meant, by the type of block. */
export const propertyMeant = (word: string, type: BlockNode['type']): string | undefined =>
  SLIPS[type].get(word.toLowerCase());

const IN_AN_ENVELOPE: ReadonlyMap<string, string> = new Map([
  ['name', 'title'],
  ['description', 'note'],
  ['text', 'note'],
  ['size', 'card'],
  ['width', 'card'],
  ['height', 'card'],
  ['clearance', 'ease'],
  ['allowance', 'seam'],
  ['overlap', 'seam'],
  ['square', 'blank'],
  ['offset', 'shift'],
  ['lid', 'flap'],
  ['closing', 'fasten'],
  ['glue', 'tape'],
  ['stock', 'paper'],
  ['lining', 'liner'],
  ['lining-paper', 'liner-paper'],
]);

const IN_A_PAPER: ReadonlyMap<string, string> = new Map([
  ['name', 'title'],
  ['size', 'sheet'],
  ['gsm', 'weight'],
  ['grammage', 'weight'],
  ['thickness', 'caliper'],
  ['calliper', 'caliper'],
  ['cost', 'price'],
  ['count', 'stock'],
  ['quantity', 'stock'],
]);

const IN_A_BATCH: ReadonlyMap<string, string> = new Map([
  ['name', 'title'],
  ['envelopes', 'make'],
  ['count', 'make'],
  ['quantity', 'make'],
  ['of', 'make'],
  ['cut', 'make'],
  ['waste', 'spoilage'],
  ['spare', 'spoilage'],
  ['spoiled', 'spoilage'],
]);

const SLIPS: Readonly<Record<BlockNode['type'], ReadonlyMap<string, string>>> = {
  envelope: IN_AN_ENVELOPE,
  style: IN_AN_ENVELOPE,
  paper: IN_A_PAPER,
  batch: IN_A_BATCH,
};
