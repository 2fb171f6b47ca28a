import type { Fonts, Host } from '../../host/host.js';
import { sha256 } from './leaf-key.js';

/** Stands for the program and its fonts: what another made, may be otherwise. */
export const editionOf = async (host: Host, { regular, bold }: Fonts): Promise<string> =>
  sha256(await host.edition(), regular, bold);
