import { dirname, relative } from 'node:path';
import { findRecipes } from '../../host/find-recipes.js';
import type { Host } from '../../host/host.js';
import { projectRoot } from '../../host/project-root.js';
import { shown } from '../../host/reader.js';
import { byText } from '../../text/by-text.js';
import { visible } from '../../text/visible.js';
import type { BookFile } from './leaf-work.js';

/** The recipe files of a folder, in the order of the book, and what could not be looked into. */
export interface BookFiles {
  readonly files: readonly BookFile[];
  readonly troubles: readonly string[];
}

export function bookFiles(folder: string, host: Host): BookFiles {
  const { files, unreadable } = findRecipes(host, folder);
  const placed = files.map((path) => bookFile(path, folder, host)).filter((file) => file !== null);
  return {
    files: [...new Map(placed.map((file) => [file.id, file])).values()].sort((a, b) =>
      byText(a.label, b.label),
    ),
    troubles: unreadable.map(({ path, reason }) => `${visible(shown(path))}: ${reason}`),
  };
}

/** A recipe file as a book of a folder knows it; null: there is none. */
export function bookFile(path: string, folder: string, host: Host): BookFile | null {
  const id = host.realPath(path);
  if (id === null) return null;
  const root = projectRoot(host, dirname(id), host.realPath(folder) ?? folder);
  return { id, root, label: shown(relative(root, id)) };
}
