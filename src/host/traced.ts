import type { Host } from './host.js';

/** A machine that remembers what it was asked of its disk, and what it answered. */
export interface Traced {
  readonly host: Host;
  /** Whether another machine gives the same answers, so that whoever asked would come to the same there. */
  readonly isSameOn: (other: Host) => boolean;
}

export function traced(host: Host): Traced {
  const asked: ((other: Host) => boolean)[] = [];
  const noted = <Answer>(ask: (host: Host) => Answer): Answer => {
    const answer = ask(host);
    asked.push((other) => isSame(answer, ask(other)));
    return answer;
  };
  return {
    host: {
      ...host,
      kind: (path) => noted(({ kind }) => kind(path)),
      realPath: (path) => noted(({ realPath }) => realPath(path)),
      read: (path, most) => noted(({ read }) => read(path, most)),
    },
    isSameOn: (other) => asked.every((isSameAnswer) => isSameAnswer(other)),
  };
}

/** Bytes are the same only where they are one: views that share their contents hand out one for each. */
function isSame(one: unknown, other: unknown): boolean {
  if (!isObject(one) || !isObject(other)) return one === other;
  return Object.keys(one).every((key) => one[key] === other[key]);
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
