import { readdirSync, readFileSync } from 'node:fs';

/** The recipes that come with plica, by path. */
export const specs = (): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync('specs', { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.plica'))
      .map((name) => [`specs/${name}`, readFileSync(`specs/${name}`, 'utf8')]),
  );
