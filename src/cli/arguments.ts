import { parseArgs } from 'node:util';
import { nearest } from '../text/nearest.js';
import { visible } from '../text/visible.js';
import type { Command, Option } from './command.js';
import { didYouMean } from './words.js';

/** What a command was given. */
export interface Arguments {
  readonly operands: readonly string[];
  /** The value of an option; null: not given. */
  readonly value: (option: string) => string | null;
  readonly has: (option: string) => boolean;
}

/** What is wrong with an argument, in a sentence without a full stop. */
export interface Wrong {
  readonly wrong: string;
}

/** Options that every command takes. */
export const COMMON_OPTIONS: readonly Option[] = [
  {
    name: 'color',
    value: 'WHEN',
    choices: ['auto', 'always', 'never'],
    meaning: 'colour: on a terminal (auto, unless NO_COLOR is set), always or never',
  },
  { name: 'help', value: null, meaning: 'this help' },
];

/** Reads the arguments that follow a command's name. An option of another of the `commands` is told from a slip. */
export function readArguments(
  command: Command,
  argv: readonly string[],
  commands: readonly Command[],
): Arguments | Wrong {
  const options = [...command.options, ...COMMON_OPTIONS];
  const values = new Map<string, string | null>();
  const operands: string[] = [];
  for (const token of tokensOf(argv, options)) {
    if (token.kind === 'positional') operands.push(token.value);
    if (token.kind !== 'option') continue;
    const option = options.find(({ name }) => name === token.name);
    if (option === undefined)
      return unknownOption(command, asWritten(argv[token.index], token.rawName), options, commands);
    const value = token.value ?? null;
    const wrong = values.has(option.name)
      ? `\`--${option.name}\` is given twice`
      : wrongValue(option, value, token.inlineValue === true);
    if (wrong !== null) return { wrong };
    values.set(option.name, value);
  }
  const wrong = values.has('help') ? null : wrongNumber(command, operands);
  if (wrong !== null) return { wrong };
  return { operands, value: (option) => values.get(option) ?? null, has: (option) => values.has(option) };
}

const tokensOf = (argv: readonly string[], options: readonly Option[]) =>
  parseArgs({
    args: [...argv],
    strict: false,
    allowPositionals: true,
    tokens: true,
    options: Object.fromEntries(
      options.map(({ name, value }) => [
        name,
        { type: value === null ? 'boolean' : 'string', ...(name === 'help' ? { short: 'h' } : {}) },
      ]),
    ),
  }).tokens;

/** The name of an option as it was written: whole, where one hyphen makes several options of it. */
const asWritten = (argument: string | undefined, name: string): string =>
  /^-[A-Za-z]{2}/.test(argument ?? '') ? (argument ?? '').replace(/=.*$/s, '') : name;

function unknownOption(
  { name }: Command,
  written: string,
  options: readonly Option[],
  commands: readonly Command[],
): Wrong {
  const word = written.replace(/^-+/, '');
  const takers = commands.filter((each) => each.options.some((option) => option.name === word));
  const near = nearest(
    word,
    options.map((option) => option.name),
  ).slice(0, 1);
  const isOurs = options.some((option) => option.name === word);
  const hint =
    takers.length > 0 && !isOurs
      ? `; ${listed(
          takers.map((each) => each.name),
          'and',
        )} ${takers.length > 1 ? 'have' : 'has'}`
      : didYouMean(near.map((option) => `--${option}`));
  return { wrong: `\`${name}\` has no option \`${visible(written)}\`${hint}` };
}

function wrongValue(
  { name, value: wanted, choices, many }: Option,
  value: string | null,
  inline: boolean,
): string | null {
  if (wanted === null) return value === null ? null : `\`--${name}\` takes no value`;
  const example = `\`--${name} ${wanted}\``;
  if (value === null || value === '') return `\`--${name}\` wants a value: ${example}`;
  if (!inline && value.startsWith('-') && value !== '-') {
    return `\`--${name}\` wants a value: ${example}, but \`${visible(value)}\` follows`;
  }
  if (choices === undefined) return null;
  const unknown = (many ? itemsOf(value) : [value]).find((item) => !choices.includes(item));
  if (unknown === undefined) return null;
  const near = nearest(unknown, choices).slice(0, 1);
  const takes = many ? 'takes' : 'is';
  return `\`--${name}\` ${takes} ${listed(choices)}, not \`${visible(unknown)}\`${didYouMean(near)}`;
}

/** What a list with commas between names. */
export const itemsOf = (list: string): readonly string[] => list.split(',').map((item) => item.trim());

/** `a`, `b` or `c` */
const listed = (words: readonly string[], last: 'or' | 'and' = 'or'): string =>
  words
    .map((word) => `\`${word}\``)
    .join(', ')
    .replace(/, (?=[^,]*$)/, ` ${last} `);

function wrongNumber(
  { name, operands: wanted, takes, example }: Command,
  operands: readonly string[],
): string | null {
  const [fewest, most] = takes;
  if (operands.length < fewest) return `\`${name}\` wants ${wanted}, as in \`${example}\``;
  if (operands.length <= most) return null;
  return `\`${name}\` does not know what to do with \`${visible(operands[most] as string)}\``;
}
