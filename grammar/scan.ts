import { makeToken, type Token } from './token.js';
import { Comment, type Scanned, Space, Stray, scanned } from './tokens.js';

export interface Tokens {
  readonly tokens: readonly Token[];
  readonly comments: readonly Token[];
}

/**
 * Cuts a text into tokens, comments apart and spaces left out; what begins no token becomes a stray, a run of it one.
 * (The parser library has a scanner, but building it takes as long as reading ten recipes.)
 */
export function scan(text: string): Tokens {
  const tokens: Token[] = [];
  const comments: Token[] = [];
  let offset = 0;
  let stray = 0;
  while (offset < text.length) {
    const found = match(text, offset);
    if (found === undefined) {
      offset++;
      continue;
    }
    if (stray < offset) tokens.push(makeToken(Stray, text.slice(stray, offset), stray));
    const end = found.pattern.lastIndex;
    if (found.type !== Space) {
      const token = makeToken(found.type, text.slice(offset, end), offset);
      (found.type === Comment ? comments : tokens).push(token);
    }
    offset = end;
    stray = end;
  }
  if (stray < offset) tokens.push(makeToken(Stray, text.slice(stray), stray));
  return { tokens, comments };
}

/** The first kind of token that is found here; its pattern then knows where it ends. */
function match(text: string, offset: number): Scanned | undefined {
  byFirst ??= tableByFirst();
  for (const candidate of byFirst.get(text.charCodeAt(offset)) ?? []) {
    candidate.pattern.lastIndex = offset;
    if (candidate.pattern.test(text)) return candidate;
  }
  return undefined;
}

/** By the character they begin with; built at the first need, once. */
let byFirst: ReadonlyMap<number, readonly Scanned[]> | undefined;

function tableByFirst(): ReadonlyMap<number, readonly Scanned[]> {
  const table = new Map<number, Scanned[]>();
  for (const entry of scanned) {
    for (const character of entry.first) {
      const code = character.charCodeAt(0);
      const entries = table.get(code);
      if (entries === undefined) table.set(code, [entry]);
      else entries.push(entry);
    }
  }
  return table;
}
