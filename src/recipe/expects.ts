import { report } from '../diagnostics/problem.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { postClassNamed } from '../stock/post-classes.js';
import type { ExpectNode, ExpectPostNode, ExpressionNode } from '../syntax/ast.js';
import { nearest } from '../text/nearest.js';
import type { Span } from '../text/span.js';
import { dimensionAt } from './sums/evaluate.js';
import { EXPECT_NAMES, type ExpectDimension } from './expect-names.js';
import { A_KIND, type BlockDeclaration } from './names.js';
import { type Context, type Place, placeFor, unmixed } from './place.js';
import { conflict, missing, range, unknownName, unknownProperty } from './problems.js';
import { unknownClass } from './kinds/post-classes.js';
import { isProperty } from './properties.js';
import { quote } from './quote.js';
import type { Expectation, PostExpectation } from './recipe.js';
import { anyOf } from './meant/unknown-word.js';

/** Reads an `expect`; null where it is broken, which has been reported. The block itself stays good. */
export function readExpect(
  node: ExpectNode,
  { node: block, file }: BlockDeclaration,
  context: Context,
): Omit<Expectation, 'from'> | null {
  const { name, value, tolerance, compare, span } = node;
  if (value === null) return null;
  if (!HAS_EXPECTS.has(block.type)) {
    context.tell(nothingToExpect(span, block.type));
    return null;
  }
  const dimension = EXPECT_NAMES.get(name.text);
  if (dimension === undefined) {
    unknownExpect(node, context);
    return null;
  }
  const parts = tolerance ? [value, tolerance] : [value];
  const place = placeFor(context, file, `\`expect ${name.text}\``, parts);
  const read = dimensionAt(value, dimension, place);
  const slack = tolerance && toleranceAt(node, tolerance, dimension, place);
  if (read === null || (tolerance && slack === null) || !unmixed(place)) return null;
  if (compare === '=' && tolerance === null && NEEDS_SLACK.has(dimension) && read !== 0) {
    slackMissing(node, value, dimension, context);
    return null;
  }
  return { name: name.text, compare, value: read, tolerance: slack, span, valueSpan: value.span };
}

/** Reads an `expect post`; null where it is broken, which has been reported. */
export function readExpectPost(
  { post, span }: ExpectPostNode,
  { node: block }: BlockDeclaration,
  context: Context,
): Omit<PostExpectation, 'from'> | null {
  if (!HAS_EXPECTS.has(block.type)) {
    context.tell(nothingToExpect(span, block.type));
    return null;
  }
  if (postClassNamed(post.text)) return { post: post.text, span };
  context.tell(unknownClass(post));
  return null;
}

const HAS_EXPECTS: ReadonlySet<BlockDeclaration['kind']> = new Set(['envelope', 'style']);

const nothingToExpect = (at: Span, type: BlockDeclaration['kind']): Diagnostic =>
  report(unknownProperty, {
    message: `${A_KIND[type]} has no \`expect\``,
    at,
    help: 'move the line to an envelope, or to a style that it is `like`',
  });

/** Masses and areas are never met exactly. */
const NEEDS_SLACK: ReadonlySet<ExpectDimension> = new Set(['mass', 'area']);

function toleranceAt(
  { compare, value, span }: ExpectNode,
  tolerance: ExpressionNode,
  dimension: ExpectDimension,
  place: Place,
): number | null {
  const { tell } = place.context;
  const slack = dimensionAt(tolerance, dimension, place);
  if (slack === null) return null;
  if (compare !== '=') {
    const at = { ...span, start: value?.span.end ?? span.start };
    tell(
      report(conflict, {
        message: `\`+-\` goes with \`=\`, and ${place.what} compares with \`${compare}\``,
        at: {
          ...at,
          start: at.start + (/^\s*/.exec(at.source.text.slice(at.start, at.end))?.[0].length ?? 0),
        },
        help: 'leave the `+-` out, or write `=`',
      }),
    );
    return null;
  }
  if (slack >= 0) return slack;
  tell(
    report(range, {
      message: `${place.what} may be off by ${quote(tolerance.span)}, which is below 0`,
      at: tolerance.span,
      help: 'leave out the minus sign',
    }),
  );
  return null;
}

function slackMissing(
  { name, span }: ExpectNode,
  value: ExpressionNode,
  dimension: ExpectDimension,
  context: Context,
): void {
  const slack = dimension === 'mass' ? '1 g' : '1 mm * 1 mm';
  context.tell(
    report(missing, {
      message: `\`expect ${name.text} =\` does not say how far it may be off`,
      at: value.span,
      why: `${dimension === 'mass' ? 'a mass' : 'an area'} never comes out exactly`,
      help: `write \`${quote(span).slice(1, -1)} +- ${slack}\`, or compare with \`<\` or \`>\``,
    }),
  );
}

function unknownExpect({ name }: ExpectNode, context: Context): void {
  const lower = name.text.toLowerCase();
  const near = nearest(name.text, EXPECT_NAMES.keys());
  const known = [...EXPECT_NAMES.keys()].join(', ');
  context.tell(
    report(unknownName, {
      message: isProperty(name.text)
        ? `\`${name.text}\` is stated, not worked out, so that nothing can be expected of it`
        : `${quote(name.span)} is nothing that can be expected`,
      at: name.span,
      ...(EXPECT_NAMES.has(lower)
        ? { help: `write \`expect ${lower}\``, fix: [{ span: name.span, text: lower }] }
        : { help: near.length > 0 ? `did you mean ${anyOf(near)}?` : `what can be expected: ${known}` }),
    }),
  );
}
