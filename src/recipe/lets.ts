import { report } from '../diagnostics/problem.js';
import type { ExpressionNode, ItemNode, LetNode, WordNode } from '../syntax/ast.js';
import { circlePath, placesShown } from './circle.js';
import { evaluate } from './sums/evaluate.js';
import type { Declaration } from './names.js';
import { type Context, placeFor, unmixed } from './place.js';
import { cycle, wrongKind } from './problems.js';
import { quote } from './quote.js';
import { kindOf, type Value } from './sums/value.js';

type LetDeclaration = Extract<Declaration, { readonly kind: 'let' }>;

/** A let on the way down, the words it leans on, and how many of them have been followed. */
interface Step {
  readonly declaration: LetDeclaration;
  readonly words: readonly WordNode[];
  followed: number;
}

/** Works out every let into `context.lets`, those it leans on first. Reports broken ones and circles. */
export function workOutLets(context: Context): void {
  for (const declaration of context.names.all) {
    if (declaration.kind === 'let' && !context.lets.has(declaration.node)) workOut(declaration, context);
  }
}

/** Goes down by a list of its own, since a let may lean on ten thousand others. */
function workOut(root: LetDeclaration, context: Context): void {
  const path: Step[] = [start(root)];
  const onPath = new Map<LetNode, number>([[root.node, 0]]);
  for (let step = path.at(-1); step; step = path.at(-1)) {
    const word = step.words[step.followed];
    if (word === undefined) {
      path.pop();
      onPath.delete(step.declaration.node);
      if (!context.lets.has(step.declaration.node)) {
        context.lets.set(step.declaration.node, valueOf(step.declaration, context));
      }
      continue;
    }
    step.followed++;
    const next = context.names.find(word.text, step.declaration.file);
    if (next?.kind !== 'let' || context.lets.has(next.node)) continue;
    const earlier = onPath.get(next.node);
    if (earlier === undefined) {
      onPath.set(next.node, path.length);
      path.push(start(next));
    } else {
      reportCircle(path.slice(earlier), context);
    }
  }
}

const start = (declaration: LetDeclaration): Step => ({
  declaration,
  words: declaration.node.value ? wordsOf(declaration.node.value) : [],
  followed: 0,
});

/** The words of an item that may be names, in no order that matters. */
function wordsOf(item: ItemNode): readonly WordNode[] {
  const words: WordNode[] = [];
  const open: ItemNode[] = [item];
  const push = (...nodes: ExpressionNode[]): void => void open.push(...nodes);
  for (let node = open.pop(); node; node = open.pop()) {
    if (node.kind === 'word') words.push(node);
    else if (node.kind === 'size') push(node.first, node.second);
    else if (node.kind === 'binary') push(node.left, node.right);
    else if (node.kind === 'negate') push(node.operand);
    else if (node.kind === 'group') push(node.inner);
    else if (node.kind === 'phrase') push(...node.atoms);
  }
  return words;
}

/** Every let of the circle is broken; the others that lean on it stay quiet. */
function reportCircle(circle: readonly Step[], context: Context): void {
  const reference = ({ words, followed }: Step): WordNode => words[followed - 1] as WordNode;
  const [first, ...others] = circle as [Step, ...Step[]];
  const names = circle.map(({ declaration }) => declaration.node.name.text);
  for (const { declaration } of circle) context.lets.set(declaration.node, null);
  context.tell(
    report(cycle, {
      message:
        others.length === 0
          ? `\`${names[0]}\` is worked out from itself`
          : `these lets are worked out from each other in a circle: ${circlePath(names)}`,
      at: reference(first).span,
      related: placesShown(others).map((step) => ({
        span: reference(step).span,
        text: `\`${step.declaration.node.name.text}\` needs \`${reference(step).text}\``,
      })),
      help: `state \`${names[0]}\` by a number of its own`,
    }),
  );
}

function valueOf({ node, file }: LetDeclaration, context: Context): Value | null {
  if (node.value === null) return null;
  const place = placeFor(context, file, `\`let ${node.name.text}\``, [node.value]);
  const wrong = (message: string): null => {
    context.tell(
      report(wrongKind, {
        message,
        at: node.value?.span ?? node.span,
        help: 'a `let` holds a number, a length, a mass, a weight per area or a size',
      }),
    );
    return null;
  };
  if (node.value.kind === 'string') return wrong(`${place.what} is a string, ${quote(node.value.span)}`);
  const value = evaluate(node.value, place);
  if (value === null || !unmixed(place)) return null;
  const isArea = value.kind === 'quantity' && value.quantity.dimension === 'area';
  return isArea ? wrong(`${place.what} is ${kindOf(value)}, ${quote(node.value.span)}`) : value;
}
