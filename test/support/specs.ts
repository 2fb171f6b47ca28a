import { readdirSync, readFileSync } from 'node:fs';

/** The recipes that come with plica, by path. */
export const specs = (): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync('specs', { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.plica'))
      .map((name) => [`specs/${name}`, readFileSync(`specs/${name}`, 'utf8')]),
  );

/** The same, as a recipe beside them uses them. */
export const specFiles: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(specs()).map(([path, text]) => [path.replace('specs/', ''), text]),
);
