import type { Palette } from '../../diagnostics/render-text.js';
import { figureRows } from '../../diff/figure-rows.js';
import { mainFigures } from '../../diff/main-figures.js';
import { chapterLines } from '../../diff/render-text.js';
import { type Chapter, report, rulerOf } from '../../diff/report.js';
import type { EnvelopeChange, Recipe } from '../../diff/difference.js';
import { visible } from '../../text/visible.js';
import { columnsOf } from '../../text/width.js';
import { wrap } from '../../text/wrap.js';
import type { Told } from './told.js';

/** What became of an envelope at a moment, for people. Lines of at most `width` columns. */
export function logText(told: Told, palette: Palette, width: number): string {
  const page = { palette, width: width - INDENT.length };
  const lines = chapterLines(chapterOf(told), page).map((line) => INDENT + line);
  return `${[...headLines(told, palette, width), ...lines].join('\n')}\n`;
}

const INDENT = '  ';
const GAP = '  ';

/** `2024-03-01  1a2b3c4d  Wider seams`; what is longer hangs beneath. */
function headLines({ point: { commit } }: Told, palette: Palette, width: number): readonly string[] {
  if (commit === null) return [palette.strong('not committed yet')];
  const [date, hash] = [commit.date.slice(0, 'YYYY-MM-DD'.length), commit.hash.slice(0, SHORT)];
  const indent = date.length + hash.length + 2 * GAP.length;
  const [first = '', ...others] = wrap(
    visible(commit.subject),
    Math.max(width - indent, NARROWEST),
    columnsOf,
  );
  return [
    `${date}${GAP}${palette.note(hash)}${GAP}${palette.strong(first)}`.trimEnd(),
    ...others.map((line) => ' '.repeat(indent) + palette.strong(line)),
  ];
}

/** A hash is shown by so many letters of it. */
const SHORT = 8;
/** A subject is never set narrower, however narrow the terminal. */
const NARROWEST = 20;

function chapterOf({ change, isFirst, isCutOff }: Told): Chapter {
  if (change.kind === 'hidden') {
    const { name, reason } = change;
    return {
      ...chapter({ kind: 'unreadable', name, side: 'after' }),
      words: `It could not be read at this point: ${reason}.`,
    };
  }
  if (change.kind !== 'added') return chapter(change);
  const since = isCutOff ? CUT_OFF : isFirst ? 'First stated' : 'Stated again';
  return { ...chapter(change), words: `${since}: ${figuresOf(change.after)}.` };
}

const CUT_OFF = 'As far back as this shallow clone goes';

const chapter = (change: EnvelopeChange): Chapter =>
  report({ changes: [change], shared: [] }).envelopes[0] as Chapter;

/** `blank 11 1/4 in; side mark 5 1/16 in; …` */
const figuresOf = (recipe: Recipe): string =>
  figureRows(mainFigures(recipe), rulerOf(recipe))
    .map(({ words, after }) => `${words} ${after}`)
    .join('; ');
