import type { Job } from '../../src/emit/emitter.js';
import { renderFold } from '../../src/emit/fold/render-fold.js';

/** What our FOLD files hold, by the format's names and types (https://github.com/edemaine/fold, doc/spec.md, 1.2). */
export interface FoldFrame {
  readonly frame_title: string;
  readonly frame_description: string;
  readonly frame_classes: readonly string[];
  readonly frame_attributes: readonly string[];
  readonly frame_unit: string;
  readonly vertices_coords: readonly (readonly number[])[];
  readonly edges_vertices: readonly (readonly [number, number])[];
  readonly edges_assignment: readonly ('B' | 'M' | 'V')[];
  readonly edges_foldAngle: readonly number[];
  readonly 'edges_plica:flap': readonly (string | null)[];
  readonly 'edges_plica:score': readonly (string | null)[];
  readonly faces_vertices: readonly (readonly number[])[];
  readonly 'faces_plica:kind': readonly string[];
  readonly 'faces_plica:flap': readonly (string | null)[];
  readonly faceOrders?: readonly (readonly [number, number, number])[];
}

/** An envelope's file read back: its key frame, and its second frame with what that inherits. */
export interface FoldFile {
  readonly flat: FoldFrame;
  readonly closed: FoldFrame;
}

/** Reads an envelope's file as the format says: a frame that inherits has all of its parent's keys but its own. */
export function foldFile(job: Pick<Job, 'envelope' | 'folding'>): FoldFile {
  const { file_frames, ...flat } = JSON.parse(renderFold(job)) as FoldFrame & {
    readonly file_frames: readonly [object];
  };
  return { flat, closed: { ...flat, ...file_frames[0] } };
}

/** The corners of each face of a frame. */
export const facesOf = ({ faces_vertices, vertices_coords }: FoldFrame) =>
  faces_vertices.map((face) => face.map((vertex) => pointOf(vertices_coords[vertex] ?? [])));

export const pointOf = ([x = 0, y = 0, z = 0]: readonly number[]) => ({ x, y, z });

/** A graph that a library may write into. */
export const copyOf = <T extends object>(frame: T): T => structuredClone(frame);
