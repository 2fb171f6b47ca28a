import type { Label } from '../../diagnostics/diagnostic.js';
import { type Span, spanText } from '../../text/span.js';
import type { Place } from '../place.js';
import { quote } from '../quote.js';

/** Where a value comes from, if what stands at `at` is the name of a let; nothing otherwise. */
export function letLabel(at: Span, { context, file }: Place): readonly Label[] {
  const declaration = context.names.find(spanText(at), file);
  if (declaration?.kind !== 'let' || declaration.node.value === null) return [];
  return [{ span: declaration.node.value.span, text: `what ${quote(at)} stands for` }];
}
