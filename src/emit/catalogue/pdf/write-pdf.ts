/*
 * catalogue/pdf/: a book as a PDF that is read aloud in order, linked, and written as it goes.
 * In: chapters and pages of plain items, in points. Out: bytes, piece by piece, the same for the same input.
 * Refuses to know: what is on a page, and how much of it there is: nothing of a page is kept once it is written.
 */
import type { TextMeasure } from '../../../drawing/text-measure.js';
import type { Size } from '../../../recipe/recipe.js';
import { beginDocument } from '../../pdf/document.js';
import type { BookOptions } from '../book.js';
import type { BookPage, Piece } from '../page.js';
import { chunks } from './chunks.js';
import { glyphsOf } from './glyphs.js';
import { finished } from './finished.js';
import { objectsOf, reference, textString, to } from './objects.js';
import { outlineOf } from './outline.js';
import { type Hands, type Leads, pageContent } from './page-content.js';
import { tagsOf } from './tags.js';

export interface About {
  readonly title: string;
  readonly author: string | null;
  /** Of every page, in points. */
  readonly page: Size;
}

/** Writes chapters and pages in the order in which they come. They are set by the measure of the fonts that they are written in. */
export async function* writePdf(
  pieces: (measure: TextMeasure) => Iterable<Piece>,
  about: About,
  options: Pick<BookOptions, 'date' | 'fonts'>,
): AsyncGenerator<Uint8Array> {
  const begun = await beginDocument(options, { ...about, trueSize: false });
  const { pdf } = begun;
  const objects = objectsOf(pdf);
  const tags = tagsOf(pdf, objects);
  const fonts = (['regular', 'bold'] as const).map((weight) => {
    pdf.font(weight);
    return { weight, id: pdf._font.id, ref: pdf._font.ref() };
  });
  const { show, measure } = glyphsOf(begun);
  const hands: Hands = {
    tags,
    show,
    font: Object.fromEntries(fonts.map(({ weight, id }) => [weight, id])) as Hands['font'],
  };
  const destinations = numbered();
  const chapters = outlineOf(pdf, tags);

  const addPage = (page: BookPage): void => {
    objects.flush();
    pdf.addPage({ size: [about.page.width, about.page.height], margin: 0 });
    for (const { id, ref } of fonts) pdf.page.fonts[id] = ref;
    const { dictionary } = pdf.page;
    for (const destination of chapters.beginOnPage()) {
      pdf.addNamedDestination(destinations(destination), 'XYZ', null, null, null);
    }
    tags.page(to(dictionary.id));
    const links: number[] = [];
    const link = ({ to: destination, words, element, box }: Leads): void => {
      const id = objects.reserve();
      links.push(id);
      objects.write(
        id,
        `<</Type/Annot/Subtype/Link/F 4/Border[0 0 0]/Rect[${box.map((edge) => edge.toFixed(2)).join(' ')}]` +
          `/Dest(${destinations(destination)})/Contents${textString(words)}/StructParent ${tags.annotation(element, id)}>>`,
      );
    };
    // The library begins a page by turning it over; this turns it back.
    const content = `1 0 0 -1 0 ${about.page.height} cm\n${pageContent(page, chapters.current(), hands, link)}\n`;
    pdf.page.write(Buffer.from(content, 'latin1'));
    Object.assign(dictionary.data, {
      Tabs: 'S',
      StructParents: tags.endPage(),
      ...(links.length > 0 ? { Annots: links.map(reference) } : {}),
    });
    objects.flush();
    pdf.flushPages();
    // The library keeps every page's dictionary to the end; what was in it is written.
    Object.assign(dictionary, { data: {} });
  };

  for (const piece of pieces(measure)) {
    if (piece.kind === 'chapter') chapters.begin(piece);
    else {
      addPage(piece.page);
      yield* chunks(pdf);
    }
  }
  chapters.endAll();
  tags.finish();
  objects.flush();
  yield* finished(pdf);
}

/** Names of one length, so that any way of sorting them is the same. */
function numbered(): (name: string) => string {
  const known = new Map<string, string>();
  return (name) => {
    const number = known.get(name) ?? `d${String(known.size + 1).padStart(7, '0')}`;
    known.set(name, number);
    return number;
  };
}
