import { report } from '../diagnostics/problem.js';
import type { CatalogueNode, ExpectNode, ExpectPostNode, PropertyNode, SectionNode } from '../syntax/ast.js';
import { nearest } from '../text/nearest.js';
import type { Catalogue, CatalogueSection, Taken } from './catalogue.js';
import { CATALOGUE_PROPERTIES, isCatalogueProperty } from './catalogue-properties.js';
import { type Context, placeFor } from './place.js';
import { limit } from '../syntax/problems.js';
import { repeated, unknownProperty, wrongKind } from './problems.js';
import { propertyNamed } from './properties.js';
import { quote } from './quote.js';
import { readSection } from './read-section.js';
import { ownerOf } from './meant/unknown-property.js';
import { anyOf } from './meant/unknown-word.js';
import type { RecipeFile } from './uses.js';

/** More sections than a book has. */
const MOST_SECTIONS = 500;

/** Reads a `catalogue` statement. Reports what is wrong with it; what is broken is left out. */
export function readCatalogue(node: CatalogueNode, file: RecipeFile, context: Context): Catalogue {
  const values = new Map<string, unknown>();
  const stated = new Map<string, PropertyNode>();
  const sections: CatalogueSection[] = [];
  const taken = new Map<string, Taken>();
  for (const entry of node.entries) {
    if (entry.kind === 'expect' || entry.kind === 'expect-post') context.tell(nothingToExpect(entry));
    else if (entry.kind === 'section') {
      if (sections.length === MOST_SECTIONS) context.tell(tooMany(entry));
      if (sections.length < MOST_SECTIONS) sections.push(readSection(entry, taken, context));
    } else readProperty(entry, { values, stated, file, context });
  }
  const of = <T>(name: string, otherwise: T): T => (values.get(name) ?? otherwise) as T;
  return {
    span: node.head.span,
    units: file.units === 'in' || file.units === 'cm' ? file.units : 'mm',
    title: of('title', null),
    by: of('by', null),
    note: of('note', []),
    foreword: of('foreword', []),
    page: of('page', null),
    sections,
  };
}

interface Properties {
  readonly values: Map<string, unknown>;
  readonly stated: Map<string, PropertyNode>;
  readonly file: RecipeFile;
  readonly context: Context;
}

function readProperty(entry: PropertyNode, { values, stated, file, context }: Properties): void {
  const { text: name, span } = entry.name;
  const earlier = stated.get(name);
  if (!isCatalogueProperty(name)) context.tell(unknown(entry));
  else if (earlier)
    context.tell(
      report(repeated, {
        message: `\`${name}\` is stated twice`,
        at: span,
        label: 'again here',
        related: [{ span: earlier.span, text: 'first stated here' }],
        help: 'keep one of the two lines',
      }),
    );
  else {
    stated.set(name, entry);
    const [first] = entry.values;
    const isDefault = entry.values.length === 1 && first?.kind === 'word' && first.text === 'default';
    if (first === undefined || isDefault) return;
    const place = placeFor(context, file, `\`${name}\``, entry.values, name === 'page');
    values.set(name, CATALOGUE_PROPERTIES[name].kind.read(entry.values, place));
  }
}

function unknown({ name: { span, text } }: PropertyNode) {
  const near = nearest(text, Object.keys(CATALOGUE_PROPERTIES));
  const elsewhere = propertyNamed(text);
  return report(unknownProperty, {
    message: elsewhere
      ? `${quote(span)} belongs to ${ownerOf(text)}, not to a catalogue`
      : `a catalogue has no property ${quote(span)}`,
    at: span,
    help: elsewhere
      ? 'state it there'
      : near.length > 0
        ? `did you mean ${anyOf(near)}?`
        : `its properties are ${Object.keys(CATALOGUE_PROPERTIES).join(', ')}; a section is written \`section "Title": NAME, tagged TAG\``,
  });
}

const nothingToExpect = ({ span }: ExpectNode | ExpectPostNode) =>
  report(wrongKind, {
    message: 'a catalogue has nothing to expect',
    at: span,
    help: 'write the `expect` in the envelope or the style that it is about',
  });

const tooMany = ({ title }: SectionNode) =>
  report(limit, {
    message: `a catalogue has at most ${MOST_SECTIONS} sections`,
    at: title.span,
    help: 'join some of them, or make two catalogues of two folders',
  });
