/**
 * The path of a recipe file that was likely meant by what follows a `use`: with `/` between folders, from the file that it
 * stands in, with its ending. Null where it names no file: nothing at all, or a folder.
 */
export function recipePath(written: string): string | null {
  const way = written.replaceAll('\\', '/');
  const path = /^(?:[A-Za-z]:)?\//.test(way) ? way.slice(way.lastIndexOf('/') + 1) : way;
  if (path.endsWith('.plica')) return path;
  const bare = path.replace(/\.[^./]*$/, '');
  return /(?:^|\/)\.*$/.test(bare) ? null : `${bare}.plica`;
}
