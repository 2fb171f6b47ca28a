import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import type { WordNode } from '../syntax/ast.js';
import { limit } from '../syntax/problems.js';
import type { Block } from './blocks.js';
import { circlePath, placesShown } from './circle.js';
import { A_KIND, type BlockDeclaration, type Declaration } from './names.js';
import type { Context } from './place.js';
import { cycle, wrongKind } from './problems.js';
import { ALTERNATIVES, PROPERTIES, type PropertyName } from './properties.js';
import { quote } from './quote.js';
import type { Entry, Expectation, Layer, PostExpectation } from './recipe.js';
import { undeclared } from './meant/unknown-word.js';

/** How many blocks deep `like` may lead. */
const MOST_DEEP = 50;

/** What a block is like: itself first, then what it is `like`, and so on; null where that leads nowhere (reported). */
export type Lineage = (declaration: BlockDeclaration) => readonly BlockDeclaration[] | null;

/** Follows every `like`. Reports names that are unknown or of another kind, circles, and chains beyond the limit. */
export function followLikes(declarations: readonly BlockDeclaration[], context: Context): Lineage {
  const parents = new Map<BlockDeclaration, BlockDeclaration | null | 'broken'>();
  for (const declaration of declarations) parents.set(declaration, parentOf(declaration, context));

  /** How many blocks stand above; null where the chain is broken. */
  const depths = new Map<BlockDeclaration, number | null>();
  for (const declaration of declarations) {
    const path: BlockDeclaration[] = [];
    const onPath = new Set<BlockDeclaration>();
    let next: BlockDeclaration | null | 'broken' = declaration;
    while (next !== null && next !== 'broken' && !depths.has(next) && !onPath.has(next)) {
      path.push(next);
      onPath.add(next);
      next = parents.get(next) ?? null;
    }
    if (next !== null && next !== 'broken' && onPath.has(next)) {
      const circle = path.slice(path.indexOf(next));
      context.tell(circular(circle));
      next = 'broken';
    }
    let depth = next === null ? -1 : next === 'broken' ? null : (depths.get(next) ?? null);
    for (const each of path.reverse()) {
      depth = depth === null ? null : depth + 1;
      if (depth !== null && depth > MOST_DEEP) {
        context.tell(tooDeep(each));
        depth = null;
      }
      depths.set(each, depth);
    }
  }

  return (declaration) => {
    if ((depths.get(declaration) ?? null) === null) return null;
    const chain: BlockDeclaration[] = [];
    let next: BlockDeclaration | null | 'broken' | undefined = declaration;
    while (next && next !== 'broken') {
      chain.push(next);
      next = parents.get(next);
    }
    return chain;
  };
}

/** Which kinds of block may be `like` which. */
const LIKES: Readonly<Record<BlockDeclaration['kind'], readonly Declaration['kind'][]>> = {
  paper: ['paper'],
  style: ['style', 'envelope'],
  envelope: ['style', 'envelope'],
  batch: ['batch'],
};

/** The same in words. */
const LIKE_WHAT: Readonly<Record<BlockDeclaration['kind'], string>> = {
  paper: 'paper',
  style: 'style or envelope',
  envelope: 'style or envelope',
  batch: 'batch',
};

function parentOf(
  { kind, node, file }: BlockDeclaration,
  context: Context,
): BlockDeclaration | null | 'broken' {
  const { like } = node;
  if (like === null) return null;
  const declaration = context.names.find(like.text, file);
  if (declaration && declaration.kind !== 'let' && LIKES[kind].includes(declaration.kind)) return declaration;
  if (declaration) context.tell(wrongLike(kind, like, declaration));
  else if (context.names.complete(file)) {
    context.tell(undeclared(like, `no ${LIKE_WHAT[kind]} that is known here`, LIKES[kind], context, file));
  }
  return 'broken';
}

const wrongLike = (
  kind: BlockDeclaration['kind'],
  like: WordNode,
  { kind: other, node }: Declaration,
): Diagnostic =>
  report(wrongKind, {
    message: `${quote(like.span)} is ${A_KIND[other]}, which ${A_KIND[kind]} cannot be like`,
    at: like.span,
    related: [{ span: node.name.span, text: 'declared here' }],
    help:
      kind === 'paper' || kind === 'batch'
        ? `name ${A_KIND[kind]} after \`like\``
        : `name a style or an envelope after \`like\`${other === 'paper' ? `, and write \`paper: ${like.text}\` in the block` : ''}`,
  });

function circular(circle: readonly BlockDeclaration[]): Diagnostic {
  const names = circle.map(({ node }) => node.name.text);
  const [first, ...others] = circle.map(({ node }) => node.like as WordNode) as [WordNode, ...WordNode[]];
  return report(cycle, {
    message:
      others.length === 0
        ? `\`${names[0]}\` is like itself`
        : `these are like each other in a circle: ${circlePath(names)}`,
    at: first.span,
    related: placesShown(others).map(({ span, text }, index) => ({
      span,
      text: `\`${names[index + 1]}\` is like \`${text}\``,
    })),
    help:
      others.length === 0
        ? 'take the `like` out, or name another block after it'
        : 'take one `like` out, and state in that block what it needs',
  });
}

const tooDeep = ({ node }: BlockDeclaration): Diagnostic =>
  report(limit, {
    message: `\`like\` leads more than ${MOST_DEEP} blocks deep from \`${node.name.text}\``,
    at: node.like?.span ?? node.name.span,
    why: `${MOST_DEEP + 1} blocks stand above it; at most ${MOST_DEEP}`,
    help: 'be like a block nearer the first',
  });

/** An entry, and the block it was copied from (null: the block's own). */
export interface Copied extends Entry {
  readonly from: string | null;
}

/** All that a block states, itself and by its `like`. */
export interface Gathered {
  readonly entries: ReadonlyMap<PropertyName, Copied>;
  readonly expects: readonly Expectation[];
  readonly expectsPost: readonly PostExpectation[];
  /** What it was gathered from, the nearest first. */
  readonly layers: readonly Layer[];
}

/** Puts together what a chain of blocks states, nearest first. */
export function gather(chain: readonly Block[]): Gathered {
  const layers = chain.map(({ declaration, entries }, distance): Layer => {
    return { from: distance === 0 ? null : declaration.node.name.text, entries };
  });
  const kept = chain.flatMap((block, distance) =>
    distance > 0 && block.declaration.kind !== 'style'
      ? []
      : [{ block, from: layers[distance]?.from ?? null }],
  );
  return {
    entries: merged(layers),
    expects: kept.flatMap(({ block, from }) => block.expects.map((each) => ({ ...each, from }))),
    expectsPost: kept.flatMap(({ block, from }) => block.expectsPost.map((each) => ({ ...each, from }))),
    layers,
  };
}

/** The entries of all layers: the nearer wins, also over what says the same otherwise. */
export function merged(layers: readonly Layer[]): ReadonlyMap<PropertyName, Copied> {
  const entries = new Map<PropertyName, Copied>();
  for (const { from, entries: own } of layers) {
    const added = new Map<PropertyName, Entry>();
    for (const [name, entry] of own as ReadonlyMap<PropertyName, Entry>) {
      if (!entries.has(name) && (from === null || PROPERTIES[name].copied)) added.set(name, entry);
    }
    const dropped = said(entries, added);
    for (const [name, { state, value, span }] of added) {
      if (!dropped.includes(name)) entries.set(name, { state, value, span, from });
    }
  }
  return entries;
}

/** What of a farther block's entries nearer ones already say in another way. */
function said(
  nearer: ReadonlyMap<PropertyName, Copied>,
  adds: ReadonlyMap<PropertyName, Entry>,
): readonly PropertyName[] {
  const states = (entry: Entry | undefined): boolean => (entry?.state ?? 'default') !== 'default';
  return BOTH_WAYS.flatMap(([here, there]) => {
    if (!here.every((name) => states(nearer.get(name)))) return [];
    const isComplete = there.every((name) => states(nearer.get(name)) || states(adds.get(name)));
    return isComplete ? there.filter((name) => states(adds.get(name))) : [];
  });
}

const BOTH_WAYS = ALTERNATIVES.flatMap(([one, other]) => [[one, other] as const, [other, one] as const]);
