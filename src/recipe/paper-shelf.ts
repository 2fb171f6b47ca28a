import { isBroken, stated } from './gathered.js';
import type { Gathered } from './likes.js';
import type { BlockDeclaration } from './names.js';
import type { Stated } from './origin.js';
import type { Paper } from './recipe.js';

/** The paper that a block declares, or null where it is broken, which has been reported. */
export type PaperShelf = (declaration: BlockDeclaration) => Paper | null;

/** A shelf on which each paper is worked out once, of all that its block states. */
export function paperShelf(gathered: (declaration: BlockDeclaration) => Gathered | null): PaperShelf {
  const shelf = new Map<BlockDeclaration, Paper | null>();
  return (declaration) => {
    const known = shelf.get(declaration);
    if (known !== undefined) return known;
    const paper = resolvePaper(declaration, gathered(declaration));
    shelf.set(declaration, paper);
    return paper;
  };
}

/** The paper that is named, or null where none is, or where it is broken (reported). */
export function onShelf(named: Stated<BlockDeclaration> | null, papers: PaperShelf): Stated<Paper> | null {
  const paper = named && papers(named.value);
  return named && paper && { value: paper, origin: named.origin };
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
