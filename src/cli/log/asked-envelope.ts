import type { Host, Trouble } from '../../host/host.js';
import { visible } from '../../text/visible.js';
import { envelopeOperand } from './envelope-operand.js';
import { type FileHistory, fileHistory } from './file-history.js';
import { fileStating } from './file-stating.js';

/** An envelope whose history is asked for. */
export interface AskedEnvelope {
  readonly kind: 'asked';
  readonly path: string;
  /** Whether there ever was one of this name is not known yet. */
  readonly name: string;
  readonly past: FileHistory;
}

/** Finds the envelope of an operand: what is left out of `PATH#NAME` must be the only one that it can be. */
export async function askedEnvelope(operand: string, host: Host): Promise<AskedEnvelope | Trouble> {
  const { path, name } = envelopeOperand(operand, host);
  if (path !== null) return inFile(path, name, host);
  const file = await fileStating(name ?? '', host);
  return file.kind === 'trouble' ? file : inFile(file.path, name, host);
}

async function inFile(path: string, name: string | null, host: Host): Promise<AskedEnvelope | Trouble> {
  const past = fileHistory(host, path);
  if (past.kind === 'trouble') return past;
  if (name !== null) return { kind: 'asked', path, name, past };
  const { names } = await past.lastSeen();
  const [only, ...others] = names;
  if (only !== undefined && others.length === 0) return { kind: 'asked', path, name: only, past };
  const shown = visible(path);
  const choices = names.map((each) => `\`${shown}#${visible(each)}\``).join(', ');
  return trouble(
    only === undefined
      ? `${shown}: no envelope can be read in it; name one, as in \`${shown}#NAME\``
      : `${shown} has several envelopes; name one of them: ${choices}`,
  );
}

const trouble = (reason: string): Trouble => ({ kind: 'trouble', reason });
