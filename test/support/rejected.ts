import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { renderText } from '../../src/diagnostics/render-text.js';
import { position, type Source, source } from '../../src/text/source.js';

/**
 * Tests every recipe of a folder that must be refused. A line says in a comment which rules find fault with it
 * (`card: 51/2 x 7   # finds syntax`, several with commas); the whole is compared with NAME.findings.txt beside it.
 */
export function testRejected(folder: string, diagnose: (source: Source) => readonly Diagnostic[]): void {
  const names = readdirSync(folder).filter((name) => name.endsWith('.plica'));
  test.each(names)('%s', async (name) => {
    const given = source(name, readFileSync(join(folder, name), 'utf8'));
    const found = diagnose(given);
    expect(found.map(whereAndWhat).sort(), 'the rules that its comments name').toEqual(
      announced(given).sort(),
    );
    await expect(renderText(found)).toMatchFileSnapshot(join(folder, name.replace(/plica$/, 'findings.txt')));
  });
}

/** `3 syntax`: line and rule. */
const whereAndWhat = ({ problem, primary: { span } }: Diagnostic): string =>
  `${position(span.source, span.start).line} ${problem.name}`;

const announced = ({ text }: Source): string[] =>
  text.split(/\r\n|\r|\n/).flatMap((line, index) => {
    const rules = /# finds ([a-z, -]+)$/.exec(line)?.[1] ?? '';
    return rules
      .split(/, */)
      .filter((rule) => rule !== '')
      .map((rule) => `${index + 1} ${rule}`);
  });
