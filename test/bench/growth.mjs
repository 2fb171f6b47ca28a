// Texts that parsers choke on, at a size and at twice the size: what is linear takes twice as long.
import { medianOf, table } from './measure.mjs';
import { compileText } from './throughput.mjs';

const SIZE = 200_000;
const fill = (part, size) => part.repeat(Math.floor(size / part.length));

const FAMILIES = [
  ['digits before a point', (size) => `let a = ${fill('1', size)}.`],
  ['digits and strokes', (size) => `let a = ${fill('1/', size)}`],
  ['words joined by hyphens', (size) => `let a = b${fill('-b', size)}`],
  ['quotes', (size) => `style s { title: ${fill('"', size)} }`],
  ['backslashes', (size) => `style s { title: "${fill('\\', size)} }`],
  ['brackets', (size) => `let a = ${fill('(', size)}`],
  ['braces', (size) => fill('{', size)],
  ['commas', (size) => `style s { tags: ${fill(',', size)} }`],
  ['one long line of entries', (size) => `style s { ${fill('a=1 ', size)} }`],
  ['one long list', (size) => `style s { tags: ${fill('a, ', size)} }`],
  ['one long comment', (size) => `# ${fill('x', size)}`],
  ['blocks left open', (size) => fill('envelope a {\n', size)],
  ['blocks inside a block', (size) => `style a {\n${fill('envelope b { }\n', size)}}`],
  ['spaces before a fraction', (size) => `let a = 1${fill(' ', size)}1/2`],
  ['numbers with spaces', (size) => `let a = ${fill('1 ', size)}`],
  ['carriage returns', (size) => fill('\r', size)],
  ['no-break spaces', (size) => fill('\u00a0', size)],
  ['spaces of no width in a word', (size) => fill('a\u200b', size)],
  ['comments of elsewhere, never ended', (size) => fill('/*', size)],
  ['lines of back quotes', (size) => fill('```\n', size)],
  ['feet', (size) => fill("5'", size)],
  ['names with capitals', (size) => fill('let A = B\n', size)],
  ['names alike', (size) => fill('let a = 1\n', size)],
  ['lines that mean nothing', (size) => fill('@\n', size)],
  ['a chain of lets', (size) => `let a0 = 1\n${Array.from({ length: size / 20 }, (_, i) => `let a${i + 1} = a${i}\n`).join('')}`],
];

export function growth() {
  const rows = FAMILIES.map(([name, text]) => {
    const [once, twice] = [SIZE, 2 * SIZE].map((size) => medianOf(5, () => compileText(text(size))));
    return [name, once.toFixed(1), twice.toFixed(1), `${(twice / once).toFixed(1)} x`];
  });
  const slips = (count) => medianOf(5, () => compileText(`units mm\n${'let a 5,5\n'.repeat(count)}`));
  const [half, all] = [slips(250), slips(500)];
  rows.push(['250 and 500 lines of two slips', half.toFixed(1), all.toFixed(1), `${(all / half).toFixed(1)} x`]);
  table([`compile, median of 5`, `${SIZE / 1000} kB, ms`, `${(2 * SIZE) / 1000} kB, ms`, 'growth'], rows);
}
