import { lineText, type Position, position, type Source } from '../text/source.js';
import { visible } from '../text/visible.js';
import { columns } from '../text/width.js';
import type { Diagnostic, Label, Severity } from './diagnostic.js';

/** How the parts of a finding are set off from each other. */
export interface Palette extends Readonly<Record<Severity, (text: string) => string>> {
  readonly strong: (text: string) => string;
  readonly faint: (text: string) => string;
}

const asItIs = (text: string): string => text;

export const plain: Palette = { error: asItIs, warning: asItIs, note: asItIs, strong: asItIs, faint: asItIs };

/** Longest stretch of a line that is shown, in UTF-16 units. */
const longestShown = 120;
const tabStop = 4;

/**
 * The findings for people: sentence, place, the lines in question with what there is to say about them, why and help;
 * at the end how many there were. Characters that could move a cursor or turn a line round are spelled out.
 */
export function renderText(diagnostics: readonly Diagnostic[], palette: Palette = plain): string {
  if (diagnostics.length === 0) return '';
  return `${diagnostics.map((diagnostic) => renderOne(diagnostic, palette)).join('\n')}\n${count(diagnostics)}\n`;
}

/** `3 errors, 1 warning` */
export function count(diagnostics: readonly Diagnostic[]): string {
  const severities: readonly Severity[] = ['error', 'warning', 'note'];
  return severities
    .map((severity) => [diagnostics.filter((found) => found.severity === severity).length, severity] as const)
    .filter(([number]) => number > 0)
    .map(([number, severity]) => `${number} ${severity}${number === 1 ? '' : 's'}`)
    .join(', ');
}

function renderOne(diagnostic: Diagnostic, palette: Palette): string {
  const { problem, severity, message, primary, related, why, help } = diagnostic;
  const frames = framesOf(primary, related);
  const gutter = Math.max(...frames.flatMap(({ lines }) => lines.map(({ line }) => String(line).length)));
  const margin = ' '.repeat(gutter + 1);
  const bar = palette.faint('|');
  const rows = [
    `${palette[severity](`${severity}[${problem.name}]`)}${palette.strong(`: ${visible(message)}`)}`,
  ];
  for (const [index, frame] of frames.entries()) {
    const { line, column } = frame.at;
    const arrow = palette.faint(index === 0 ? '-->' : ':::');
    rows.push(`${margin}${arrow} ${visible(frame.source.name)}:${line}:${column}`, margin + bar);
    for (const [place, shown] of frame.lines.entries()) {
      const above = frame.lines[place - 1];
      if (above !== undefined && above.line + 1 < shown.line) rows.push(palette.faint('...'));
      rows.push(...renderLine(frame.source, shown, severity, gutter, palette));
    }
    rows.push(margin + bar);
  }
  if (why !== null) rows.push(`${margin}${palette.faint('=')} ${palette.strong('why:')}  ${visible(why)}`);
  if (help !== null) rows.push(`${margin}${palette.faint('=')} ${palette.strong('help:')} ${visible(help)}`);
  return `${rows.join('\n')}\n`;
}

interface Mark {
  readonly label: Label;
  readonly primary: boolean;
  readonly start: Position;
}

interface MarkedLine {
  readonly line: number;
  readonly marks: readonly Mark[];
}

/** The lines of one source that a finding points at. */
interface Frame {
  readonly source: Source;
  readonly at: Position;
  readonly lines: readonly MarkedLine[];
}

/** The primary label's source first. */
function framesOf(primary: Label, related: readonly Label[]): readonly Frame[] {
  const marks: Mark[] = [primary, ...related].map((label, index) => ({
    label,
    primary: index === 0,
    start: position(label.span.source, label.span.start),
  }));
  const sources = [...new Set(marks.map(({ label }) => label.span.source))];
  return sources.map((source) => {
    const here = marks.filter(({ label }) => label.span.source === source);
    const lines = [...new Set(here.map(({ start }) => start.line))].sort((a, b) => a - b);
    return {
      source,
      at: (here[0] as Mark).start,
      lines: lines.map((line) => ({
        line,
        marks: here
          .filter(({ start }) => start.line === line)
          .sort((a, b) => a.label.span.start - b.label.span.start),
      })),
    };
  });
}

/** A line of the text, and under it a row for each thing to say about it. */
function renderLine(
  source: Source,
  { line, marks }: MarkedLine,
  severity: Severity,
  gutter: number,
  palette: Palette,
): string[] {
  const begin = source.lineStarts[line - 1] ?? 0;
  const text = lineText(source, line);
  const cells = cellsAbout(text, (marks[0] as Mark).label.span.start - begin);
  const bar = palette.faint('|');
  const shown = cells.map((cell) => cell.shown).join('');
  const rows = [`${palette.faint(String(line).padStart(gutter))} ${bar} ${shown}`.trimEnd()];
  for (const { label, primary } of marks) {
    const from = columnOf(cells, label.span.start - begin);
    const to = columnOf(cells, Math.min(label.span.end - begin, text.length));
    const sign = (primary ? '^' : '-').repeat(Math.max(1, to - from));
    const words = label.text === '' ? sign : `${sign} ${visible(label.text)}`;
    const paint = primary ? palette[severity] : palette.strong;
    rows.push(`${' '.repeat(gutter + 1)}${bar} ${' '.repeat(from)}${paint(words)}`);
  }
  return rows;
}

/** A character of a line as it is shown: where it stands in the line, and the columns it takes. */
interface Cell {
  readonly shown: string;
  readonly offset: number;
  readonly width: number;
}

/** A line as it is shown; of a very long one, the stretch about an offset. */
function cellsAbout(text: string, focus: number): readonly Cell[] {
  if (text.length <= longestShown) return cellsOf(text, 0);
  const from = wholeCharacter(
    text,
    Math.max(0, Math.min(focus - longestShown / 3, text.length - longestShown)),
  );
  const to = wholeCharacter(text, Math.min(text.length, from + longestShown));
  const more = { shown: '…', width: 1 };
  return [
    ...(from > 0 ? [{ ...more, offset: from - 1 }] : []),
    ...cellsOf(text.slice(from, to), from),
    ...(to < text.length ? [{ ...more, offset: to }] : []),
  ];
}

function cellsOf(text: string, from: number): readonly Cell[] {
  const cells: Cell[] = [];
  let offset = from;
  let column = 0;
  for (const character of text) {
    const shown = character === '\t' ? ' '.repeat(tabStop - (column % tabStop)) : visible(character);
    const width = shown === character ? columns(character) : shown.length;
    cells.push({ shown, offset, width });
    offset += character.length;
    column += width;
  }
  return cells;
}

/** The offset, or the one before it when it would cut a pair of surrogates. */
function wholeCharacter(text: string, offset: number): number {
  const at = Math.floor(offset);
  return /[\udc00-\udfff]/.test(text[at] ?? '') ? at - 1 : at;
}

/** The column, from 0, at which the character with this offset is shown. */
function columnOf(cells: readonly Cell[], offset: number): number {
  let column = 0;
  for (const cell of cells) {
    if (cell.offset >= offset) break;
    column += cell.width;
  }
  return column;
}
