import { type Command, complain } from '../command.js';

export const fit: Command = {
  name: 'fit',
  operands: '[PATH…]',
  takes: [0, Infinity],
  summary: 'the other way round: what a sheet, a card or an old blank can be',
  details: `With \`--sheet\`: the largest card of each shape whose envelope passes every check on that
sheet (one step of the ruler more fails one), the sizes by name that it serves, and those
recipes of the files given. With \`--card\`: the recipe to write, with walls where the filled
card is thicker than 3 mm, the papers of the files given that hold its blank, and the
recipes that take the card as they are. With \`--card\` and \`--blank\`: what an old blank
leaves. \`--as-recipe\` prints a recipe that \`plica check\` accepts, and nothing else.`,
  example: 'plica fit specs --card 5x7in --bulk 4mm',
  options: [
    { name: 'sheet', value: 'SIZE', meaning: 'a sheet of paper, as 12x12in or SRA3' },
    { name: 'card', value: 'SIZE', meaning: 'a folded card, as 5x7in or A6' },
    { name: 'bulk', value: 'LENGTH', meaning: 'thickness of the filled card' },
    { name: 'depth', value: 'LENGTH', meaning: 'the walls of a box' },
    { name: 'blank', value: 'LENGTH', meaning: 'a blank that is cut already' },
    { name: 'shape', value: 'SIZE', meaning: 'the one shape to find the largest card of, as 5x7in' },
    {
      name: 'units',
      value: 'UNITS',
      choices: ['mm', 'cm', 'in'],
      meaning: 'those of the answer (left out: those of the sheet or card)',
    },
    { name: 'as-recipe', value: null, meaning: 'print the recipe alone' },
    { name: 'format', value: 'FORMAT', choices: ['text', 'json'], meaning: 'for people, or for programs' },
  ],
  run: async (given, host) => {
    const { readOrder } = await import('../fit/order.js');
    const order = readOrder(given);
    if (typeof order === 'string') {
      complain(host, order);
      return 2;
    }
    const { answer } = await import('../fit/answer.js');
    return answer(order, given, host);
  },
};
