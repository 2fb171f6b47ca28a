/**
 * Numeric noise, in whatever unit is at hand (mm, mm², g): differences below it come from arithmetic, not from paper.
 * The other two slacks are the ruler's `step` (what can be read) and the hand's `tolerance` (what can be held).
 */
export const NEARLY = 1e-6;

/** Whether two lengths are the same but for numeric noise. */
export const sameLength = (one: number, other: number): boolean => Math.abs(one - other) <= NEARLY;

/** Whether `length` fits into `room`, numeric noise forgiven. */
export const fits = (length: number, room: number): boolean => length <= room + NEARLY;
