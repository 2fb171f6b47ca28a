import { sameLength } from '../measure/slack.js';

/** Whether two values of plain data are the same but for numeric noise in their numbers. */
export function sameValue(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number') return sameLength(one, other);
  if (!isObject(one) || !isObject(other)) return one === other;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && sameValue(one[key], other[key]))
  );
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
