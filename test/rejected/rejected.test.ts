import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, test } from 'vitest';
import { expectFindings, recipesIn } from '../support/rejected.js';

const here = import.meta.dirname;
const topics = readdirSync(here, { withFileTypes: true }).filter((entry) => entry.isDirectory());

describe.each(topics.map(({ name }) => name))('%s', (topic) => {
  for (const path of recipesIn(join(here, topic))) {
    test(path.slice(join(here, topic).length + 1), () => expectFindings(path));
  }
});
