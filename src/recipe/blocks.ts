import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import type { BlockNode, EntryNode, PropertyNode, SectionNode } from '../syntax/ast.js';
import { through } from '../text/span.js';
import { readExpect, readExpectPost } from './expects.js';
import type { BlockDeclaration } from './names.js';
import { type Context, placeFor, unmixed } from './place.js';
import { conflict, repeated, unknownProperty } from './problems.js';
import { ALTERNATIVES, isProperty, PROPERTIES, type PropertyName } from './properties.js';
import type { Entry, Expectation, PostExpectation } from './recipe.js';
import { slipsIn, within } from './slips.js';
import { unknownPropertyOf } from './meant/unknown-property.js';

/** What one block states by itself. */
export interface Block {
  readonly declaration: BlockDeclaration;
  readonly entries: ReadonlyMap<PropertyName, Entry>;
  readonly expects: readonly Omit<Expectation, 'from'>[];
  readonly expectsPost: readonly Omit<PostExpectation, 'from'>[];
  /** Something that it was meant to state is lost, and has been reported. */
  readonly broken: boolean;
}

/** Reads what a block states. Reports unknown and repeated properties, values that are wrong, and conflicts. */
export function readBlock(declaration: BlockDeclaration, context: Context): Block {
  const { node } = declaration;
  const entries = new Map<PropertyName, Entry>();
  const named = new Map<PropertyName, PropertyNode>();
  const expects: Omit<Expectation, 'from'>[] = [];
  const expectsPost: Omit<PostExpectation, 'from'>[] = [];
  let broken = lostInWriting(declaration);
  const lose = (finding: Diagnostic): void => {
    broken = true;
    context.tell(finding);
  };

  for (const entry of node.entries) {
    if (entry.kind === 'expect') {
      const expectation = readExpect(entry, declaration, context);
      if (expectation) expects.push(expectation);
      continue;
    }
    if (entry.kind === 'expect-post') {
      const expectation = readExpectPost(entry, declaration, context);
      if (expectation) expectsPost.push(expectation);
      continue;
    }
    if (entry.kind === 'section') {
      lose(sectionAstray(entry, node));
      continue;
    }
    const name = entry.name.text;
    const earlier = isProperty(name) ? named.get(name) : undefined;
    if (!isProperty(name) || !PROPERTIES[name].where.includes(node.type))
      lose(unknownPropertyOf(entry, node));
    else if (earlier) lose(twice(entry, earlier));
    else {
      named.set(name, entry);
      entries.set(name, readEntry(name, entry, declaration, context));
    }
  }
  for (const finding of conflicts(entries, named)) lose(finding);
  return { declaration, entries, expects, expectsPost, broken };
}

function readEntry(
  name: PropertyName,
  { values, span }: PropertyNode,
  { file }: BlockDeclaration,
  context: Context,
): Entry {
  const [first] = values;
  const last = values.at(-1);
  if (!first || !last) return { state: 'broken', value: null, span };
  const covered = through(first.span, last.span);
  if (values.length === 1 && first.kind === 'word' && first.text === 'default') {
    return { state: 'default', value: null, span: covered };
  }
  const place = placeFor(context, file, `\`${name}\``, values, name === 'sheet');
  const value = PROPERTIES[name].kind.read(values, place);
  if (value === null || !unmixed(place)) return { state: 'broken', value: null, span: covered };
  return { state: 'stated', value, span: covered };
}

const sectionAstray = ({ title }: SectionNode, { type, name }: BlockNode): Diagnostic =>
  report(unknownProperty, {
    message: `\`${type} ${name.text}\` has no sections`,
    at: title.span,
    help: 'move it to `catalogue { … }` in `catalogue.plica`; there it names envelopes, or `tagged` tags',
  });

/** Whether a slip of writing lies in the block, but for one that stays within an entry of its own. */
const lostInWriting = ({ node, file }: BlockDeclaration): boolean =>
  slipsIn(file.slips, node.span).some(
    (slip) => !node.entries.some((entry) => survives(entry) && within(slip, entry.span)),
  );

/** An `expect`, or a property that is broken by itself, takes its slip with it. */
const survives = (entry: EntryNode): boolean =>
  entry.kind === 'expect' ||
  entry.kind === 'expect-post' ||
  (entry.kind === 'property' && isProperty(entry.name.text) && entry.values.length === 0);

const twice = ({ name }: PropertyNode, earlier: PropertyNode): Diagnostic =>
  report(repeated, {
    message: `\`${name.text}\` is stated twice`,
    at: name.span,
    label: 'again here',
    related: [{ span: earlier.span, text: 'first stated here' }],
    help: LISTED.has(name.text)
      ? `write one \`${name.text}\`, with commas between the ${LISTED.get(name.text)}`
      : 'keep one of the two lines',
  });

/** What properties list that take as many as one likes. */
const LISTED: ReadonlyMap<string, string> = new Map([
  ['note', 'paragraphs'],
  ['tags', 'tags'],
  ['post', 'classes'],
]);

/** Pairs that say one thing twice, each reported where the later of them is written. */
function conflicts(
  entries: ReadonlyMap<PropertyName, Entry>,
  named: ReadonlyMap<PropertyName, PropertyNode>,
): readonly Diagnostic[] {
  const states = (names: readonly PropertyName[]): boolean =>
    names.every((name) => (entries.get(name)?.state ?? 'default') !== 'default');
  return ALTERNATIVES.filter(([one, other]) => states(one) && states(other)).map(([one, other]) => {
    const written = [...one, ...other]
      .map((name) => named.get(name) as PropertyNode)
      .sort((a, b) => a.span.start - b.span.start);
    const last = written.at(-1) as PropertyNode;
    return report(conflict, {
      message: `${allOf(one)} and ${allOf(other)} say one thing twice`,
      at: last.name.span,
      related: written.slice(0, -1).map(({ span }) => ({ span, text: 'the same is fixed here' })),
      why: `when ${allOf(one)} is stated, ${follow(other)}, and the other way round`,
      help: `leave out ${allOf(one)}, or ${allOf(other)}`,
    });
  });
}

const allOf = (names: readonly string[]): string => names.map((name) => `\`${name}\``).join(' with ');

const follow = (names: readonly string[]): string =>
  names.length === 1 ? `${allOf(names)} follows` : `${allOf(names).replaceAll(' with ', ' and ')} follow`;
