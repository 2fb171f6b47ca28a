import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import { report, type Report } from '../../diagnostics/problem.js';
import type { BlockNode, ItemNode, PropertyNode } from '../../syntax/ast.js';
import { nearest } from '../../text/nearest.js';
import { spanText } from '../../text/span.js';
import { EXPECT_NAMES } from '../expect-names.js';
import { A_KIND } from '../names.js';
import { unknownProperty } from '../problems.js';
import { isProperty, propertiesOf, propertyNamed } from '../properties.js';
import { propertyMeant } from './property-slips.js';
import { quote } from '../quote.js';
import { anyOf } from './unknown-word.js';

/** Says that a block has no property of that name, and what was surely or probably meant. */
export function unknownPropertyOf(entry: PropertyNode, block: BlockNode): Diagnostic {
  const { span: at, text } = entry.name;
  const shown = quote(at);
  const say = (message: string, rest: Pick<Report, 'help' | 'fix'>): Diagnostic =>
    report(unknownProperty, { message, at, ...rest });
  const none = `${A_KIND[block.type]} has no property ${shown}`;
  const lower = text.toLowerCase();

  if (propertyNamed(text))
    return say(`${shown} belongs to ${ownerOf(text)}, not to ${A_KIND[block.type]}`, move(entry, block));
  if (isProperty(lower)) return say(none, { help: `write \`${lower}\``, fix: [{ span: at, text: lower }] });
  if (propertiesOf(block.type).includes('card') && EXPECT_NAMES.has(text)) {
    return say(`${shown} is worked out from the recipe, and is not stated`, {
      help: `write \`expect ${text} = ${valueOf(entry)}\` to have it checked`,
    });
  }
  const near = nearest(text, propertiesOf(block.type));
  const meant = propertyMeant(text, block.type);
  if (meant) return say(none, { help: `did you mean \`${meant}\`?` });
  if (near.length > 0) return say(none, { help: `did you mean ${anyOf(near)}?` });
  const [other] = nearest(
    text,
    OTHERS.filter((name) => !propertiesOf(block.type).includes(name)),
  );
  return say(none, {
    help: other
      ? `did you mean \`${other}\`, which belongs to ${ownerOf(other)}?`
      : `its properties are ${propertiesOf(block.type).join(', ')}`,
  });
}

/** All names of properties, whosever they are. */
const OTHERS: readonly string[] = (['style', 'paper', 'batch'] as const).flatMap(propertiesOf);

/** Whose property it is. */
export const ownerOf = (property: string): string =>
  propertyNamed(property)?.where.includes('envelope')
    ? 'an envelope or a style'
    : A_KIND[propertyNamed(property)?.where[0] ?? 'envelope'];

const valueOf = ({ values: [first] }: PropertyNode): string => (first ? quote(first.span).slice(1, -1) : '…');

/** Where the line should stand. */
function move(entry: PropertyNode, { type, entries }: BlockNode): Pick<Report, 'help'> {
  const owner = ownerOf(entry.name.text);
  if (type !== 'paper' && propertyNamed(entry.name.text)?.where.includes('paper'))
    return { help: onThePaper(entry, entries) };
  return { help: `move the line to ${owner}` };
}

/** Where a paper's line should stand; the paper is named where the block names one. */
function onThePaper(entry: PropertyNode, entries: BlockNode['entries']): string {
  const [named] = entries.flatMap((each): readonly ItemNode[] =>
    each.kind === 'property' && each.name.text === 'paper' ? each.values : [],
  );
  return named?.kind === 'word'
    ? `move the line to \`paper ${spanText(named.span)}\``
    : `state it in a paper, \`paper NAME { ${entry.name.text}: ${valueOf(entry)} }\`, and name that here: \`paper: NAME\``;
}
