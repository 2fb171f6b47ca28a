import DxfParser, {
  type IDxf,
  type IEntity,
  type ILineEntity,
  type ILwpolylineEntity,
  type ITextEntity,
} from 'dxf-parser';

/** What is drawn in a DXF file, as a library reads it that had no part in writing it. */
export interface DxfFile extends IDxf {
  readonly lines: readonly ILineEntity[];
  readonly polylines: readonly ILwpolylineEntity[];
  readonly texts: readonly ITextEntity[];
}

// The package's types say that it has a default export; it is one itself.
const Parser = DxfParser as unknown as typeof DxfParser.default;

export function readDxf(bytes: Uint8Array): DxfFile {
  const file = new Parser().parseSync(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  if (!file) throw new Error('No DXF file');
  const ofType = <T extends IEntity>(type: string): readonly T[] =>
    file.entities.filter((entity): entity is T => entity.type === type);
  return { ...file, lines: ofType('LINE'), polylines: ofType('LWPOLYLINE'), texts: ofType('TEXT') };
}

/** The one polyline on a layer. */
export function onlyPolyline({ polylines }: DxfFile, layer: string): ILwpolylineEntity {
  const [found, ...others] = polylines.filter((polyline) => polyline.layer === layer);
  if (!found || others.length > 0)
    throw new Error(`${others.length + (found ? 1 : 0)} polylines on ${layer}`);
  return found;
}

/**
 * How long a closed polyline is. A bulge is the tangent of a quarter of an arc's angle: over a chord c the arc has the
 * radius c·(1 + b²)/(4·b) and is that times its angle long.
 */
export const lengthOf = ({ vertices }: ILwpolylineEntity): number =>
  vertices.reduce((sum, from, index) => {
    const to = vertices[(index + 1) % vertices.length] ?? from;
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    const bulge = Math.abs(from.bulge ?? 0);
    const arc = bulge > 0 ? ((chord * (1 + bulge ** 2)) / (4 * bulge)) * 4 * Math.atan(bulge) : chord;
    return sum + arc;
  }, 0);
