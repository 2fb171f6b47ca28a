import type { Diagnostic, Label } from '../diagnostics/diagnostic.js';
import { report } from '../diagnostics/problem.js';
import { sizeNamed } from '../stock/sizes.js';
import type { BlockNode, LetNode, WordNode } from '../syntax/ast.js';
import { nearest } from '../text/nearest.js';
import { repeated } from './problems.js';
import type { RecipeFile } from './uses.js';

/** A name and what it was declared as. */
export type Declaration =
  | { readonly kind: 'let'; readonly node: LetNode; readonly file: RecipeFile }
  | { readonly kind: BlockNode['type']; readonly node: BlockNode; readonly file: RecipeFile };

export type BlockDeclaration = Exclude<Declaration, { readonly kind: 'let' }>;

/** The names of all files, and who sees which. */
export interface Names {
  /** Every declaration, also those whose name is taken. */
  readonly all: readonly Declaration[];
  /** Those that were refused because their name is taken. */
  readonly refused: ReadonlySet<Declaration>;
  /** What a name means in a file: its own, else that of a file it uses. */
  readonly find: (name: string, from: RecipeFile) => Declaration | undefined;
  /** A declaration of that name that the file does not see. */
  readonly elsewhere: (name: string, from: RecipeFile) => Declaration | undefined;
  /** The names of these kinds, or other words, that a slip may have turned into `word`. */
  readonly near: (
    word: string,
    from: RecipeFile,
    kinds: readonly Declaration['kind'][],
    others?: Iterable<string>,
  ) => string[];
  /** False where a slip of writing or a broken `use` may hide names from the file. */
  readonly complete: (file: RecipeFile) => boolean;
}

/** How many names are compared with misspelt words in one run, so that a file of nothing else stays quick to refuse. */
const MOST_COMPARED = 200_000;

/** Gathers what every file declares. Reports names that are taken: two in sight of one file, or of a size. */
export function gatherNames(files: readonly RecipeFile[], tell: (finding: Diagnostic) => void): Names {
  const reach = new Map(files.map((file) => [file, reachOf(file)]));
  const own = new Map<RecipeFile, Map<string, Declaration>>();
  const byName = new Map<string, Declaration[]>();
  const all: Declaration[] = [];
  const refused = new Set<Declaration>();
  const refuse = (declaration: Declaration, finding: Diagnostic): void => {
    refused.add(declaration);
    tell(finding);
  };

  for (const file of files) {
    const names = new Map<string, Declaration>();
    own.set(file, names);
    for (const declaration of declarations(file)) {
      all.push(declaration);
      const name = declaration.node.name.text;
      const earlier = names.get(name);
      const size = declaration.kind === 'let' ? sizeNamed(name) : undefined;
      if (size) refuse(declaration, sizeName(declaration.node.name, size.name));
      else if (earlier) refuse(declaration, taken(declaration, earlier));
      else {
        names.set(name, declaration);
        append(byName, name, declaration);
      }
    }
  }

  for (const { later, earlier } of clashes(byName, reach)) refuse(later, taken(later, earlier));
  for (const { later, earlier } of repeatedEnvelopes(byName, refused)) {
    refuse(
      later,
      taken(later, earlier, 'each envelope of a command names its own drawings, so no two share a name'),
    );
  }

  const find = (name: string, from: RecipeFile): Declaration | undefined => {
    const mine = own.get(from)?.get(name);
    if (mine) return mine;
    const seen = reach.get(from) ?? new Set();
    const named = byName.get(name) ?? [];
    if (named.length <= seen.size) return named.find(({ file }) => seen.has(file));
    for (const file of seen) {
      const declaration = own.get(file)?.get(name);
      if (declaration) return declaration;
    }
    return undefined;
  };

  let compared = 0;
  const near: Names['near'] = (word, from, kinds, others = []) => {
    const candidates = [...others];
    for (const file of reach.get(from) ?? []) {
      if (compared > MOST_COMPARED) return [];
      for (const [name, { kind }] of own.get(file) ?? []) if (kinds.includes(kind)) candidates.push(name);
      compared += candidates.length;
    }
    return nearest(word, candidates);
  };

  return {
    all,
    refused,
    find,
    elsewhere: (name, from) => byName.get(name)?.find(({ file }) => !reach.get(from)?.has(file)),
    near,
    complete: (file) => [...(reach.get(file) ?? [])].every(({ complete }) => complete),
  };
}

function append<Key, Item>(lists: Map<Key, Item[]>, key: Key, item: Item): void {
  const list = lists.get(key);
  if (list) list.push(item);
  else lists.set(key, [item]);
}

/** A file and all that it uses, itself first. */
function reachOf(file: RecipeFile): ReadonlySet<RecipeFile> {
  const reached = new Set([file]);
  for (const each of reached) for (const used of each.uses) reached.add(used);
  return reached;
}

const declarations = (file: RecipeFile): Declaration[] =>
  file.node.statements.flatMap((node): Declaration[] => {
    if (node.kind === 'let') return [{ kind: 'let', node, file }];
    return node.kind === 'block' ? [{ kind: node.type, node, file }] : [];
  });

interface Clash {
  readonly later: Declaration;
  readonly earlier: Declaration;
}

/** Names that two files declare, both in sight of one file; each declaration is at fault once. */
function clashes(
  byName: ReadonlyMap<string, readonly Declaration[]>,
  reach: ReadonlyMap<RecipeFile, ReadonlySet<RecipeFile>>,
): readonly Clash[] {
  const several = [...byName.values()].filter(({ length }) => length > 1);
  if (several.length === 0) return [];
  const seenBy = new Map<RecipeFile, RecipeFile[]>();
  for (const [file, seen] of reach) {
    for (const each of seen) append(seenBy, each, file);
  }
  return several.flatMap((named) => {
    const firstSeen = new Map<RecipeFile, Declaration>();
    return named.flatMap((declaration) => {
      let clash: Clash | null = null;
      for (const file of seenBy.get(declaration.file) ?? []) {
        const other = firstSeen.get(file);
        if (other === undefined) firstSeen.set(file, declaration);
        else clash ??= inOrder(declaration, other, file);
      }
      return clash ? [clash] : [];
    });
  });
}

/** The file that sees both is at fault if it declares one of them itself. */
const inOrder = (declaration: Declaration, other: Declaration, seer: RecipeFile): Clash =>
  other.file === seer ? { later: other, earlier: declaration } : { later: declaration, earlier: other };

/** Envelopes of one name in two given files: their drawings would have the same name. */
function repeatedEnvelopes(
  byName: ReadonlyMap<string, readonly Declaration[]>,
  refused: ReadonlySet<Declaration>,
): readonly Clash[] {
  return [...byName.values()].flatMap((named) => {
    const [earlier, ...again] = named.filter(
      (declaration) => declaration.kind === 'envelope' && declaration.file.given && !refused.has(declaration),
    );
    return earlier === undefined ? [] : again.map((later) => ({ later, earlier }));
  });
}

const ONE_SPACE =
  'lets, papers, styles, envelopes and batches share one set of names, over a file and all that it uses';

function taken(later: Declaration, earlier: Declaration, why = ONE_SPACE): Diagnostic {
  const name = later.node.name.text;
  const first: Label = {
    span: earlier.node.name.span,
    text: `first declared here, as ${A_KIND[earlier.kind]}`,
  };
  return report(repeated, {
    message: `\`${name}\` is declared twice`,
    at: later.node.name.span,
    label: `again here, as ${A_KIND[later.kind]}`,
    related: [first],
    why,
    help: 'give one of them another name, or remove it',
  });
}

const sizeName = ({ span, text }: WordNode, size: string): Diagnostic =>
  report(repeated, {
    message: `\`${text}\` is already the name of a size`,
    at: span,
    why: `\`${size}\` is in the table of named sizes, and a let of that name would change what it means`,
    help: `name it otherwise, such as \`my-${text.toLowerCase()}\``,
  });

/** A kind of declaration as findings name it. */
export const A_KIND: Readonly<Record<Declaration['kind'], string>> = {
  let: 'a let',
  paper: 'a paper',
  style: 'a style',
  envelope: 'an envelope',
  batch: 'a batch',
};
