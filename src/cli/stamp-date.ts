/** The day that files are stamped with when nobody states one: the same input gives the same bytes. */
export const FIXED_DAY = new Date(Date.UTC(2000, 0, 1));

/** The date that SOURCE_DATE_EPOCH states, in whole seconds since 1970; null: it states none that can be. */
export function stampDate(epoch: string | undefined): Date | null {
  if (epoch === undefined || epoch === '') return FIXED_DAY;
  const date = new Date(/^\d+$/.test(epoch) ? Number(epoch) * 1000 : Number.NaN);
  return date.getUTCFullYear() <= 9999 ? date : null;
}
