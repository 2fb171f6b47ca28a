import type { GlueLine } from '../../../folding/folding.js';
import { sameLength } from '../../../measure/slack.js';
import type { Bench } from '../bench.js';
import type { Cell, Section } from '../content.js';
import { both } from '../lengths.js';
import { stripToCut } from '../strip-to-cut.js';

/** The strips as they are cut, in the order in which they are laid; a pair alike is one row. */
const KINDS: readonly {
  readonly of: string;
  readonly strips: Readonly<Partial<Record<GlueLine['name'], string>>>;
}[] = [
  { of: 'Centre seam', strips: { centre: '' } },
  { of: 'Lower seams', strips: { 'lower-left': ', left', 'lower-right': ', right' } },
  { of: 'Edges of the seal flap', strips: { 'seal-left': ', left', 'seal-right': ', right' } },
  { of: 'Tip of the seal flap', strips: { 'seal-tip': '' } },
];

/** The tape or glue of one envelope, strip by strip. */
export function tape(bench: Bench): Section | null {
  const { facts, envelope, say } = bench;
  if (facts.tape.length === 0) return null;
  return {
    name: 'tape',
    heading: 'Tape or glue',
    blocks: [
      {
        kind: 'table',
        headings: ['For', 'Cut to', 'Strips'],
        rows: KINDS.flatMap((kind) => rows(bench, kind)),
      },
      {
        kind: 'paragraph',
        text: `${both(say.read(facts.tapeLength))} in all, ${both(say.read(envelope.tape.value))} wide. Lengths are rounded down, lest a strip reach past its seam.`,
      },
    ],
  };
}

function rows(bench: Bench, { of, strips }: (typeof KINDS)[number]): readonly (readonly Cell[])[] {
  const cut = bench.facts.tape.flatMap(({ name, length }) => {
    const side = strips[name];
    return side === undefined ? [] : [{ side, length: stripToCut(bench, length) }];
  });
  const [first] = cut;
  if (first && cut.every(({ length }) => sameLength(length, first.length)))
    return [[of, bench.say.read(first.length), `${cut.length}`]];
  return cut.map(({ side, length }) => [`${of}${side}`, bench.say.read(length), '1']);
}
