import { DOMParser, type Element } from '@xmldom/xmldom';
import type { Job } from '../../src/emit/emitter.js';
import { svg } from '../../src/emit/svg/svg.js';
import { emitOptions } from './pdf-pages.js';

/** An SVG file as a parser sees it that had no part in writing it. */
export interface SvgFile {
  readonly root: Element;
  /** All of them, in the file's order. */
  readonly elements: readonly Element[];
  /** The groups right below the root, by id, in the file's order. */
  readonly groups: ReadonlyMap<string, Element>;
  /** The text of the first element of a name. */
  readonly words: (name: string) => string | null;
}

/** Reads a file; anything that the parser merely doubts is an error, but for U+FFFD, which stands where half a character was. */
export function readSvg(text: string): SvgFile {
  const parser = new DOMParser({
    onError: (level, message) => {
      if (!message.startsWith('Unicode replacement character')) throw new Error(`${level}: ${message}`);
    },
  });
  const root = parser.parseFromString(text, 'image/svg+xml').documentElement;
  if (!root) throw new Error('no element');
  const elements = [root, ...root.getElementsByTagName('*')];
  const groups = elements.filter((each) => each.tagName === 'g' && each.parentNode === root);
  return {
    root,
    elements,
    groups: new Map(groups.map((group) => [group.getAttribute('id') ?? '', group])),
    words: (name) => elements.find(({ tagName }) => tagName === name)?.textContent ?? null,
  };
}

/** The paths right below an element. */
export const pathsOf = (group: Element | undefined): readonly string[] =>
  [...(group?.getElementsByTagName('path') ?? [])].map((path) => path.getAttribute('d') ?? '');

/** Kept, so that the fonts are read once. */
const OPTIONS = emitOptions();

/** The texts of the SVG files that are written for an envelope, by their endings. */
export async function svgsOf(job: Job): Promise<Readonly<Record<string, string>>> {
  const files = await svg.emit(job, OPTIONS);
  const decoder = new TextDecoder('utf-8', { fatal: true });
  return Object.fromEntries(files.map(({ extension, bytes }) => [extension, decoder.decode(bytes)]));
}

/** The text of the blank's. */
export const svgOf = async (job: Job): Promise<string> => (await svgsOf(job))['.svg'] ?? '';
