import { blankCorners } from '../folding/blank.js';
import { EDGES } from '../folding/corner-directions.js';
import type { FlapName, Folding } from '../folding/folding.js';
import { waste } from '../folding/waste.js';
import { between, distance, type Point, turn } from '../plane/point.js';
import type { Envelope } from '../recipe/recipe.js';
import type { Span } from '../text/span.js';
import { type Drawing, line, type Mark, outline } from './drawing.js';
import { hatch, RISING } from './hatch.js';
import { SQUARE_TO_PAGE } from './place.js';
import { scoreLayer } from './score-layer.js';
import { stripOutline } from './strip-outline.js';

/** How far apart hatching is drawn, and how far a mark reaches out over the blank's edge, in mm of the blank. */
export interface BlankStyle {
  readonly hatchSpacing: number;
  /** Of the hatching's lines, in the blank's frame. */
  readonly hatchDegrees: number;
  readonly markLength: number;
}

/** At true size a blank is turned square to the page, and its hatching slants there. */
const TRUE_SIZE: BlankStyle = { hatchSpacing: 1.5, hatchDegrees: RISING - SQUARE_TO_PAGE, markLength: 3 };

/**
 * The open blank in its own frame (a diamond, seal corner on top, seen from the inside): what is cut, what falls away,
 * scores, marks on the edges, tape or glue.
 */
export function drawBlank(folding: Folding, envelope: Envelope, style: BlankStyle = TRUE_SIZE): Drawing {
  const whence = spans(envelope);
  return [
    ...waste(folding).flatMap((piece) => drawWaste(folding, piece.outline, style)),
    ...folding.glue.map((strip) => outline('glue', stripOutline(strip))),
    ...folding.creases.map((crease) =>
      line(scoreLayer(crease), crease.from, crease.to, whence.score(crease.flap)),
    ),
    ...edgeMarks(folding, style.markLength, whence),
    { layer: 'cut', shape: { kind: 'path', path: folding.cutOutline }, span: whence.blank },
  ];
}

/** Points this near the blank's edge lie on it, in mm (waste is computed on a grid of 1e-5 mm). */
const ON_EDGE = 1e-3;

/** Hatching over a piece of waste, and those of its edges that were the blank's. */
function drawWaste({ blankOutline }: Folding, piece: readonly Point[], style: BlankStyle): readonly Mark[] {
  const edges = piece.flatMap((from, index) => {
    const to = piece[(index + 1) % piece.length] ?? from;
    const onBlank = blankOutline.some((start, corner) => {
      const end = blankOutline[(corner + 1) % blankOutline.length] ?? start;
      const off = (at: Point): number => Math.abs(turn(start, end, at)) / distance(start, end);
      return off(from) < ON_EDGE && off(to) < ON_EDGE;
    });
    return onBlank ? [line('blank', from, to)] : [];
  });
  return [
    ...hatch(piece, style.hatchSpacing, style.hatchDegrees).map(({ from, to }) => line('waste', from, to)),
    ...edges,
  ];
}

/** A tick over the edge, outward, at every mark: each flap's first and second, on both edges of its corner. */
function edgeMarks({ made }: Folding, length: number, whence: Spans): readonly Mark[] {
  const corners = blankCorners(made.blank);
  return EDGES.flatMap(({ between: [end, side] }) =>
    (
      [
        [end, side],
        [side, end],
      ] as const
    ).flatMap(([from, towards]) => {
      const [start, finish] = [corners[from], corners[towards]];
      const edge = distance(start, finish) || 1;
      const out = outward(start, finish);
      return [made.first[from], made.second?.[from]].flatMap((score) => {
        if (!score) return [];
        const at = between(start, finish, score.alongEdge / edge);
        return [line('mark', at, { x: at.x + out.x * length, y: at.y + out.y * length }, whence.score(from))];
      });
    }),
  );
}

/** The unit vector square to an edge of the blank, away from the blank's centre (the origin). */
function outward(start: Point, finish: Point): Point {
  const edge = distance(start, finish) || 1;
  const across = { x: (finish.y - start.y) / edge, y: (start.x - finish.x) / edge };
  return across.x * start.x + across.y * start.y < 0 ? { x: -across.x, y: -across.y } : across;
}

/** The places in the recipe from which the parts of the blank follow. */
interface Spans {
  readonly blank: Span;
  readonly score: (flap: FlapName) => Span;
}

function spans({ blank, card, face, sideMarks, sealMark, bottomMark }: Envelope): Spans {
  const fixed = { left: sideMarks, right: sideMarks, seal: sealMark, bottom: bottomMark };
  return {
    blank: (blank.value ? blank : card).origin.span,
    score: (flap) => (fixed[flap].value === null ? face : fixed[flap]).origin.span,
  };
}
