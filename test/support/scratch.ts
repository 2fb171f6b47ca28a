import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A folder of its own for one test, with some files in it; gone after the test. */
export function scratch(files: Readonly<Record<string, string | Uint8Array>> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'plica-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}
