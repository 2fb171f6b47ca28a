// Times the built program and library side by side with others. Prints medians and ratios, and puts them into the README;
// asserts nothing. `npm run bench` builds first.
import { readFileSync, writeFileSync } from 'node:fs';
import { catalogue } from './catalogue.mjs';
import { coldStart } from './cold-start.mjs';
import { differences } from './differences.mjs';
import { folder } from './folder.mjs';
import { growth } from './growth.mjs';
import { printed } from './measure.mjs';
import { envelopes, throughput } from './throughput.mjs';

const on = `Node ${process.version}, ${process.platform} ${process.arch}`;
console.log(`${on}\n`);
coldStart();
throughput();
envelopes();
folder();
await differences();
await catalogue();
intoReadme();
growth();

/** All tables so far, in place of those of the last time. */
function intoReadme() {
  const [before, , after] = readFileSync('README.md', 'utf8').split(/(?<=<!-- bench -->\n)(.*?)(?=<!-- \/bench -->)/s);
  writeFileSync('README.md', `${before}\n${on}:\n\n${printed.join('\n\n')}\n\n${after}`);
}
