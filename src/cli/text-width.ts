import type { Outlet } from '../host/host.js';

/** Lines longer than this are hard to read, however wide the terminal. */
const WIDEST = 96;
const USUAL = 80;

/** How wide prose and tables are set on a stream, in characters. */
export const textWidth = (outlet: Outlet): number => Math.min(outlet.columns() ?? USUAL, WIDEST);
