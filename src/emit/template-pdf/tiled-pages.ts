import type { Box } from '../../drawing/box.js';
import type { Drawing } from '../../drawing/drawing.js';
import { liningFigure } from '../../drawing/lining-plate.js';
import type { Tiling } from '../../drawing/tile.js';
import type { Size } from '../../recipe/recipe.js';
import { beside, type Block, stack } from '../../drawing/block.js';
import { gaugePages, wholeGauge } from './gauge-pages.js';
import { captioned, heading, key, notes, SECTION_GAP } from './furniture.js';
import { composed, type Page, roomAboveFoot, type Setting } from './page.js';
import { plan } from './plan.js';
import { EDGE, laidOut, tilePages } from './tile-pages.js';

const COLUMN_GAP = 8;

const NAMES = { whole: { name: 'Template', place: 'the whole blank' }, part: '' };

/** A page about the others, the blank at true size over as few sheets as it needs, and the edge gauge. */
export function tiledPages(setting: Setting, blank: Drawing, upright: Size): readonly Page[] {
  const { width, height } = setting.job.folding.made.blank;
  const content: Box = {
    x: -width / 2 - EDGE,
    y: -height / 2 - EDGE,
    width: width + 2 * EDGE,
    height: height + 2 * EDGE,
  };
  const best = laidOut(setting, blank, content, upright);
  const room = roomAboveFoot(setting, upright);
  const about = aboutBlock(setting, blank, best.tiling, room);
  const gauge = wholeGauge(setting, room.width);
  const together = gauge && about.height + SECTION_GAP + gauge.height <= room.height;
  return [
    composed(
      setting,
      upright,
      { name: 'About these pages', place: '' },
      together ? stack(SECTION_GAP, about, gauge) : about,
    ),
    ...tilePages(setting, blank, best, NAMES),
    ...(together ? [] : gaugePages(setting, upright)),
  ];
}

/** Which page goes where, what the lines mean, what to do. */
function aboutBlock(setting: Setting, blank: Drawing, tiling: Tiling, room: Box): Block {
  const { job, measure } = setting;
  const head = heading(job, room.width, measure);
  const column = (room.width - COLUMN_GAP) / 2;
  const tiled = tiling.tiles.length > 1;
  const lining = liningFigure(job.folding, job.envelope, measure)?.drawing ?? [];
  const lines = key([blank, lining, ...tiling.tiles.map(({ joins }) => joins)], column, measure);
  const left = room.height - head.height - lines.height - 3 * SECTION_GAP;
  const laid = (): Block =>
    plan(
      tiling,
      blank.filter(({ layer }) => PLANNED.has(layer)),
      { width: column, height: Math.min(left, column) },
    );
  const figure = tiled && left > 30 ? [captioned(pagesInPlan(tiling), laid(), column, measure)] : [];
  return stack(
    SECTION_GAP,
    head,
    beside(
      { x: 0, block: stack(SECTION_GAP, ...figure, lines) },
      { x: column + COLUMN_GAP, block: notes(tiled, column, measure) },
    ),
  );
}

/** What of the blank a small plan shows. */
const PLANNED: ReadonlySet<string> = new Set(['cut', 'score', 'second-score', 'odd-score']);

const pagesInPlan = ({ rows, columns, tiles }: Tiling): string =>
  tiles.length === rows * columns
    ? `How the ${tiles.length} pages lie together`
    : `How the ${tiles.length} pages lie together (places left empty have no page)`;
