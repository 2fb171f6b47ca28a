/** The units a file may declare with `units`; an envelope's lengths are shown in them. */
export type Units = 'mm' | 'cm' | 'in';
