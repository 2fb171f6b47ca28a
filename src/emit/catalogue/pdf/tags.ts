import { type Objects, reference, to } from './objects.js';

/** An element of the structure, from when it begins to when it ends (ISO 32000-1, 14.7.2). */
export interface Element {
  readonly id: number;
  readonly type: string;
  readonly parent: number;
  /** Attributes in its dictionary besides, as text. */
  readonly more: string;
  readonly kids: string[];
  /** The page that its own content is on. */
  page: string;
}

/** The structure of a document, written as it goes: only what is open is kept. */
export interface Tags {
  readonly begin: (type: string, parent: Element, more?: string) => Element;
  readonly end: (element: Element) => void;
  /** Begins a page; `page` is its object. */
  readonly page: (page: string) => void;
  /** A piece of the page's content that belongs to an element: the number that marks it there. */
  readonly content: (element: Element) => number;
  /** An annotation that belongs to an element: its key. */
  readonly annotation: (element: Element, annotation: number) => number;
  /** Ends the page: writes which element each piece of its content belongs to. Its key for the page's dictionary. */
  readonly endPage: () => number;
  /** Ends it all. */
  readonly finish: () => void;
  /** What everything stands in. */
  readonly document: Element;
}

export function tagsOf(pdf: PDFKit.PDFDocument, objects: Objects): Tags {
  const root = pdf.ref({ Type: 'StructTreeRoot' });
  Object.assign(pdf._root.data, { StructTreeRoot: root, MarkInfo: pdf.ref({ Marked: true }) });
  /** Which element a key leads to: of a page an array with one for each piece. */
  const parents: string[] = [];
  let pageObject = '';
  let pieces: number[] = [];
  const begin: Tags['begin'] = (type, parent, more = '') => {
    const element = { id: objects.reserve(), type, parent: parent.id, more, kids: [], page: '' };
    parent.kids.push(to(element.id));
    return element;
  };
  const end = ({ id, type, parent, more, kids, page }: Element): void => {
    const [only] = kids;
    const inside = kids.length === 1 ? `/K ${only}` : `/K[${kids.join(' ')}]`;
    objects.write(id, `<</S/${type}/P ${to(parent)}${page === '' ? '' : `/Pg ${page}`}${inside}${more}>>`);
  };
  const document = begin('Document', { id: root.id, type: '', parent: 0, more: '', kids: [], page: '' });
  return {
    document,
    begin,
    end,
    page: (page) => {
      pageObject = page;
      pieces = [];
    },
    content: (element) => {
      const mark = pieces.push(element.id) - 1;
      element.kids.push(`${mark}`);
      element.page = pageObject;
      return mark;
    },
    annotation: (element, annotation) => {
      element.kids.push(`<</Type/OBJR/Obj ${to(annotation)}/Pg ${pageObject}>>`);
      return parents.push(to(element.id)) - 1;
    },
    endPage: () => {
      const id = objects.reserve();
      objects.write(id, `[${pieces.map(to).join(' ')}]`);
      return parents.push(to(id)) - 1;
    },
    finish: () => {
      end(document);
      const tree = objects.reserve();
      objects.write(tree, `<</Nums[${parents.map((object, key) => `${key} ${object}`).join(' ')}]>>`);
      Object.assign(root.data, {
        K: reference(document.id),
        ParentTree: reference(tree),
        ParentTreeNextKey: parents.length,
      });
    },
  };
}
