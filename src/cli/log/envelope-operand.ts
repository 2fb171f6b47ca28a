import type { Host } from '../../host/host.js';

/** An envelope as an operand names it: `PATH#NAME`, or one of the two. */
export interface EnvelopeOperand {
  readonly path: string | null;
  readonly name: string | null;
}

/** The last `#` parts a path from a name; a file's name that holds one is not taken apart. */
export function envelopeOperand(operand: string, host: Host): EnvelopeOperand {
  if (operand.endsWith('.plica') || host.kind(operand) !== 'missing') return { path: operand, name: null };
  const at = operand.lastIndexOf('#');
  return { path: operand.slice(0, Math.max(0, at)) || null, name: operand.slice(at + 1) || null };
}
