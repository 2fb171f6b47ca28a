import { BOOK_FORMATS } from '../../emit/catalogue/formats.js';
import { type Command, complain } from '../command.js';
import { STRICT } from '../compile-inputs.js';

export const catalogue: Command = {
  name: 'catalogue',
  operands: '[DIR] --out FILE',
  takes: [0, 1],
  summary: 'make one book of a folder of recipes, findable by card, by sheet, by depth',
  details: `Makes one catalogue of all envelopes in a folder (or in the working folder). The ending of
FILE says what kind:
${BOOK_FORMATS.map(({ endings, summary }) => `  ${(endings[0] ?? '').padEnd(6)} ${summary}`).join('\n')}
Title, sections and page are those of the \`catalogue\` in the folder's catalogue.plica. What
has an error is left out, and told on a page of its own. FILE is replaced when the new one is
whole. What is costly to draw is kept in .plica-leaves beside FILE for the next time.`,
  example: 'plica catalogue specs --out tides.pdf --booklet',
  options: [
    { name: 'out', value: 'FILE', meaning: 'the file to write' },
    {
      name: 'booklet',
      value: null,
      meaning: 'two pages to a sheet, for printing on both sides, folding and stapling (PDF)',
    },
    STRICT,
    { name: 'no-cache', value: null, meaning: 'draw everything anew, and keep nothing for the next time' },
    {
      name: 'from-facts',
      value: 'DIR,…',
      meaning: 'assemble the book from what `build --emit facts` wrote, instead of compiling recipes',
    },
  ],
  run: async (given, host) => {
    const { readOrder } = await import('../catalogue/order.js');
    const order = readOrder(given, host);
    if (typeof order === 'string') {
      complain(host, order);
      return 2;
    }
    const { writeBook } = await import('../catalogue/write-book.js');
    return writeBook(order, host);
  },
};
