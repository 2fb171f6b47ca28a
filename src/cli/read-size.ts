import { sizeNamed } from '../stock/sizes.js';
import type { Size } from '../recipe/recipe.js';
import { readLength } from './read-length.js';

/** A size as an argument (`5x7in`, `5 1/2 x 8 1/2 in`, `A6`), in mm; null: it is none. A side without a unit has the other's. */
export function readSize(text: string): Size | null {
  const named = sizeNamed(text.trim());
  if (named) return { width: named.long, height: named.short };
  const sides = text.split(/\s*[x×]\s*/);
  const [first = '', second = ''] = sides;
  const height = readLength(second);
  const width = readLength(first) ?? readLength(`${first} ${unitOf(second)}`);
  return sides.length === 2 && width !== null && height !== null && width > 0 && height > 0
    ? { width, height }
    : null;
}

const unitOf = (text: string): string => /[a-z"″]+\s*$/.exec(text)?.[0] ?? '';
