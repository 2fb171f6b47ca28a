import type { FileLeaves, Leaf, Row } from '../../emit/catalogue/leaf.js';
import { recipeFacts } from '../../emit/json/render-facts.js';
import { jsonText } from '../../text/json-text.js';
import { sha256 } from './leaf-key.js';

/** How the files of facts are called that a book is assembled from. */
export const FACTS_ENDING = '.facts.json';

/** No file of facts comes near it, in bytes. */
export const LONGEST_FACTS = 512_000_000;

/** Before what a recipe file came to: whose work it is (program and fonts), and the hash of what follows. */
const HEAD = /^\{"format":"plica-facts","version":1,"madeBy":"([0-9a-f]{64})","sum":"([0-9a-f]{64})",\n/;
const LONGEST_HEAD = 250;

/** What a recipe file came to, with the leaves of its rows, in their order. */
export interface FileFacts extends FileLeaves {
  readonly leaves: readonly Leaf[];
}

/** A recipe file's facts as JSON: what `show --format json` says of its envelopes, and all that a book wants of them besides. */
export function factsFile({ file, rows, findings, names, leaves }: FileFacts, madeBy: string): Buffer {
  const recipes = rows.map((row, index) => {
    const { facts, ...leaf } = leaves[index] as Leaf;
    return { ...recipeFacts(row, facts), row, leaf, facts };
  });
  const lines = [
    `"file": ${jsonText(file)}`,
    `"recipes": [${recipes.map((recipe) => `\n${jsonText(recipe)}`).join(',')}]`,
    `"findings": ${jsonText(findings)}`,
    `"names": ${jsonText(names)}`,
  ];
  const body = Buffer.from(`${lines.join(',\n')}}\n`);
  const head = `{"format":"plica-facts","version":1,"madeBy":"${madeBy}","sum":"${sha256(body)}",\n`;
  return Buffer.concat([Buffer.from(head), body]);
}

/** Reads such a file back, or says what is wrong with it. */
export function readFacts(bytes: Buffer, madeBy: string): FileFacts | string {
  const head = HEAD.exec(bytes.toString('latin1', 0, LONGEST_HEAD));
  if (head === null) return 'it is no file of facts that `plica build --emit facts` wrote';
  const body = bytes.subarray(head[0].length);
  if (sha256(body) !== head[2]) return 'it has been changed or cut short; build it again';
  if (head[1] !== madeBy) return 'another version of plica made it; build it again with this one';
  const { file, recipes, findings, names } = JSON.parse(`{${body.toString()}`) as {
    readonly file: string;
    readonly recipes: readonly {
      readonly row: Row;
      readonly leaf: Omit<Leaf, 'facts'>;
      readonly facts: Leaf['facts'];
    }[];
    readonly findings: FileLeaves['findings'];
    readonly names: FileLeaves['names'];
  };
  return {
    file,
    rows: recipes.map(({ row }) => row),
    leaves: recipes.map(({ leaf, facts }) => ({ facts, ...leaf })),
    findings,
    names,
  };
}
