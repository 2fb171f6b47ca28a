/** A figure of the facts in a maker's words, by its public name; a name that has none is read as it stands. */
export const figureWords = (name: string): string => WORDS.get(name) ?? name.replaceAll('-', ' ');

const WORDS: ReadonlyMap<string, string> = new Map([
  ['face-width', 'face, width'],
  ['face-height', 'face, height'],
  ['depth', 'wall of the box'],
  ['room-width', 'room, card’s width'],
  ['room-height', 'room, card’s height'],
  ['room-depth', 'room, card’s depth'],
  ['crossing', 'marks pass by'],
  ['closure', 'closure of the flap'],
  ['flap-stop', 'tip to opposite fold'],
  ['bare', 'back left bare'],
  ['per-sheet', 'blanks from a sheet'],
  ['layers', 'layers on the back'],
  ['diagonal', 'blank, corner to corner'],
  ['tape-length', 'tape or glue in all'],
  ['liner-width', 'lining, width'],
  ['liner-height', 'lining, height'],
]);
