/** The line end of a text that comes first: LF, CRLF or a lone CR; undefined: it has one line. */
export const firstLineEnd = (text: string): string | undefined => /\r\n|\r|\n/.exec(text)?.[0];

/** How many lines end between two offsets. */
export const lineEnds = (text: string, start: number, end: number): number =>
  text.slice(start, end).match(/\r\n|\r|\n/g)?.length ?? 0;

export const withoutWhiteSpace = (text: string): string => text.replace(/[ \t\r\n]+/g, '');
