import type { Box } from '../../drawing/box.js';
import type { Drawing, Lettering, Mark, Shape } from '../../drawing/drawing.js';
import { INKS } from '../../drawing/inks.js';
import { lineKindOf } from '../../drawing/line-kinds.js';
import type { Path, Stretch } from '../../plane/path.js';
import type { Point } from '../../plane/point.js';
import { arcCurves } from './arc-curves.js';
import { POINTS_PER_MM, type PdfDocument } from './document.js';

/**
 * Paints a drawing, in mm from the page's lower left corner, onto the page begun last. Lines and lettering take the colour
 * that is set, black at first.
 */
export function paint(document: PdfDocument, drawing: Drawing): void {
  for (const mark of drawing) paintMark(document, mark);
}

/** The same, but only what lies within a box. */
export function paintWithin(document: PdfDocument, drawing: Drawing, box: Box): void {
  const { pdf } = document;
  const corner = onPage(document, { x: box.x, y: box.y + box.height });
  pdf.save();
  pdf.rect(corner.x, corner.y, box.width * POINTS_PER_MM, box.height * POINTS_PER_MM).clip();
  paint(document, drawing);
  pdf.restore();
}

/** A point in mm, y up, as the library takes it: in points, y down. */
const onPage = ({ pdf }: PdfDocument, { x, y }: Point): Point => ({
  x: x * POINTS_PER_MM,
  y: pdf.page.height - y * POINTS_PER_MM,
});

function paintMark(document: PdfDocument, mark: Mark): void {
  const { shape } = mark;
  if (shape.kind === 'text') {
    paintLettering(document, shape);
    return;
  }
  const { pdf } = document;
  const { width, dashes, ink } = lineKindOf(mark);
  if (width === 0) {
    trace(document, shape);
    pdf.fillColor(ink.screen).fill().fillColor(INKS.black.screen);
    return;
  }
  pdf.lineWidth(width * POINTS_PER_MM);
  if (dashes.length > 0) pdf.dash(dashes.map((length) => length * POINTS_PER_MM));
  else pdf.undash();
  trace(document, shape);
  pdf.stroke();
}

/** Lays a shape's outline down as the current path. */
function trace(document: PdfDocument, shape: Exclude<Shape, Lettering>): void {
  const { pdf } = document;
  const moveTo = (point: Point): void => {
    const { x, y } = onPage(document, point);
    pdf.moveTo(x, y);
  };
  const lineTo = (point: Point): void => {
    const { x, y } = onPage(document, point);
    pdf.lineTo(x, y);
  };
  if (shape.kind === 'line') {
    moveTo(shape.from);
    lineTo(shape.to);
  } else if (shape.kind === 'polyline') {
    shape.points.forEach((point, index) => (index === 0 ? moveTo(point) : lineTo(point)));
  } else {
    moveTo(shape.path.start);
    for (const [from, stretch] of stretches(shape.path)) {
      if (stretch.kind === 'line') lineTo(stretch.to);
      else arcTo(document, from, stretch);
    }
    pdf.closePath();
  }
}

/** The stretches of a path, each with where it starts. */
export const stretches = ({ start, stretches: all }: Path): readonly (readonly [Point, Stretch])[] =>
  all.map((stretch, index) => [all[index - 1]?.to ?? start, stretch]);

function arcTo(document: PdfDocument, from: Point, arc: Extract<Stretch, { kind: 'arc' }>): void {
  for (const curve of arcCurves(from, arc)) {
    const [first, second, to] = [curve.first, curve.second, curve.to].map((point) =>
      onPage(document, point),
    ) as [Point, Point, Point];
    document.pdf.bezierCurveTo(first.x, first.y, second.x, second.y, to.x, to.y);
  }
}

const SHIFT: Readonly<Record<Lettering['anchor'], number>> = { start: 0, middle: -0.5, end: -1 };

function paintLettering(
  document: PdfDocument,
  { text, at, size, anchor, angleDegrees, weight }: Lettering,
): void {
  const { pdf, measure } = document;
  const width = measure(text, size, weight) * POINTS_PER_MM;
  const { x, y } = onPage(document, at);
  pdf.save();
  if (angleDegrees !== 0) pdf.rotate(-angleDegrees, { origin: [x, y] });
  const shown = document.printable(text, weight);
  pdf
    .font(weight)
    .fontSize(size * POINTS_PER_MM)
    .text(shown, x + SHIFT[anchor] * width, y, {
      lineBreak: false,
      baseline: 'alphabetic',
    });
  pdf.restore();
}
