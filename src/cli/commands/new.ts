import { basename, dirname, join } from 'node:path';
import { parse } from '../../../grammar/parser.js';
import { placeIn } from '../../diagnostics/render-line.js';
import type { Host } from '../../host/host.js';
import { shown } from '../../host/reader.js';
import { fileStem } from '../../text/file-stem.js';
import { visible } from '../../text/visible.js';
import { type Command, complain, type ExitCode } from '../command.js';
import { readInputs } from '../inputs.js';
import { betterName, whyNoName } from '../new-name.js';
import { NEW_UNITS, type NewUnits, newRecipe } from '../new-recipe.js';

export const newCommand: Command = {
  name: 'new',
  operands: 'NAME',
  takes: [1, 1],
  summary: 'write a first recipe to start from',
  details: `Writes NAME.plica with one envelope, explained line by line. NAME may begin with folders
that are there already. A file that is there is never written over.`,
  example: 'plica new tide-card --units in',
  options: [
    {
      name: 'units',
      value: 'UNITS',
      choices: NEW_UNITS,
      meaning: 'what a bare number means in the recipe (left out: mm)',
    },
  ],
  run: async (given, host) => {
    const [written = ''] = given.operands;
    const path = written.replace(/\.plica$/, '');
    const [folder, name] = [dirname(path), basename(path)];
    const file = join(folder, `${fileStem(name)}.plica`);
    const wrong =
      wrongName(folder, name) ?? wrongPlace(folder, file, host) ?? (await taken(folder, name, host));
    if (wrong !== null) return refuse(wrong, host);
    const units = (given.value('units') ?? 'mm') as NewUnits;
    const result = host.create(file, new TextEncoder().encode(newRecipe(name, units)));
    const place = visible(shown(file));
    if (result.kind === 'unwritable') return refuse(`${place} cannot be written: ${result.reason}`, host);
    host.out.write(`wrote ${place}; next: change its card, and run \`plica check ${place}\`\n`);
    return 0;
  },
};

function refuse(wrong: string, host: Host): ExitCode {
  complain(host, wrong);
  return 2;
}

/** What is wrong with the name of an envelope, and what it could be. */
function wrongName(folder: string, name: string): string | null {
  const why = whyNoName(name);
  const better = visible(shown(join(folder, betterName(name))));
  return why && `\`${visible(name)}\` ${why}; it could be \`${better}\``;
}

function wrongPlace(folder: string, file: string, host: Host): string | null {
  if (host.kind(folder) !== 'folder') {
    return `there is no folder \`${visible(shown(folder))}\`; make it first`;
  }
  return host.kind(file) === 'missing'
    ? null
    : `${visible(shown(file))} is there already, and stays as it is`;
}

/** Where the folder has an envelope of that name already, in a sentence; null: it has none. */
async function taken(folder: string, name: string, host: Host): Promise<string | null> {
  const { files } = await readInputs(host, [folder]);
  for (const { input } of files) {
    const block = parse(input.source).file.statements.find(
      (each) => each.kind === 'block' && each.type === 'envelope' && each.name.text === name,
    );
    if (block?.kind === 'block')
      return `\`${name}\` is an envelope already, at ${placeIn(block.name.span)}; choose another name`;
  }
  return null;
}
