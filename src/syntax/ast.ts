/*
 * syntax/: the tree of a recipe file, as written.
 * In: what the parser builds. Out: readonly nodes with a `kind` and a `span`.
 * Refuses to know: what a name or a number means; that is decided in recipe/.
 */
import type { Source } from '../text/source.js';
import type { Span } from '../text/span.js';

export interface FileNode {
  readonly kind: 'file';
  readonly span: Span;
  readonly source: Source;
  readonly statements: readonly StatementNode[];
  readonly comments: readonly CommentNode[];
}

/** `# …` to the end of the line; the span excludes the line end. */
export interface CommentNode {
  readonly kind: 'comment';
  readonly span: Span;
}

export type StatementNode = UnitsNode | UseNode | LetNode | BlockNode | CatalogueNode;

/** `units in` */
export interface UnitsNode {
  readonly kind: 'units';
  readonly span: Span;
  readonly unit: WordNode;
}

/** `use "papers.plica"` */
export interface UseNode {
  readonly kind: 'use';
  readonly span: Span;
  readonly path: StringNode;
}

/** `let hand = 1/16` (no value: it was broken and has been reported) */
export interface LetNode {
  readonly kind: 'let';
  readonly span: Span;
  readonly name: WordNode;
  readonly value: ItemNode | null;
}

/** `envelope a6-tides like house { … }`, likewise `paper`, `style` and `batch` */
export interface BlockNode {
  readonly kind: 'block';
  readonly span: Span;
  readonly type: 'paper' | 'style' | 'envelope' | 'batch';
  readonly name: WordNode;
  readonly like: WordNode | null;
  readonly entries: readonly EntryNode[];
}

/** `catalogue { … }` */
export interface CatalogueNode {
  readonly kind: 'catalogue';
  readonly span: Span;
  /** The word that begins it. */
  readonly head: WordNode;
  readonly entries: readonly EntryNode[];
}

export type EntryNode = PropertyNode | ExpectNode | ExpectPostNode | SectionNode;

/** `card: 8 1/2 x 5 1/2` (no values: they were broken and have been reported) */
export interface PropertyNode {
  readonly kind: 'property';
  readonly span: Span;
  readonly name: WordNode;
  readonly values: readonly ItemNode[];
}

/** `expect blank = 11 1/4 +- 1/16` (a null value was broken and has been reported) */
export interface ExpectNode {
  readonly kind: 'expect';
  readonly span: Span;
  readonly name: WordNode;
  readonly compare: '=' | '<' | '<=' | '>' | '>=';
  readonly value: ExpressionNode | null;
  readonly tolerance: ExpressionNode | null;
}

/** `expect post us-letter` */
export interface ExpectPostNode {
  readonly kind: 'expect-post';
  readonly span: Span;
  readonly post: WordNode;
}

/** `section "Boxes": keepsake, tagged box` (no values: they were broken and have been reported) */
export interface SectionNode {
  readonly kind: 'section';
  readonly span: Span;
  readonly title: StringNode;
  readonly values: readonly ItemNode[];
}

export type ItemNode = StringNode | PhraseNode | SizeNode | ExpressionNode;

/** `"Half-letter card"`; `value` has its escapes resolved. */
export interface StringNode {
  readonly kind: 'string';
  readonly span: Span;
  readonly value: string;
}

/** A word followed by atoms: `half letter`, `blunt 20 rounded 3` */
export interface PhraseNode {
  readonly kind: 'phrase';
  readonly span: Span;
  readonly atoms: readonly AtomNode[];
}

/** `8 1/2 x 5 1/2` */
export interface SizeNode {
  readonly kind: 'size';
  readonly span: Span;
  readonly first: ExpressionNode;
  readonly second: ExpressionNode;
}

export type ExpressionNode = BinaryNode | NegateNode | AtomNode;
export type AtomNode = NumberNode | WordNode | GroupNode;

export interface BinaryNode {
  readonly kind: 'binary';
  readonly span: Span;
  readonly operator: '+' | '-' | '*' | '/';
  readonly left: ExpressionNode;
  readonly right: ExpressionNode;
}

export interface NegateNode {
  readonly kind: 'negate';
  readonly span: Span;
  readonly operand: ExpressionNode;
}

/** `( … )` */
export interface GroupNode {
  readonly kind: 'group';
  readonly span: Span;
  readonly inner: ExpressionNode;
}

/** `5 1/2 in`: the value of the number alone, and its unit as written. The span covers both. */
export interface NumberNode {
  readonly kind: 'number';
  readonly span: Span;
  readonly value: number;
  readonly unit: UnitNode | null;
}

/** A unit's words joined by one space, `"` and `″` kept: `in`, `lb cover`, `%`. Not yet known to exist. */
export interface UnitNode {
  readonly kind: 'unit';
  readonly span: Span;
  readonly text: string;
}

export interface WordNode {
  readonly kind: 'word';
  readonly span: Span;
  readonly text: string;
}
