import { type IRecognitionException, isRecognitionException, type TokenType } from 'chevrotain';
import type { Diagnostic } from '../src/diagnostics/diagnostic.js';
import type {
  AtomNode,
  BinaryNode,
  BlockNode,
  CatalogueNode,
  EntryNode,
  ExpectNode,
  ExpectPostNode,
  ExpressionNode,
  GroupNode,
  ItemNode,
  LetNode,
  NumberNode,
  PropertyNode,
  SectionNode,
  StatementNode,
  StringNode,
  UnitNode,
  UnitsNode,
  UseNode,
  WordNode,
} from '../src/syntax/ast.js';
import type { Source } from '../src/text/source.js';
import type { Span } from '../src/text/span.js';
import { type BrokenLine, brokenEntry, brokenHeader, brokenLet, nothing } from './broken.js';
import { explain } from './messages/explain.js';
import { PreparedParser } from './prepared-parser.js';
import { mostSlips } from './slip.js';
import { endOf, is, spanOf, type Token } from './token.js';
import {
  BlockType,
  Catalogue,
  CloseBrace,
  CloseBracket,
  Colon,
  Comma,
  Compare,
  Eol,
  Equals,
  Expect,
  FirstOfPhrase,
  Let,
  Like,
  Minus,
  NumberToken,
  OpenBrace,
  OpenBracket,
  Plus,
  PlusMinus,
  Post,
  Section,
  Slash,
  Star,
  Text,
  Unit,
  Units,
  Use,
  vocabulary,
  Word,
  X,
} from './tokens.js';

/** The parser's own messages are never shown: the files of messages/ word every finding. */
const silent = {
  buildMismatchTokenMessage: () => '',
  buildNotAllInputParsedMessage: () => '',
  buildNoViableAltMessage: () => '',
  buildEarlyExitMessage: () => '',
};

/**
 * The grammar. It is handed lines whose braces pair (layout/), so a slip never reaches past its line: the line it is
 * on comes back with nothing in the broken place, and parsing goes on with the next.
 */
export class RecipeParser extends PreparedParser {
  #source: Source = { name: '', text: '', lineStarts: [0] };
  #diagnostics: Diagnostic[] = [];
  /** Something on this line was wrong and has been reported; its value is not to be used. */
  #doubtful = false;
  /** Where the present line begins among the tokens. */
  #lineStart = 0;

  /** `analyse`: the library records, validates and analyses the grammar itself, for whoever wants to see what it finds. */
  constructor({ analyse }: { readonly analyse: boolean }) {
    super([...vocabulary], { maxLookahead: 1, errorMessageProvider: silent });
    if (analyse) this.performSelfAnalysis();
    else this.prepare();
  }

  read(source: Source, tokens: Token[]) {
    this.#source = source;
    this.#diagnostics = [];
    this.#lineStart = 0;
    this.input = tokens;
    const statements = this.file() ?? [];
    this.input = [];
    return { statements, diagnostics: this.#diagnostics };
  }

  readonly file = this.RULE('file', (): StatementNode[] => {
    const statements: StatementNode[] = [];
    this.MANY(() => {
      const statement = this.SUBRULE(this.statement);
      if (statement) statements.push(statement);
    });
    return statements;
  });

  private readonly statement = this.RULE('statement', (): StatementNode | null =>
    this.OR([
      { ALT: () => this.#line(() => this.SUBRULE(this.units), nothing) },
      { ALT: () => this.#line(() => this.SUBRULE(this.use), nothing) },
      { ALT: () => this.#line(() => this.SUBRULE(this.let), brokenLet) },
      { ALT: () => this.SUBRULE(this.block) },
      { ALT: () => this.SUBRULE(this.catalogue) },
    ]),
  );

  private readonly units = this.RULE('units', (): UnitsNode => {
    const first = this.CONSUME(Units);
    const unit = this.#word(this.CONSUME(Word));
    this.CONSUME(Eol);
    return { kind: 'units', span: this.#through(first, unit), unit };
  });

  private readonly use = this.RULE('use', (): UseNode => {
    const first = this.CONSUME(Use);
    const path = this.#string(this.CONSUME(Text));
    this.CONSUME(Eol);
    return { kind: 'use', span: this.#through(first, path), path };
  });

  private readonly let = this.RULE('let', (): LetNode => {
    const first = this.CONSUME(Let);
    const name = this.#word(this.CONSUME(Word));
    this.CONSUME(Equals);
    const value = this.SUBRULE(this.item);
    this.CONSUME(Eol);
    return { kind: 'let', span: this.#through(first, value), name, value };
  });

  private readonly block = this.RULE('block', (): BlockNode | null => {
    const header = this.#line(() => this.SUBRULE(this.header), brokenHeader, OpenBrace);
    const { entries, last } = this.#entries();
    return header && { ...header, span: this.#through(header, last), entries };
  });

  private readonly header = this.RULE('header', (): BlockNode => {
    const type = this.CONSUME(BlockType);
    const name = this.#word(this.CONSUME(Word));
    const like = this.OPTION(() => {
      this.CONSUME(Like);
      return this.#word(this.CONSUME2(Word));
    });
    const brace = this.CONSUME(OpenBrace);
    return {
      kind: 'block',
      span: this.#through(type, brace),
      type: type.image as BlockNode['type'],
      name,
      like: like ?? null,
      entries: [],
    };
  });

  private readonly catalogue = this.RULE('catalogue', (): CatalogueNode | null => {
    const header = this.#line(() => this.SUBRULE(this.opening), nothing, OpenBrace);
    const { entries, last } = this.#entries();
    return header && { ...header, span: this.#through(header, last), entries };
  });

  private readonly opening = this.RULE('opening', (): CatalogueNode => {
    const head = this.#word(this.CONSUME(Catalogue));
    const brace = this.CONSUME(OpenBrace);
    return { kind: 'catalogue', span: this.#through(head, brace), head, entries: [] };
  });

  private readonly entry = this.RULE(
    'entry',
    (): EntryNode =>
      this.OR([
        { ALT: () => this.SUBRULE(this.property) },
        { ALT: () => this.SUBRULE(this.expect) },
        { ALT: () => this.SUBRULE(this.section) },
      ]),
  );

  private readonly section = this.RULE('section', (): SectionNode => {
    const first = this.CONSUME(Section);
    const title = this.#string(this.CONSUME(Text));
    this.CONSUME(Colon);
    const values = this.SUBRULE(this.value);
    this.CONSUME(Eol);
    return { kind: 'section', span: this.#through(first, values[values.length - 1] ?? title), title, values };
  });

  private readonly property = this.RULE('property', (): PropertyNode => {
    const name = this.#word(this.CONSUME(Word));
    this.CONSUME(Colon);
    const values = this.SUBRULE(this.value);
    this.CONSUME(Eol);
    return { kind: 'property', span: this.#through(name, values[values.length - 1] ?? name), name, values };
  });

  private readonly expect = this.RULE('expect', (): ExpectNode | ExpectPostNode => {
    const first = this.CONSUME(Expect);
    const expected = this.OR<ExpectNode | ExpectPostNode>([
      { ALT: () => this.SUBRULE(this.taken) },
      { ALT: () => this.SUBRULE(this.comparison) },
    ]);
    this.CONSUME(Eol);
    return { ...expected, span: this.#through(first, expected) };
  });

  private readonly taken = this.RULE('taken', (): ExpectPostNode => {
    const first = this.CONSUME(Post);
    const post = this.#word(this.CONSUME(Word));
    return { kind: 'expect-post', span: this.#through(first, post), post };
  });

  private readonly comparison = this.RULE('comparison', (): ExpectNode => {
    const name = this.#word(this.CONSUME(Word));
    const compare = this.#compare(
      this.OR([{ ALT: () => this.CONSUME(Equals) }, { ALT: () => this.CONSUME(Compare) }]),
    );
    const value = this.SUBRULE(this.sum);
    const tolerance =
      this.OPTION(() => {
        this.CONSUME(PlusMinus);
        return this.SUBRULE2(this.sum);
      }) ?? null;
    return {
      kind: 'expect',
      span: this.#through(name, tolerance ?? value),
      name,
      compare,
      value,
      tolerance,
    };
  });

  private readonly value = this.RULE('value', (): ItemNode[] => {
    const items = [this.SUBRULE(this.item)];
    this.MANY(() => {
      this.CONSUME(Comma);
      items.push(this.SUBRULE2(this.item));
    });
    return items;
  });

  private readonly item = this.RULE(
    'item',
    (): ItemNode =>
      this.OR([
        { ALT: () => this.#string(this.CONSUME(Text)) },
        { ALT: () => this.SUBRULE(this.phrase) },
        { ALT: () => this.SUBRULE(this.size) },
      ]),
  );

  private readonly phrase = this.RULE('phrase', (): ItemNode => {
    const atoms: AtomNode[] = [this.#word(this.CONSUME(FirstOfPhrase))];
    this.AT_LEAST_ONE(() => atoms.push(this.SUBRULE(this.atom)));
    return { kind: 'phrase', span: this.#through(atoms[0], atoms.at(-1)), atoms };
  });

  private readonly size = this.RULE('size', (): ItemNode => {
    const first = this.SUBRULE(this.sum);
    const second = this.OPTION(() => {
      this.CONSUME(X);
      return this.SUBRULE2(this.sum);
    });
    return second === undefined ? first : { kind: 'size', span: this.#through(first, second), first, second };
  });

  private readonly sum = this.RULE('sum', (): ExpressionNode => {
    let left = this.SUBRULE(this.product);
    this.MANY(() => {
      const operator = this.OR([{ ALT: () => this.CONSUME(Plus) }, { ALT: () => this.CONSUME(Minus) }]);
      left = this.#binary(left, operator, this.SUBRULE2(this.product));
    });
    return left;
  });

  private readonly product = this.RULE('product', (): ExpressionNode => {
    let left = this.SUBRULE(this.factor);
    this.MANY(() => {
      const operator = this.OR([{ ALT: () => this.CONSUME(Star) }, { ALT: () => this.CONSUME(Slash) }]);
      left = this.#binary(left, operator, this.SUBRULE2(this.factor));
    });
    return left;
  });

  private readonly factor = this.RULE('factor', (): ExpressionNode => {
    const minus = this.OPTION(() => this.CONSUME(Minus));
    const operand = this.SUBRULE(this.atom);
    return minus === undefined ? operand : { kind: 'negate', span: this.#through(minus, operand), operand };
  });

  private readonly atom = this.RULE(
    'atom',
    (): AtomNode =>
      this.OR([
        { ALT: () => this.SUBRULE(this.number) },
        { ALT: () => this.#word(this.CONSUME(Word)) },
        { ALT: () => this.SUBRULE(this.group) },
      ]),
  );

  private readonly number = this.RULE('number', (): NumberNode => {
    const number = this.CONSUME(NumberToken);
    const unit = this.OPTION(() => {
      const first = this.CONSUME(Unit);
      const grade = this.OPTION2(() => this.CONSUME2(Unit));
      return this.#unit(first, grade);
    });
    return {
      kind: 'number',
      span: this.#through(number, unit ?? number),
      value: this.#payload(number, 0),
      unit: unit ?? null,
    };
  });

  private readonly group = this.RULE('group', (): GroupNode => {
    const first = this.CONSUME(OpenBracket);
    const inner = this.SUBRULE(this.sum);
    const last = this.CONSUME(CloseBracket);
    return { kind: 'group', span: this.#through(first, last), inner };
  });

  /** The entries of a block, and the brace that closes it. */
  #entries(): { readonly entries: readonly EntryNode[]; readonly last: Token } {
    const entries: EntryNode[] = [];
    this.MANY(() => {
      const entry = this.#line(() => this.SUBRULE(this.entry), brokenEntry);
      if (entry) entries.push(entry);
    });
    const last = this.CONSUME(CloseBrace);
    this.CONSUME(Eol);
    return { entries, last };
  }

  /**
   * Parses up to and with the token that ends a line. A line that cannot be read is explained once, passed over, and
   * comes back broken; so does one in which something doubtful was met.
   */
  #line<Node>(read: () => Node, broken: (line: BrokenLine) => Node | null, end = Eol): Node | null {
    this.#doubtful = false;
    const first = this.LA(1) as Token;
    try {
      const node = read();
      return this.#doubtful ? broken(this.#brokenLine(first, end)) : node;
    } catch (error) {
      if (!isRecognitionException(error as Error)) throw error;
      const line = this.#brokenLine(first, end);
      const finding = explain(line, (error as IRecognitionException).token);
      if (finding !== null) this.#diagnostics.push(finding);
      if (this.#diagnostics.length > mostSlips) throw error;
      while (!is(this.LA(1), end)) this.SKIP_TOKEN();
      this.SKIP_TOKEN();
      return broken(line);
    }
  }

  #brokenLine(first: Token, end: TokenType): BrokenLine {
    const from = this.input.indexOf(first, this.#lineStart);
    let to = from;
    while (to < this.input.length && !is(this.input[to], end)) to++;
    this.#lineStart = to;
    return { source: this.#source, tokens: this.input.slice(from, to + 1) };
  }

  #through(first: Token | Placed | undefined, last: Token | Placed | undefined): Span {
    return { source: this.#source, start: startOf(first), end: finishOf(last) };
  }

  /** The value a token carries; none when it was wrong. */
  #payload<Value extends string | number>(token: Token, instead: Value): Value {
    if (token.payload === null) this.#doubtful = true;
    return (token.payload ?? instead) as Value;
  }

  #word(token: Token): WordNode {
    return { kind: 'word', span: spanOf(this.#source, token), text: token.image };
  }

  #string(token: Token): StringNode {
    return { kind: 'string', span: spanOf(this.#source, token), value: this.#payload(token, '') };
  }

  #unit(first: Token, grade: Token | undefined): UnitNode {
    this.#payload(first, '');
    const text = grade === undefined ? first.image : `${first.image} ${grade.image}`;
    return { kind: 'unit', span: this.#through(first, grade ?? first), text };
  }

  #compare(token: Token): ExpectNode['compare'] {
    return this.#payload<ExpectNode['compare']>(token, '=');
  }

  #binary(left: ExpressionNode, operator: Token, right: ExpressionNode): BinaryNode {
    this.#payload(operator, '');
    return {
      kind: 'binary',
      span: this.#through(left, right),
      operator: operator.image as BinaryNode['operator'],
      left,
      right,
    };
  }
}

type Placed = { readonly span: Span };

// While the parser records its own grammar there are no nodes, and so no spans.
const startOf = (edge: Token | Placed | undefined): number =>
  edge === undefined ? 0 : 'startOffset' in edge ? edge.startOffset : (edge.span?.start ?? 0);

const finishOf = (edge: Token | Placed | undefined): number =>
  edge === undefined ? 0 : 'startOffset' in edge ? endOf(edge) : (edge.span?.end ?? 0);
