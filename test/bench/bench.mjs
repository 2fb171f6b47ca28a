// Times the built program and library side by side with others. Prints medians and ratios; asserts nothing.
// `npm run bench` builds first.
import { catalogue } from './catalogue.mjs';
import { coldStart } from './cold-start.mjs';
import { differences } from './differences.mjs';
import { growth } from './growth.mjs';
import { envelopes, throughput } from './throughput.mjs';

console.log(`Node ${process.version}, ${process.platform} ${process.arch}\n`);
coldStart();
throughput();
envelopes();
growth();
await differences();
await catalogue();
