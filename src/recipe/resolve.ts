import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Batch } from './batch.js';
import { type Block, readBlock } from './blocks.js';
import type { Catalogue } from './catalogue.js';
import { doubtCard } from './card-doubts.js';
import { workOutLets } from './lets.js';
import { followLikes, type Gathered, gather, type Lineage } from './likes.js';
import { type BlockDeclaration, gatherNames } from './names.js';
import { doubtPaper } from './paper-doubts.js';
import { paperShelf } from './paper-shelf.js';
import type { Context } from './place.js';
import { isProperty } from './properties.js';
import { readCatalogues } from './read-catalogues.js';
import type { Input, Reader } from './reader.js';
import type { Envelope, Paper } from './recipe.js';
import { type Orderer, resolveBatch } from './resolve-batch.js';
import { onPaper, resolveEnvelope } from './resolve-envelope.js';
import { saidOnce } from './said-once.js';
import { loadFiles } from './uses.js';

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
  for (const envelope of envelopes) {
    const doubt = doubtCard(envelope);
    if (doubt) tell(doubt);
  }
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

/** All that a block states, itself and by its `like`; null where some of it is lost. */
type Gatherer = (declaration: BlockDeclaration) => Gathered | null;

function gatherer(blocks: ReadonlyMap<BlockDeclaration, Block>, lineage: Lineage): Gatherer {
  return (declaration) => {
    const chain = lineage(declaration)?.map((each) => blocks.get(each) as Block);
    return chain && !chain.some(({ broken }) => broken) ? gather(chain) : null;
  };
}
