import { expect, test } from 'vitest';
import { nearPaths } from '../../src/cli/near-paths.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { SOUND } from '../support/command-line.js';

const host = memoryHost({
  files: {
    'ebb.plica': SOUND,
    'ebb/flood.plica': SOUND,
    'drawer/spring.plica': SOUND,
    'neap.plica/a.plica': SOUND,
    'ebb.txt': '',
  },
});

test.each([
  ['without its ending', 'drawer/spring', ['drawer/spring.plica']],
  ['with another ending', 'ebb.plcia', ['ebb.plica']],
  ['a slip in it', 'drawer/sprign.plica', ['drawer/spring.plica']],
  ['a folder', 'drawr', ['drawer']],
  ['a recipe before a folder of that name', 'eb', ['ebb.plica']],
  ['a folder that is named as a recipe', 'naep.plica', []],
  ['a folder that is named as a recipe, in full', 'neap.plca', ['neap.plica']],
  ['nothing like it', 'moon', []],
  ['in a folder that is not there', 'shelf/ebb.plica', []],
])('%s: %s', (_, path, near) => {
  expect(nearPaths(host, path)).toEqual(near);
});
