import type { Piece } from '../page.js';
import type { Element, Tags } from './tags.js';

type Chapter = Extract<Piece, { readonly kind: 'chapter' }>;

/** Chapters as they come: in the structure at once, in the outline with the page on which they begin. */
export interface Chapters {
  readonly begin: (chapter: Chapter) => void;
  /** Called with each page begun; the destinations of the chapters that begin there. */
  readonly beginOnPage: () => readonly string[];
  /** The element in which content now stands. */
  readonly current: () => Element;
  readonly endAll: () => void;
}

export function outlineOf(pdf: PDFKit.PDFDocument, tags: Tags): Chapters {
  const open: { readonly level: number; readonly element: Element }[] = [];
  let waiting: Chapter[] = [];
  let within = pdf.outline;
  const current = (): Element => open.at(-1)?.element ?? tags.document;
  const endDownTo = (level: number): void => {
    while ((open.at(-1)?.level ?? 0) >= level) tags.end((open.pop() as (typeof open)[number]).element);
  };
  return {
    current,
    begin: (chapter) => {
      endDownTo(chapter.level);
      open.push({ level: chapter.level, element: tags.begin('Sect', current()) });
      waiting.push(chapter);
    },
    beginOnPage: () => {
      const beginning = waiting;
      waiting = [];
      for (const { title, level } of beginning) {
        const item = (level === 1 ? pdf.outline : within).addItem(title);
        if (level === 1) within = item;
      }
      return beginning.map(({ destination }) => destination);
    },
    endAll: () => endDownTo(1),
  };
}
