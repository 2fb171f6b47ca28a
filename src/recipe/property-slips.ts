import type { BlockNode } from '../syntax/ast.js';

/** Words that people try for a property, and the one that was meant, by the type of block. */
export const propertyMeant = (word: string, type: BlockNode['type']): string | undefined =>
  (type === 'paper' ? IN_A_PAPER : IN_AN_ENVELOPE).get(word.toLowerCase());

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
