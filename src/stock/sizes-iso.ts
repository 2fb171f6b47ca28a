/*
 * stock/: what is for sale: sizes of sheets and cards, grades of paper, each row with its source (sources.ts).
 * In: a name. Out: sizes in mm, factors in g/m².
 * Refuses to know: recipes.
 */

/** A named size: short side, long side in mm, and the ids of its sources. */
export type SizeRow = readonly [name: string, short: number, long: number, sources: string];

/** ISO 216 (A, B), ISO 269 / DIN 476-2 (C) and DIN 678-1 (DL), ISO 217 (RA, SRA: untrimmed stock). mm. */
export const ISO_SIZES: readonly SizeRow[] = [
  ['A0', 841, 1189, 'pwg;wiki216;psorg'],
  ['A1', 594, 841, 'pwg;wiki216;psorg'],
  ['A2', 420, 594, 'pwg;wiki216;psorg'],
  ['A3', 297, 420, 'pwg;wiki216;psorg'],
  ['A4', 210, 297, 'pwg;wiki216;psorg'],
  ['A5', 148, 210, 'pwg;wiki216;psorg'],
  ['A6', 105, 148, 'pwg;wiki216;psorg'],
  ['A7', 74, 105, 'pwg;wiki216;psorg'],
  ['A8', 52, 74, 'pwg;wiki216;psorg'],
  ['A9', 37, 52, 'pwg;wiki216;psorg'],
  ['A10', 26, 37, 'pwg;wiki216;psorg'],
  ['B0', 1000, 1414, 'pwg;wiki216'],
  ['B1', 707, 1000, 'pwg;wiki216'],
  ['B2', 500, 707, 'pwg;wiki216'],
  ['B3', 353, 500, 'pwg;wiki216;ntg'],
  ['B4', 250, 353, 'pwg;wiki216;ntg'],
  ['B5', 176, 250, 'pwg;wiki216;ntg'],
  ['B6', 125, 176, 'pwg;wiki216;ntg'],
  ['B7', 88, 125, 'pwg;wiki216'],
  ['B8', 62, 88, 'pwg;wiki216;ntg'],
  ['B9', 44, 62, 'pwg;wiki216;ntg'],
  ['B10', 31, 44, 'pwg;wiki216'],
  ['C0', 917, 1297, 'pwg;wiki216;tryck'],
  ['C1', 648, 917, 'pwg;wiki216;tryck'],
  ['C2', 458, 648, 'pwg;wiki216;tryck'],
  ['C3', 324, 458, 'pwg;wiki216;tryck'],
  ['C4', 229, 324, 'pwg;wiki216;tryck'],
  ['C5', 162, 229, 'pwg;wiki216;tryck'],
  ['C6', 114, 162, 'pwg;wiki216;tryck'],
  ['C7', 81, 114, 'pwg;wiki216;tryck'],
  ['C8', 57, 81, 'pwg;wiki216;tryck'],
  ['C9', 40, 57, 'pwg;wiki216;tryck'],
  ['C10', 28, 40, 'pwg;wiki216;tryck'],
  ['DL', 110, 220, 'pwg;ruwiki;ntg'],
  ['RA0', 860, 1220, 'pwg;weblio;pform'],
  ['RA1', 610, 860, 'pwg;weblio;pform'],
  ['RA2', 430, 610, 'pwg;weblio;pform'],
  ['RA3', 305, 430, 'pwg;weblio;pform'],
  ['RA4', 215, 305, 'pwg;weblio;pform'],
  ['SRA0', 900, 1280, 'pwg;weblio;pform'],
  ['SRA1', 640, 900, 'pwg;weblio;pform'],
  ['SRA2', 450, 640, 'pwg;weblio;pform'],
  ['SRA3', 320, 450, 'pwg;weblio;pform'],
  ['SRA4', 225, 320, 'pwg;weblio;pform'],
];
