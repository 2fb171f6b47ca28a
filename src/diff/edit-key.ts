import type { WrittenChange, WrittenValue } from './difference.js';

/** The same text for all changes that come from one edit: of one property, in the same places. */
export const editKey = ({ property, before, after }: WrittenChange): string =>
  [property, ...[before, after].map(standsAt)].join(' ');

const standsAt = (value: WrittenValue | null): string =>
  value ? `${value.span.source.name} ${value.span.start}` : 'nowhere';
