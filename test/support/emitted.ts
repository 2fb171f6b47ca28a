import type { EmitOptions, Emitter, Job } from '../../src/emit/emitter.js';
import { emitOptions } from './pdf-pages.js';

/** The bytes of the one file that an emitter writes for an envelope. */
export async function emitted(
  emitter: Emitter,
  job: Job,
  options: Partial<EmitOptions> = {},
): Promise<Uint8Array> {
  const files = await emitter.emit(job, emitOptions(options));
  const [file] = files;
  if (!file || files.length > 1) throw new Error(`${emitter.name} writes ${files.length} files`);
  return file.bytes;
}
