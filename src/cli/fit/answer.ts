import { compileEnvelope, tryEnvelope } from '../../compile.js';
import type { CardFit, SheetFit } from '../../fit/fit.js';
import { fitCard } from '../../fit/fit-card.js';
import { fitSheet } from '../../fit/fit-sheet.js';
import { recipeText, type Tried, type Wish } from '../../fit/wish.js';
import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import { resolve } from '../../recipe/resolve.js';
import type { Host } from '../../host/host.js';
import { source } from '../../text/source.js';
import type { Arguments } from '../arguments.js';
import { complain, type ExitCode, worst } from '../command.js';
import { codeOf, type Compiled, compileInputs, hasErrors } from '../compile-inputs.js';
import { paletteFor } from '../palette.js';
import { sayFindings } from '../say-findings.js';
import { textWidth } from '../text-width.js';
import type { Order } from './order.js';

/** Finds what is asked for and prints it. Ends with 1 where nothing fits, or what fits has an error. */
export async function answer(order: Order, given: Arguments, host: Host): Promise<ExitCode> {
  const atHand = given.operands.length === 0 ? NOTHING : await compileInputs(given, host);
  await sayFindings(
    atHand.diagnostics.filter(({ severity }) => severity === 'error'),
    given,
    host,
  );
  const found = order.kind === 'sheet' ? ofSheet(order, atHand) : ofCard(order, atHand);
  if (found === null) {
    complain(host, 'no recipe can be written of that: its sides are too small or too large');
    return worst(atHand.code, 1);
  }
  const [wish] = wishesOf(found);
  if (wish === undefined) {
    complain(host, 'no card fits: the sheet is too small for an envelope that passes every check');
    return worst(atHand.code, 1);
  }
  const own = found.kind === 'card' ? compileEnvelope(found.tried.envelope).diagnostics : [];
  if (own.length > 0 && given.value('format') !== 'json') await sayFindings(own, given, host);
  host.out.write(given.has('as-recipe') ? recipeText(wish) : await printed(found, own, given, host));
  return worst(atHand.code, codeOf(own, given));
}

const NOTHING: Compiled = { recipes: [], batches: [], papers: [], diagnostics: [], files: 0, code: 0 };

const ofSheet = ({ sheet, ...how }: Extract<Order, { kind: 'sheet' }>, { recipes }: Compiled): SheetFit =>
  fitSheet(sheet, how, sound(recipes), tryRecipe);

function ofCard(
  { units, card, bulk, depth, blank }: Extract<Order, { kind: 'card' }>,
  atHand: Compiled,
): CardFit | null {
  const wish: Wish = {
    units,
    card,
    ...(bulk === null ? {} : { bulk }),
    ...(depth === null ? {} : { depth }),
    ...(blank === null ? {} : { blank }),
  };
  const { papers, recipes } = atHand;
  return fitCard(wish, { papers, recipes: sound(recipes) }, tryRecipe, tryEnvelope);
}

const sound = (recipes: Compiled['recipes']): Compiled['recipes'] =>
  recipes.filter(({ diagnostics }) => !hasErrors(diagnostics));

/** Tries the text of a recipe that uses no other file; null where the language has something against it. */
export function tryRecipe(text: string): Tried | null {
  const { envelopes, diagnostics } = resolve(
    [{ id: 'fit.plica', source: source('fit.plica', text) }],
    () => ({
      kind: 'unreadable',
      reason: 'it uses no other file',
    }),
  );
  const [envelope] = envelopes;
  return envelope && diagnostics.length === 0 ? tryEnvelope(envelope) : null;
}

const wishesOf = (fit: SheetFit | CardFit): readonly Wish[] =>
  fit.kind === 'card' ? [fit.wish] : fit.largest.flatMap(({ found }) => (found ? [found.wish] : []));

async function printed(
  fit: SheetFit | CardFit,
  own: readonly Diagnostic[],
  given: Arguments,
  host: Host,
): Promise<string> {
  if (given.value('format') === 'json') return (await import('../../emit/fit/fit-json.js')).fitJson(fit, own);
  const { sheetFitWords, cardFitWords } = await import('../../emit/fit/fit-words.js');
  const { renderSheetText } = await import('../../emit/cut-sheet/render-text.js');
  const palette = (await paletteFor(host.out, host, given)) ?? undefined;
  const filesAreGiven = given.operands.length > 0;
  const words = fit.kind === 'sheet' ? sheetFitWords(fit, filesAreGiven) : cardFitWords(fit, filesAreGiven);
  const recipe = fit.kind === 'card' ? `\n${recipeText(fit.wish)}` : '';
  return renderSheetText(words, palette, textWidth(host.out)) + recipe;
}
