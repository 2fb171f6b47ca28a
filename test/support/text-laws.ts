import { parse } from '../../grammar/parser.js';
import { source } from '../../src/text/source.js';
import { brokenPromises } from './broken-promises.js';
import { compareTexts, unchecked } from './compare.js';
import { type Beside, compileText } from './compile-text.js';
import { formatted, LAYOUT_LAWS, losesNothing, withoutWhiteSpace } from './layout-laws.js';
import { specFiles } from './specs.js';
import { TREE_LAWS } from './tree-laws.js';

/** Every law of a text from parsing to findings that it breaks, by name; an exception is one too, by its message. */
export const brokenTextLaws = (text: string): readonly string[] =>
  [ofTree, ofLayout, ofChecking].flatMap((lawsOf) => {
    try {
      return lawsOf(text);
    } catch (error) {
      return [thrown(error)];
    }
  });

/** An exception, and where it came from: two of one kind are one. */
export function thrown(error: unknown): string {
  if (!(error instanceof Error)) return `throws ${String(error)}`;
  const [place = ''] = /\bat [\w.]+/.exec(error.stack ?? '') ?? [];
  return `throws ${error.name}: ${error.message.split('\n')[0]} ${place}`.trim();
}

const read = (text: string) => parse(source('recipe.plica', text));

const ofTree = (text: string): readonly string[] => {
  const parsed = read(text);
  return Object.entries(TREE_LAWS).flatMap(([law, against]) => (against(parsed).length > 0 ? [law] : []));
};

const ofLayout = (text: string): readonly string[] => {
  if (read(text).diagnostics.length > 0) return losesNothing(text) ? [] : ['no character is lost'];
  const broken = Object.entries(LAYOUT_LAWS).flatMap(([law, holds]) => (holds(text) ? [] : [law]));
  const { changes, shared } = compareTexts(text, formatted(text), unchecked);
  const [before, after] = [foundIn(text), foundIn(formatted(text))];
  return [
    ...broken,
    ...(changes.length + shared.length === 0 ? [] : ['another layout is no change']),
    ...(before === after ? [] : ['in another layout the same is found']),
  ];
};

/** What is said of a text, without white space: that of the text itself is quoted. */
const foundIn = (text: string): string =>
  withoutWhiteSpace(
    compileText(text, besideOf(text))
      .diagnostics.map(({ problem, message, help }) => `${problem.name}: ${message}: ${help}`)
      .join('\n'),
  );

const ofChecking = (text: string): readonly string[] => brokenPromises(text, besideOf(text));

/** Under the first name any statement may stand. */
const besideOf = (text: string): Beside => ({
  name: /^\s*catalogue\b/m.test(text) ? 'catalogue.plica' : 'recipe.plica',
  files: specFiles,
});
