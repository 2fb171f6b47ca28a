import { expect, test } from 'vitest';
import { depfile } from '../../src/cli/depfile.js';
import { plica, SOUND } from '../support/command-line.js';

const text = (bytes: Uint8Array | undefined): string => Buffer.from(bytes ?? []).toString();

const PAPERS = 'units in\npaper kraft { sheet: 12 x 12 }\n';
const USING = `${SOUND.replace('\n\n', '\n\nuse "../papers.plica"\n\n')}`;

test('what was written depends on what was read, used files too, each with an empty rule for make', async () => {
  const { code, files } = await plica(
    'build specs/half.plica --out out --emit svg,steps --depfile out/half.d',
    {
      files: { 'specs/half.plica': USING, 'papers.plica': PAPERS, 'catalogue.plica': '' },
    },
  );
  expect(code).toBe(0);
  expect(text(files.get('/studio/out/half.d'))).toBe(
    [
      'out/half-letter.steps.svg out/half-letter.svg: papers.plica specs/half.plica',
      'papers.plica:',
      'specs/half.plica:',
      '',
    ].join('\n'),
  );
});

test('where an envelope has an error, what was written down before stays', async () => {
  const { code, files } = await plica('build a.plica --out out --depfile a.d', {
    files: {
      'a.plica': 'units in\nenvelope gaping {\n  card: 8 1/2 x 5 1/2\n  blank: 10\n}\n',
      'a.d': 'as it was',
    },
  });
  expect(code).toBe(1);
  expect(text(files.get('/studio/a.d'))).toBe('as it was');
});

// How make and ninja spell names: the manual of each, tried with GNU Make 4.3 and Ninja 1.11.1.
test.each([
  ['tide tables.plica', 'tide\\ tables.plica'],
  ['tide#1.plica', 'tide\\#1.plica'],
  ['$tide.plica', '$$tide.plica'],
  ['c:tide.plica', 'c\\:tide.plica'],
  ['100%.plica', '100%.plica'],
])('a name with signs: %s', (name, spelled) => {
  expect(depfile(['out'], [name], '/studio')).toEqual({ text: `out: ${spelled}\n${spelled}:\n` });
});

test.each(['a=b', 'a;b', 'a*b', 'a\nb', 'a|b', '~a'])(
  'a name that the two read differently is refused: %j',
  (name) => {
    expect(depfile(['out'], [name], '/studio')).toContain(
      'has a sign in its name that make and ninja do not read alike',
    );
  },
);

test('paths are told from the working folder, where they lie in it', () => {
  expect(depfile(['/studio/out/a.svg'], ['/studio/a.plica', '/elsewhere/b.plica'], '/studio')).toEqual({
    text: 'out/a.svg: /elsewhere/b.plica a.plica\n/elsewhere/b.plica:\na.plica:\n',
  });
});
