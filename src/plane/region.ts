import { ClipType, FillRule, PathType } from 'clipper2-ts/dist/Core.js';
import { Clipper64 } from 'clipper2-ts/dist/Engine.js';
import { area, counterClockwise, type Polygon } from './polygon.js';

/**
 * Booleans of polygons, by a library that works on whole numbers: corners are snapped to a grid of 1e-5 of the unit,
 * so that edges meant to touch do touch (see DEVELOPERS.md, decision 5).
 */
const GRID = 1e5;

const toGrid = (polygon: Polygon) =>
  counterClockwise(polygon).map(({ x, y }) => ({ x: Math.round(x * GRID), y: Math.round(y * GRID) }));

const fromGrid = (path: readonly { x: number; y: number }[]): Polygon =>
  path.map(({ x, y }) => ({ x: x / GRID, y: y / GRID }));

/** The library takes no empty outline. */
const isArea = (polygon: Polygon): boolean => polygon.length > 2;

function combine(
  type: ClipType,
  subjects: readonly Polygon[],
  clips: readonly Polygon[],
): readonly Polygon[] {
  const clipper = new Clipper64();
  for (const subject of subjects.filter(isArea)) clipper.addPath(toGrid(subject), PathType.Subject);
  for (const other of clips.filter(isArea)) clipper.addPath(toGrid(other), PathType.Clip);
  const solution: { x: number; y: number }[][] = [];
  clipper.execute(type, FillRule.NonZero, solution);
  return solution.map(fromGrid);
}

/** What of the subjects no clip covers. Holes come as clockwise polygons. */
export const subtract = (subjects: readonly Polygon[], clips: readonly Polygon[]): readonly Polygon[] =>
  combine(ClipType.Difference, subjects, clips);

/** What both sets of polygons cover. */
export const intersect = (subjects: readonly Polygon[], clips: readonly Polygon[]): readonly Polygon[] =>
  combine(ClipType.Intersection, subjects, clips);

/** The area of a region, holes taken off. */
export const regionArea = (region: readonly Polygon[]): number =>
  region.reduce((sum, polygon) => sum + area(polygon), 0);
