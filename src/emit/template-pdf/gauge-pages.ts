import { gauges, strips } from '../../drawing/gauge.js';
import type { Size } from '../../recipe/recipe.js';
import { type Block, stack, standing } from '../../drawing/block.js';
import { body, captioned, SECTION_GAP } from './furniture.js';
import { composed, type Page, roomAboveFoot, type Setting, turned } from './page.js';
import { rulerOf } from '../../drawing/words.js';
import { GAUGE_WORDS, JOINED_GAUGE_WORDS } from './words.js';

/** The strips of the edge gauge, each a block. */
const gaugeBlocks = ({ job, measure }: Setting, width: number): readonly Block[] =>
  gauges(job.folding.made)
    .flatMap((gauge) => strips(gauge, job.envelope.name, width, rulerOf(job), measure))
    .map((strip) => standing(strip.drawing, strip.height));

const gaugeHeading = ({ measure }: Setting, width: number, inParts: boolean): Block =>
  captioned(
    'Edge gauge',
    body(inParts ? `${GAUGE_WORDS} ${JOINED_GAUGE_WORDS}` : GAUGE_WORDS, width, measure),
    width,
    measure,
  );

/** The whole gauge as one block, or null where one of its strips is longer than the width. */
export function wholeGauge(setting: Setting, width: number): Block | null {
  const blocks = gaugeBlocks(setting, width);
  if (blocks.length > gauges(setting.job.folding.made).length) return null;
  return stack(SECTION_GAP, gaugeHeading(setting, Math.min(width, WIDEST), false), ...blocks);
}

/** The widest column that words are set in. */
const WIDEST = 170;

/** The edge gauge on sheets of its own, turned the way in which its strips need fewer parts. */
export function gaugePages(setting: Setting, upright: Size): readonly Page[] {
  const kinds = gauges(setting.job.folding.made).length;
  const blocksOn = (size: Size): readonly Block[] => gaugeBlocks(setting, roomAboveFoot(setting, size).width);
  const lying = turned(upright);
  const size = blocksOn(lying).length < blocksOn(upright).length ? lying : upright;
  const blocks = blocksOn(size);
  const room = roomAboveFoot(setting, size);
  const head = gaugeHeading(setting, Math.min(room.width, WIDEST), blocks.length > kinds);
  const sheets = flow([head, ...blocks], room.height);
  return sheets.map((sheet, index) =>
    composed(
      setting,
      size,
      { name: 'Edge gauge', place: sheets.length > 1 ? `page ${index + 1} of ${sheets.length}` : '' },
      stack(SECTION_GAP, ...sheet),
    ),
  );
}

/** Blocks in order over as few pages as they need. */
function flow(blocks: readonly Block[], height: number): readonly (readonly Block[])[] {
  const pages: Block[][] = [];
  let filled = Infinity;
  for (const block of blocks) {
    if (filled + SECTION_GAP + block.height > height) {
      pages.push([]);
      filled = -SECTION_GAP;
    }
    pages.at(-1)?.push(block);
    filled += SECTION_GAP + block.height;
  }
  return pages;
}
