/** A number with a fixed count of decimals, half away from zero, never `-0`: `12.50`, `-0.3`, `0.0`. */
export function printNumber(value: number, decimals: number): string {
  const text = (value + Math.sign(value) * Math.abs(value) * FLOATING_NOISE).toFixed(decimals);
  return /^-0(\.0+)?$/.test(text) ? text.slice(1) : text;
}

/** The same without needless zeros: `12.5`, `-0.3`, `0`. */
export function printShort(value: number, decimals: number): string {
  const text = printNumber(value, decimals);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** Lifts 285.74999999999997 back to the 285.75 that was meant, so that it prints as 285.8. */
const FLOATING_NOISE = 1e-12;
