import type { Host } from '../../host/host.js';
import type { Arguments } from '../arguments.js';
import { type Command, worst } from '../command.js';
import { choose, codeOf, compileInputs, ONLY } from '../compile-inputs.js';
import { paletteFor } from '../palette.js';
import { sayFindings } from '../say-findings.js';
import { textWidth } from '../text-width.js';
import type { CompiledRecipe } from '../../compile.js';

export const show: Command = {
  name: 'show',
  operands: 'PATH…',
  takes: [1, Infinity],
  summary: 'print the cut sheet: what to cut, mark, score and glue, in order',
  details: `Prints the cut sheet of every envelope in the files given, as a person needs it at the
bench. Warnings about an envelope stand on its sheet.`,
  example: 'plica show specs/tide-tables.plica --only half-letter',
  options: [
    ONLY,
    {
      name: 'format',
      value: 'FORMAT',
      choices: ['text', 'json'],
      meaning: 'for people, or every figure in mm for programs',
    },
  ],
  run: async (given, host) => {
    const { recipes, others, code } = choose(given, host, await compileInputs(given, host));
    await sayFindings(others, given, host);
    if (recipes.length > 0) {
      const text =
        given.value('format') === 'json' ? await facts(recipes) : await sheets(recipes, given, host);
      host.out.write(text);
    }
    return worst(code, codeOf([...others, ...recipes.flatMap(({ diagnostics }) => diagnostics)], given));
  },
};

async function facts(recipes: readonly CompiledRecipe[]): Promise<string> {
  const { renderFacts } = await import('../../emit/json/render-facts.js');
  return renderFacts(recipes);
}

async function sheets(recipes: readonly CompiledRecipe[], given: Arguments, host: Host): Promise<string> {
  const { cutSheet } = await import('../../emit/cut-sheet/sheet.js');
  const { renderSheetText } = await import('../../emit/cut-sheet/render-text.js');
  const palette = (await paletteFor(host.out, host, given)) ?? undefined;
  const width = textWidth(host.out);
  return recipes.map((recipe) => renderSheetText(cutSheet(recipe), palette, width)).join('\n\n');
}
