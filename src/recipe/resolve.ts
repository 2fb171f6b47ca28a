import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import { type Orderer, resolveBatch } from './resolve-batch.js';
import type { Batch } from './batch.js';
import { type Block, readBlock } from './blocks.js';
import type { Catalogue } from './catalogue.js';
import { withDefaults } from './defaults.js';
import { isBroken, stated } from './gathered.js';
import { workOutLets } from './lets.js';
import { followLikes, type Gathered, gather, type Lineage } from './likes.js';
import { type BlockDeclaration, gatherNames } from './names.js';
import type { Stated } from './origin.js';
import { doubtPaper } from './paper-doubts.js';
import type { Context } from './place.js';
import { conflict, missing, repeated } from './problems.js';
import { isProperty } from './properties.js';
import { readCatalogue } from './read-catalogue.js';
import type { Input, Reader } from './reader.js';
import type { Envelope, Paper } from './recipe.js';
import { saidOnce } from './said-once.js';
import type { CatalogueNode } from '../syntax/ast.js';
import type { Source } from '../text/source.js';
import type { Span } from '../text/span.js';
import { loadFiles, type RecipeFile } from './uses.js';

export interface Resolved {
  /** Of the given files, in their order. Those with an error in what matters on paper are left out. */
  readonly envelopes: readonly Envelope[];
  /** Of the given files and all they use, in no order that matters: slips of writing, and what could not be resolved. */
  readonly diagnostics: readonly Diagnostic[];
  /** The `catalogue` statements of the given files. */
  readonly catalogues: readonly Catalogue[];
  /** The `batch` statements of the given files, in their order. Those with an error are left out. */
  readonly batches: readonly Batch[];
  /** Of the given files and all they use. Those with an error are left out. */
  readonly papers: readonly Paper[];
  /** How many statements and entries there are in all these files. */
  readonly statements: number;
}

/** From files to envelopes: what they use is read, names are found, `like` is followed, sums are done, defaults filled in. */
export function resolve(inputs: readonly Input[], read: Reader): Resolved {
  const diagnostics: Diagnostic[] = [];
  const tell = (finding: Diagnostic): void => void diagnostics.push(finding);

  const files = loadFiles(inputs, read, tell);
  const names = gatherNames(files, tell);
  const context: Context = {
    names,
    isProperty,
    tell,
    lets: new Map(),
    badUnits: new Set(),
    unitless: new Set(files.filter(({ units }) => units === 'broken').map(({ source }) => source)),
  };
  workOutLets(context);

  const declarations = names.all.filter(
    (declaration): declaration is BlockDeclaration => declaration.kind !== 'let',
  );
  const blocks = new Map(declarations.map((declaration) => [declaration, readBlock(declaration, context)]));
  const gathered = gatherer(blocks, followLikes(declarations, context));
  const papers = paperShelf(gathered);
  for (const declaration of declarations) {
    const paper = declaration.kind === 'paper' ? gathered(declaration) : null;
    const doubt = paper && doubtPaper(paper);
    if (doubt) tell(doubt);
  }

  const order = new Map(inputs.map(({ source }, index) => [source, index]));
  const place = ({ file }: BlockDeclaration): number => order.get(file.source) ?? order.size;
  const given = (kind: BlockDeclaration['kind']): readonly BlockDeclaration[] =>
    declarations
      .filter(
        (declaration) =>
          declaration.kind === kind && declaration.file.given && !names.refused.has(declaration),
      )
      .sort((a, b) => place(a) - place(b));
  const envelopes = given('envelope').flatMap(
    (declaration) => resolveEnvelope(declaration, gathered(declaration), papers, tell) ?? [],
  );
  const ordered: Orderer = ({ envelope, paper, span }) =>
    resolveEnvelope(
      envelope,
      onPaper(gathered(envelope), paper, span),
      papers,
      envelope.file.given ? () => {} : tell,
    );
  const batches = given('batch').flatMap(
    (declaration) => resolveBatch(declaration, gathered(declaration), ordered, tell) ?? [],
  );
  const shelf = declarations.flatMap((declaration) =>
    declaration.kind === 'paper' && !names.refused.has(declaration) ? (papers(declaration) ?? []) : [],
  );
  const catalogues = readCatalogues(files, context);
  const statements = files.reduce((sum, file) => sum + file.statements, 0);
  return { envelopes, diagnostics: saidOnce(diagnostics), catalogues, batches, papers: shelf, statements };
}

/** The catalogues of the given files; a folder has one. */
function readCatalogues(files: readonly RecipeFile[], context: Context): readonly Catalogue[] {
  const all = files
    .filter(({ given }) => given)
    .flatMap((file) =>
      file.node.statements.flatMap((node) =>
        node.kind === 'catalogue' ? [{ node, catalogue: readCatalogue(node, file, context) }] : [],
      ),
    );
  const firsts = new Map<Source, CatalogueNode>();
  for (const { node } of all) {
    const { source } = node.span;
    const first = firsts.get(source);
    if (first === undefined) firsts.set(source, node);
    else context.tell(secondCatalogue(node, first));
    if (first === undefined && !READ_FROM.test(source.name)) context.tell(readElsewhere(node));
  }
  return all.map(({ catalogue }) => catalogue);
}

/** Where a command looks for the statement; standard input may stand for it. */
const READ_FROM = /(?:^|\/)catalogue\.plica$|^<stdin>$/;

const secondCatalogue = ({ head }: CatalogueNode, first: CatalogueNode): Diagnostic =>
  report(repeated, {
    message: 'a file states one catalogue, and this is another',
    at: head.span,
    label: 'again here',
    related: [{ span: first.head.span, text: 'first stated here' }],
    help: 'join the two',
  });

const readElsewhere = ({ head }: CatalogueNode): Diagnostic =>
  report(conflict, {
    message: 'this catalogue is read from nowhere',
    severity: 'warning',
    at: head.span,
    why: 'the statement of a folder is that of its `catalogue.plica`',
    help: 'move it to `catalogue.plica`, at the top of the folder',
  });

/** All that a block states, itself and by its `like`; null where some of it is lost. */
type Gatherer = (declaration: BlockDeclaration) => Gathered | null;

function gatherer(blocks: ReadonlyMap<BlockDeclaration, Block>, lineage: Lineage): Gatherer {
  return (declaration) => {
    const chain = lineage(declaration)?.map((each) => blocks.get(each) as Block);
    return chain && !chain.some(({ broken }) => broken) ? gather(chain) : null;
  };
}

function resolveEnvelope(
  { node, file }: BlockDeclaration,
  gathered: Gathered | null,
  papers: (declaration: BlockDeclaration) => Paper | null,
  tell: (finding: Diagnostic) => void,
): Envelope | null {
  if (gathered === null) return null;
  const card = stated(gathered, 'card');
  if (card === null && gathered.entries.get('card')?.state !== 'broken')
    tell(cardMissing(node, file.units === 'in'));
  if (card === null || isBroken(gathered) || file.units === 'broken') return null;
  const named = { paper: stated(gathered, 'paper'), linerPaper: stated(gathered, 'liner-paper') };
  const paper = onShelf(named.paper, papers);
  const linerPaper = onShelf(named.linerPaper, papers);
  if ((named.paper && paper === null) || (named.linerPaper && linerPaper === null)) return null;
  const units = file.units === 'none' ? 'mm' : file.units;
  const header = { name: node.name.text, span: node.name.span, statement: node.span, units };
  return withDefaults(header, card, { paper, linerPaper }, gathered);
}

/** The same cut from another paper, which is named at `span`. What it expects of its figures holds on its own paper only. */
const onPaper = (gathered: Gathered | null, paper: BlockDeclaration | null, span: Span): Gathered | null =>
  gathered && paper
    ? {
        ...gathered,
        expects: [],
        entries: new Map(gathered.entries).set('paper', { state: 'stated', value: paper, span, from: null }),
      }
    : gathered;

/** The paper that is named, or null where none is, or where it is broken (reported). */
function onShelf(
  named: Stated<BlockDeclaration> | null,
  papers: (declaration: BlockDeclaration) => Paper | null,
): Stated<Paper> | null {
  const paper = named && papers(named.value);
  return named && paper && { value: paper, origin: named.origin };
}

const cardMissing = ({ name, like }: BlockDeclaration['node'], inches: boolean): Diagnostic =>
  report(missing, {
    message: `\`${name.text}\` has no \`card\``,
    at: name.span,
    why: like
      ? `neither it nor what it is like (\`${like.text}\`) states one, and everything else is derived from the card`
      : 'everything else is derived from the card',
    help: `add a line \`card: ${inches ? '8 1/2 x 5 1/2' : '148 x 105 mm'}\` with the sides of the folded card`,
  });

/** Each paper, worked out once; null where it is broken, which has been reported. */
function paperShelf(gathered: Gatherer): (declaration: BlockDeclaration) => Paper | null {
  const shelf = new Map<BlockDeclaration, Paper | null>();
  return (declaration) => {
    const known = shelf.get(declaration);
    if (known !== undefined) return known;
    const paper = resolvePaper(declaration, gathered(declaration));
    shelf.set(declaration, paper);
    return paper;
  };
}

function resolvePaper({ node: { name } }: BlockDeclaration, gathered: Gathered | null): Paper | null {
  if (gathered === null || isBroken(gathered)) return null;
  return {
    name: name.text,
    span: name.span,
    title: stated(gathered, 'title')?.value ?? name.text,
    sheet: stated(gathered, 'sheet'),
    weight: stated(gathered, 'weight'),
    caliper: stated(gathered, 'caliper'),
    grain: stated(gathered, 'grain')?.value ?? null,
    price: stated(gathered, 'price')?.value ?? null,
    stock: stated(gathered, 'stock')?.value ?? null,
    layers: gathered.layers,
  };
}
