/** The units a file may declare with `units`; an envelope's lengths are shown in them. */
export type Units = 'mm' | 'cm' | 'in';

/** mm in one of each; an inch is 25.4 mm exactly (the international inch, 1959). */
export const MM_PER: Readonly<Record<Units, number>> = { mm: 1, cm: 10, in: 25.4 };

/** Whether a word is one that `units` takes. */
export const isUnits = (word: string): word is Units => Object.hasOwn(MM_PER, word);

/** g in one avoirdupois pound, exactly (1959); an ounce is a sixteenth of it. */
export const G_PER_POUND = 453.59237;

/** What a unit measures, and how much of the inner unit (mm, g, g/m², plain) one of it is. */
export interface Unit {
  readonly dimension: 'number' | 'length' | 'mass' | 'grammage';
  readonly factor: number;
}

/** Every unit that stands by itself after a number; pounds with a grade are in stock/paper-grades.ts. */
export const UNITS: ReadonlyMap<string, Unit> = new Map([
  ['mm', { dimension: 'length', factor: MM_PER.mm }],
  ['cm', { dimension: 'length', factor: MM_PER.cm }],
  ['in', { dimension: 'length', factor: MM_PER.in }],
  ['"', { dimension: 'length', factor: MM_PER.in }],
  ['″', { dimension: 'length', factor: MM_PER.in }],
  ['mil', { dimension: 'length', factor: 0.0254 }],
  ['um', { dimension: 'length', factor: 0.001 }],
  ['gsm', { dimension: 'grammage', factor: 1 }],
  ['g', { dimension: 'mass', factor: 1 }],
  ['oz', { dimension: 'mass', factor: G_PER_POUND / 16 }],
  ['%', { dimension: 'number', factor: 0.01 }],
]);
