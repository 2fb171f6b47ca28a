import { report } from '../diagnostics/problem.js';
import type { ItemNode, SectionNode } from '../syntax/ast.js';
import { spanText } from '../text/span.js';
import type { CatalogueSection, Taken } from './catalogue.js';
import type { Context } from './place.js';
import { repeated, wrongKind } from './problems.js';
import { quote } from './quote.js';

/** Reads a section of a catalogue; `taken`: what the sections before it have taken, and then this one too. */
export function readSection(
  { title, values }: SectionNode,
  taken: Map<string, Taken>,
  context: Context,
): CatalogueSection {
  const takes = values.flatMap((item): readonly Taken[] => {
    const read = takenBy(item, context);
    if (read === null) return [];
    const key = `${read.by} ${read.word}`;
    const earlier = taken.get(key);
    if (earlier === undefined) {
      taken.set(key, read);
      return [read];
    }
    context.tell(
      report(repeated, {
        message: `${quote(read.span)} is taken twice`,
        at: read.span,
        label: 'again here',
        related: [{ span: earlier.span, text: 'first taken here' }],
        why: 'a recipe stands once in a catalogue',
        help: 'leave one of them out',
      }),
    );
    return [];
  });
  return { title: title.value, span: title.span, takes };
}

/** A name, or `tagged` and a tag. */
function takenBy(item: ItemNode, context: Context): Taken | null {
  if (item.kind === 'word') return { by: 'name', word: item.text, span: item.span };
  if (item.kind === 'phrase') {
    const [first, tag, ...more] = item.atoms;
    if (first?.kind === 'word' && first.text === 'tagged' && tag?.kind === 'word' && more.length === 0)
      return { by: 'tag', word: tag.text, span: item.span };
  }
  const word = item.kind === 'string' && /^[a-z][a-z\d]*(?:-[a-z\d]+)*$/.test(item.value) ? item.value : null;
  context.tell(
    report(wrongKind, {
      message: `a section takes names of envelopes and \`tagged\` tags, and ${quote(item.span)} is neither`,
      at: item.span,
      ...(word === null
        ? {
            help: `write ${spanText(item.span).startsWith('tag') ? '`tagged TAG`' : 'a name, or `tagged TAG`'}, with commas between several`,
          }
        : { help: `write \`${word}\`, without the quotes`, fix: [{ span: item.span, text: word }] }),
    }),
  );
  return null;
}
