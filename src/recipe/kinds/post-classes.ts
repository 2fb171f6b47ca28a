import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import { report } from '../../diagnostics/problem.js';
import { postClassNamed, postClassNames } from '../../stock/post-classes.js';
import type { ItemNode, WordNode } from '../../syntax/ast.js';
import { nearest } from '../../text/nearest.js';
import type { Kind } from './kind.js';
import { unknownName } from '../problems.js';
import { quote } from '../quote.js';
import type { NamedPost } from '../recipe.js';
import { anyOf } from '../meant/unknown-word.js';
import { words } from './word-kinds.js';

/** Names of classes in stock/post-classes.ts. */
export const postClasses: Kind<readonly NamedPost[]> = {
  wants: 'classes of post with commas between them',
  read: (items, place) => {
    const read = words.read(items, place);
    const strange = read?.findIndex((name) => postClassNamed(name) === undefined) ?? -1;
    const item = items[strange];
    if (item === undefined) return read && items.flatMap(namedBy);
    if (item.kind === 'word') place.context.tell(unknownClass(item));
    return null;
  },
};

const namedBy = (item: ItemNode): readonly NamedPost[] =>
  item.kind === 'word' ? [{ post: item.text, span: item.span }] : [];

/** Reports a word that is no class of post. */
export function unknownClass({ span, text: name }: WordNode): Diagnostic {
  const sure = postClassNames().find((each) => each === name.toLowerCase());
  const near = nearest(name, postClassNames());
  const [country = ''] = name.split('-');
  const there = postClassNames().filter((each) => each.startsWith(`${country}-`));
  const offered = near.length > 0 ? near : there.length > 0 ? there : postClassNames();
  return report(unknownName, {
    message: `${quote(span)} is no class of post that is known here`,
    at: span,
    ...(sure
      ? { help: `write \`${sure}\``, fix: [{ span, text: sure }] }
      : { help: near.length > 0 ? `did you mean ${anyOf(near)}?` : `those known are ${offered.join(', ')}` }),
  });
}
