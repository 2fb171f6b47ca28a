import { plainLine } from '../../text/plain-line.js';

/**
 * A text as a value that readers show as it stands, on one line. Where characters would be read as a code (`%%d` a degree
 * sign, `^J` a line end, `\U+00B0` a character by its number), each that begins one is spelled by the code for itself.
 */
export const textValue = (text: string): string =>
  plainLine(text)
    .replace(/%{2,}/g, (run) => '%%%'.repeat(run.length))
    .replaceAll('^', '^ ')
    .replace(/\\(?=[UM]\+)/gi, '\\U+005C');
