/** A kind of file, without the code that writes it: commands name them at every start. */
export interface Kind {
  /** As `--emit` names it. */
  readonly name: string;
  /** What it is, in a few words, for `build --help`. */
  readonly summary: string;
  /** Whether a build writes it where nothing else is asked for. */
  readonly byDefault: boolean;
}

const kind = (name: string, summary: string, byDefault = false): Kind => ({ name, summary, byDefault });

/** A kind of which there is one file for each recipe file. */
export const FACTS: Kind = kind('facts', 'what a catalogue is made of, a file for each recipe file, as JSON');

/** Every kind of file that a build writes for an envelope, in the order in which they are named. */
export const KINDS = {
  'cut-sheet': kind('cut-sheet', 'the sheet to work from at the bench, as PDF', true),
  template: kind('template', 'the blank at true size, in tiles where the paper is smaller, as PDF', true),
  svg: kind('svg', 'the blank at true size, a named group for each kind of line, as SVG', true),
  steps: kind('steps', 'the fold step by step, as pictures, as SVG'),
  card: kind('card', 'one small picture: the open blank, the closed envelope and their sizes, as SVG'),
  dxf: kind('dxf', 'the blank at true size for cutting machines, as DXF in mm'),
  fold: kind('fold', 'crease pattern and closed envelope for folding programs, as FOLD'),
  print: kind('print', 'the blank for a print shop, a layer and a spot colour for each step, as PDF'),
} as const;
