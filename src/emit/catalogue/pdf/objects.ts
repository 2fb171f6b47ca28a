/** Writes objects of a document that need no dictionary kept: their text goes out many at a time (ISO 32000-1, 7.3.10). */
export interface Objects {
  /** The number of an object to be written later. */
  readonly reserve: () => number;
  /** Its text, in ASCII, without `obj` and `endobj`. */
  readonly write: (id: number, text: string) => void;
  /** Hands on what was written; before the library writes anything itself. */
  readonly flush: () => void;
}

export function objectsOf(pdf: PDFKit.PDFDocument): Objects {
  let waiting: string[] = [];
  let length = 0;
  return {
    reserve: () => pdf._offsets.push(null),
    write: (id, text) => {
      const object = `${id} 0 obj\n${text}\nendobj\n`;
      pdf._offsets[id - 1] = pdf._offset + length;
      length += object.length;
      waiting.push(object);
    },
    flush: () => {
      if (length > 0) pdf._write(Buffer.from(waiting.join(''), 'latin1'));
      waiting = [];
      length = 0;
    },
  };
}

/** An object by its number, for a dictionary of the library's. */
export const reference = (id: number): object => ({
  [Symbol.toStringTag]: 'Reference',
  toString: () => to(id),
});

/** The same in the text of an object. */
export const to = (id: number): string => `${id} 0 R`;

/** A text as UTF-16 with its mark (ISO 32000-1, 7.9.2.2), in hexadecimal, which needs no escapes. */
export const textString = (text: string): string => {
  const units = text.split('').map((unit) => unit.charCodeAt(0).toString(16).padStart(4, '0'));
  return `<feff${units.join('')}>`;
};

/** What is read aloud in an element's stead. */
export const alternative = (text: string): string => `/Alt${textString(text)}`;
