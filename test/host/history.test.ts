import { expect, test } from 'vitest';
import type { Host } from '../../src/host/host.js';
import { history } from '../../src/host/history.js';
import { nodeHost } from '../../src/host/node-host.js';
import { revisionView } from '../../src/host/revision-view.js';
import { textAt } from '../support/read-at.js';
import { dayText, scratchRepository } from '../support/repository.js';

/** Long enough that a change of a line leaves the file alike. */
const recipe = (card: string): string =>
  `units mm\n\n# ${'The tide tables of the island, one for each half of a year. '.repeat(4)}\n\nenvelope tide {\n  card: ${card}\n}\n`;

/** The steps of a file, which must be there. */
function stepsOf(host: Host, path: string) {
  const found = history(host, path);
  if (found.kind === 'trouble') throw new Error(found.reason);
  return found.steps;
}

const summary = (host: Host, path: string) => stepsOf(host, path).map((step) => [step.subject, step.path]);

test('the commits that changed recipes, newest first, with the name that the file had in each', () => {
  const repository = scratchRepository();
  const first = repository.commit('Before it', { 'other.plica': '' });
  const second = repository.commit('It comes', { 'tide.plica': recipe('A6') });
  repository.commit('A note', { 'notes.txt': 'no recipe' });
  repository.put({ 'cards/"the\ttide"\n.plica': recipe('A6'), 'tide.plica': null });
  const fourth = repository.commit('Moved');
  const fifth = repository.commit('A style changed', { 'other.plica': 'units mm\n' });
  repository.put({ 'cards/"the\ttide"\n.plica': null, 'Flut.plica': recipe('A5') });
  const sixth = repository.commit('Renamed and changed');
  const expected = [
    { hash: sixth, parents: [fifth], subject: 'Renamed and changed', path: 'Flut.plica', day: 6 },
    { hash: fifth, parents: [fourth], subject: 'A style changed', path: 'cards/"the\ttide"\n.plica', day: 5 },
    { hash: fourth, parents: [second], subject: 'Moved', path: 'cards/"the\ttide"\n.plica', day: 4 },
    { hash: second, parents: [first], subject: 'It comes', path: 'tide.plica', day: 2 },
  ].map(({ day, ...step }) => ({ ...step, date: `${dayText(day)}T12:00:00+00:00` }));
  expect(stepsOf(repository.host(), 'Flut.plica')).toEqual(expected);
  repository.put({ 'cards/x': '' });
  expect(stepsOf(repository.host('cards'), '../Flut.plica')).toEqual(expected);
  expect(stepsOf(repository.host(), 'never.plica')).toEqual([]);
  for (const { hash, path } of expected) {
    const seen = revisionView(repository.host(), hash);
    expect(seen.kind === 'view' && textAt(seen.host, path)).toMatch(/^units mm/);
  }
});

test('over a merge, the name is followed on each side', () => {
  const repository = scratchRepository();
  const { git, commit } = repository;
  const base = commit('Base', { 'tide.plica': recipe('A6') });
  git('checkout', '--quiet', '-b', 'side');
  const side = commit('Side', { 'tide.plica': recipe('A6').replace('units mm', 'units in') });
  git('checkout', '--quiet', 'main');
  const moved = commit('Moved', { 'tide.plica': null, 'flood.plica': recipe('A6') });
  git('merge', '--quiet', '--no-edit', '-m', 'Both', 'side');
  const both = git('rev-parse', 'HEAD');
  // Told to follow one file, git leaves merges out.
  git('config', 'log.follow', 'true');
  const steps = stepsOf(repository.host(), 'flood.plica');
  expect(steps[0]?.parents).toEqual([moved, side]);
  expect(steps.map(({ hash, path }) => [hash, path])).toEqual([
    [both, 'flood.plica'],
    [moved, 'flood.plica'],
    [side, 'tide.plica'],
    [base, 'tide.plica'],
  ]);
});

test.each([
  'ordinary',
  '--help',
  '\u001b[2J cleared',
  'M',
  'R100',
  'f'.repeat(40),
  'Übergröße, 潮汐',
  '$(touch stolen) `touch stolen`',
  '%H%x00%s',
  '"quoted" | piped\t|',
])('the subject %j comes as it was written', (subject) => {
  const repository = scratchRepository();
  repository.commit(subject, { 'a.plica': '' });
  repository.commit('Second', { 'a.plica': 'units mm\n' });
  expect(summary(repository.host(), 'a.plica')).toEqual([
    ['Second', 'a.plica'],
    [subject, 'a.plica'],
  ]);
});

test('settings make no difference', () => {
  const repository = scratchRepository();
  const { commit, git, host } = repository;
  commit('Die Flut: Übergröße', { 'deep/a.plica': recipe('A6'), 'A.PLICA': '' });
  commit('Moved', { 'deep/a.plica': null, 'deep/b.plica': recipe('A6') });
  commit('No recipe', { 'A.PLICA': 'a' });
  const found = () => [summary(host(), 'deep/b.plica'), summary(host('deep'), 'b.plica')];
  const expected = [
    ['Moved', 'deep/b.plica'],
    ['Die Flut: Übergröße', 'deep/a.plica'],
  ];
  expect(found()).toEqual([expected, expected]);
  const settings = {
    'diff.relative': 'true',
    'diff.renames': 'false',
    'log.showRoot': 'false',
    'log.follow': 'true',
    'log.diffMerges': 'separate',
    'log.decorate': 'full',
    'color.ui': 'always',
    'format.pretty': 'raw',
    'i18n.logOutputEncoding': 'latin1',
    'core.quotePath': 'true',
  };
  for (const [name, value] of Object.entries(settings)) git('config', name, value);
  expect(found()).toEqual([expected, expected]);
  for (const name of ['LITERAL', 'GLOB', 'NOGLOB', 'ICASE']) {
    const env = { ...host().env, [`GIT_${name}_PATHSPECS`]: '1' };
    expect(summary(nodeHost(repository.top, env), 'deep/b.plica')).toEqual(expected);
  }
});

test('what has no history is said', () => {
  const repository = scratchRepository();
  expect(history(repository.host(), 'a.plica')).toEqual({
    kind: 'trouble',
    reason: 'nothing has been committed here yet',
  });
  repository.commit('One', { 'a.plica': '' });
  expect(history(repository.host(), '/a\n.plica')).toEqual({
    kind: 'trouble',
    reason: '/a .plica: it is not in this repository',
  });
  expect(history(repository.host(), 'a.plica', '--all')).toMatchObject({ kind: 'trouble' });
});
