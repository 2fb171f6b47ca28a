import type { Host } from '../../host/host.js';
import { overlay } from '../../host/overlay.js';
import { type Side, sideInWorkTree } from '../diff/side.js';
import type { Sides } from '../diff/sides.js';

/** A state of a file as git hands it to a program that compares. `bytes`: null where the file is not there. */
export interface State {
  readonly path: string;
  readonly bytes: Uint8Array | null;
}

/**
 * Two states of a file, each laid in its place; whatever else they use is read from the work tree. Where neither states an
 * envelope, others may use it: then the sides are all recipes of the working folder, where git starts such a program at the top.
 */
export function driverSides(before: State, after: State, host: Host): Sides {
  const all = [before, after].some(statesEnvelope) ? null : sideInWorkTree(['.'], host);
  const side = (state: State, label: string): Side =>
    all?.kind === 'side'
      ? { ...all, host: withState(state, all.host), label }
      : {
          kind: 'side',
          host: withState(state, host),
          paths: state.bytes === null ? [] : [state.path],
          label,
        };
  return [side(before, 'before'), side(after, 'after')];
}

const statesEnvelope = ({ bytes }: State): boolean =>
  /^[ \t]*envelope\b/m.test(Buffer.from(bytes ?? []).toString('latin1'));

/** A file that is not there is laid as an empty one, since the work tree may have it. */
const withState = ({ path, bytes }: State, host: Host): Host =>
  overlay(host, new Map([[path, bytes ?? new Uint8Array()]]));
