import { expect, test } from 'vitest';
import { fileStem } from '../../src/text/file-stem.js';
import { plica } from '../support/command-line.js';

/*
 * Device names: the documentation of the Win32 file system on naming files, from memory. Capitals are no matter, since a
 * declared name has none.
 */
test('a name that one system keeps for a device makes files that every system takes', () => {
  expect(['con', 'prn', 'aux', 'nul', 'com1', 'lpt9'].map(fileStem)).toEqual([
    'con_',
    'prn_',
    'aux_',
    'nul_',
    'com1_',
    'lpt9_',
  ]);
  expect(['tide', 'con-tide', 'com', 'com10', 'auxiliary'].map(fileStem)).toEqual([
    'tide',
    'con-tide',
    'com',
    'com10',
    'auxiliary',
  ]);
});

const AUX =
  'units in\n\npaper kraft {\n  sheet: 12 x 12\n}\n\nenvelope aux {\n  card: 4 x 6\n  paper: kraft\n}\n\nbatch nul {\n  make: aux 2\n}\n';

test.each([
  ['build a.plica --emit svg --out out', /aux_\.svg/],
  ['plan a.plica --out out', /nul_\.plan\.csv/],
  ['new lpt1', /lpt1_\.plica/],
])('plica %s', async (line, said) => {
  const { code, out, err, files } = await plica(line, { files: { 'a.plica': AUX } });
  expect({ code, said: out + err }).toEqual({ code: 0, said: expect.stringMatching(/^wrote/) });
  expect([...files.keys()].join(' ')).toMatch(said);
});
