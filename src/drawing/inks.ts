/** A colour, for screens (sRGB, `#rrggbb`) and for presses (cyan, magenta, yellow, black in per cent). */
export interface Ink {
  readonly screen: string;
  readonly press: readonly [cyan: number, magenta: number, yellow: number, black: number];
}

const ink = (screen: string, ...press: Ink['press']): Ink => ({ screen, press });

/**
 * Colours that readers with any kind of colour vision tell apart (B. Wong, "Points of view: Color blindness", Nature
 * Methods 8, 441, 2011; both columns of its figures from memory), and two surfaces of paper.
 */
export const INKS = {
  black: ink('#000000', 0, 0, 0, 100),
  blue: ink('#0072b2', 100, 50, 0, 0),
  green: ink('#009e73', 97, 0, 75, 0),
  vermilion: ink('#d55e00', 0, 80, 100, 0),
  orange: ink('#e69f00', 0, 50, 100, 0),
  purple: ink('#cc79a7', 10, 70, 0, 0),
  shade: ink('#e4e4e4', 0, 0, 0, 12),
  paper: ink('#ffffff', 0, 0, 0, 0),
} as const;
