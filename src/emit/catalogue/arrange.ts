import type { Catalogue, CatalogueSection, Taken } from '../../recipe/catalogue.js';
import type { Size } from '../../recipe/recipe.js';
import type { Units } from '../../measure/unit.js';
import { byText } from '../../text/by-text.js';
import type { Found } from '../json/found.js';
import type { Book, Chapter } from './book.js';
import type { Row } from './leaf.js';

/** Pages where nothing is stated, upright, in mm: half a letter sheet, and A5 (ISO 216). */
const HALF_LETTER: Size = { width: 139.7, height: 215.9 };
const A5: Size = { width: 148, height: 210 };

/** What no section takes, where there are sections. */
const OTHERS = 'Others';

export interface Gathered {
  readonly catalogue: Catalogue | null;
  /** What the book is called where no statement says so. */
  readonly folder: string;
  /** In the order of the folder. */
  readonly rows: readonly Row[];
  readonly problems: readonly Found[];
}

/** Puts a folder's recipes in the order in which the book has them. */
export function arrange({ catalogue, folder, rows, problems }: Gathered): Book {
  const units = catalogue?.units ?? rows[0]?.units ?? 'mm';
  return {
    title: catalogue?.title ?? folder,
    by: catalogue?.by ?? null,
    note: catalogue?.note ?? [],
    foreword: catalogue?.foreword ?? [],
    units,
    page: catalogue?.page ?? pageFor(units),
    chapters: chaptersOf(catalogue?.sections ?? [], rows),
    problems: [...problems].sort(byPlace),
  };
}

const pageFor = (units: Units): Size => (units === 'in' ? HALF_LETTER : A5);

/**
 * A recipe stands once: in the section that names it, else in the first that takes one of its tags, else last. A section has
 * what it names and takes in the order written, those of a tag in the order of the folder.
 */
function chaptersOf(sections: readonly CatalogueSection[], rows: readonly Row[]): readonly Chapter[] {
  if (sections.length === 0) return rows.length > 0 ? [{ title: null, rows }] : [];
  const byName = new Map(rows.map((row) => [row.name, row]));
  const byTag = groupedByTag(rows);
  const named = new Set(
    sections.flatMap(({ takes }) => takes.filter(({ by }) => by === 'name')).map(({ word }) => word),
  );
  const taken = new Set<Row>();
  const take = ({ by, word }: Taken): readonly Row[] => {
    const wanted =
      by === 'name' ? [byName.get(word)] : (byTag.get(word) ?? []).filter(({ name }) => !named.has(name));
    const fresh = wanted.filter((row): row is Row => row !== undefined && !taken.has(row));
    for (const row of fresh) taken.add(row);
    return fresh;
  };
  const chapters: Chapter[] = sections.map(({ title, takes }) => ({ title, rows: takes.flatMap(take) }));
  chapters.push({ title: OTHERS, rows: rows.filter((row) => !taken.has(row)) });
  return chapters.filter((chapter) => chapter.rows.length > 0);
}

function groupedByTag(rows: readonly Row[]): ReadonlyMap<string, readonly Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows)
    for (const tag of row.tags) {
      const group = groups.get(tag) ?? [];
      group.push(row);
      groups.set(tag, group);
    }
  return groups;
}

const byPlace = (a: Found, b: Found): number =>
  byText(a.file, b.file) || a.line - b.line || a.column - b.column || byText(a.rule, b.rule);
