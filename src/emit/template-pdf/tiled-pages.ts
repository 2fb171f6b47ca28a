import { type Box, segmentsOf, touches } from '../../drawing/box.js';
import type { Drawing, Mark } from '../../drawing/drawing.js';
import { place } from '../../drawing/place.js';
import { type Tile, tile, type Tiling } from '../../drawing/tile.js';
import type { Size } from '../../recipe/recipe.js';
import { beside, type Block, stack } from '../../drawing/block.js';
import { gaugePages, wholeGauge } from './gauge-pages.js';
import { captioned, heading, key, notes, SECTION_GAP } from './furniture.js';
import { composed, type Page, roomAboveFoot, type Setting, turned } from './page.js';
import { plan } from './plan.js';

/** The lines at the blank's edge are drawn half outside it; they are shown whole, in mm. */
const EDGE = 0.5;
const COLUMN_GAP = 8;

/** A page about the others, the blank at true size over as few sheets as it needs, and the edge gauge. */
export function tiledPages(setting: Setting, blank: Drawing, upright: Size): readonly Page[] {
  const { width, height } = setting.job.folding.made.blank;
  const content: Box = {
    x: -width / 2 - EDGE,
    y: -height / 2 - EDGE,
    width: width + 2 * EDGE,
    height: height + 2 * EDGE,
  };
  const laid = [upright, turned(upright)].map((size) => ({
    size,
    tiling: tile(blank, content, roomAboveFoot(setting, size)),
  })) as [Laid, Laid];
  const [standing, lying] = laid;
  const best = lying.tiling.tiles.length < standing.tiling.tiles.length ? lying : standing;
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
    ...best.tiling.tiles.map((one) => tilePage(setting, blank, best, one)),
    ...(together ? [] : gaugePages(setting, upright)),
  ];
}

interface Laid {
  readonly size: Size;
  readonly tiling: Tiling;
}

function tilePage(
  setting: Setting,
  blank: Drawing,
  { size, tiling }: Laid,
  { row, column, name, window, joins }: Tile,
): Page {
  const box = roomAboveFoot(setting, size);
  const shift = { x: box.x - window.x, y: box.y - window.y };
  const whole = tiling.rows * tiling.columns === 1;
  const pageName = whole
    ? { name: 'Template', place: 'the whole blank' }
    : { name, place: `row ${row + 1} of ${tiling.rows}, column ${column + 1} of ${tiling.columns}` };
  return composed(setting, size, pageName, null, {
    box: { ...box },
    drawing: place([...blank, ...joins].filter(seenIn(window, setting)), shift),
  });
}

/** Whether any of a mark shows in a window. */
const seenIn =
  (window: Box, { measure }: Setting) =>
  ({ shape }: Mark): boolean => {
    if (shape.kind !== 'text') return touches(segmentsOf(shape), grown(window, EDGE));
    const { at, text, size, weight } = shape;
    const { x, y, width, height } = grown(window, measure(text, size, weight));
    return at.x >= x && at.x <= x + width && at.y >= y && at.y <= y + height;
  };

const grown = ({ x, y, width, height }: Box, by: number): Box => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
});

/** Which page goes where, what the lines mean, what to do. */
function aboutBlock(setting: Setting, blank: Drawing, tiling: Tiling, room: Box): Block {
  const { job, measure } = setting;
  const head = heading(job, room.width, measure);
  const column = (room.width - COLUMN_GAP) / 2;
  const tiled = tiling.tiles.length > 1;
  const lines = key([blank, ...tiling.tiles.map(({ joins }) => joins)], column, measure);
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
