import about from '../../package.json' with { type: 'json' };
import type { Host } from '../host/host.js';
import { nearest } from '../text/nearest.js';
import { visible } from '../text/visible.js';
import { readArguments } from './arguments.js';
import { complain, type ExitCode } from './command.js';
import { COMMANDS } from './commands/index.js';
import { commandUsage, usage } from './usage.js';
import { didYouMean } from './words.js';

/** Runs plica with the arguments that follow its own name. */
export async function run(argv: readonly string[], host: Host): Promise<ExitCode> {
  const [name, ...rest] = argv;
  if (name === undefined) {
    host.err.write(usage(COMMANDS));
    return 2;
  }
  if (name === '--version') return say(host, `${about.version}\n`);
  if (name === '--help' || name === '-h') return say(host, usage(COMMANDS));
  if (name === 'help') return rest.length === 0 ? say(host, usage(COMMANDS)) : run([...rest, '--help'], host);
  const command = COMMANDS.find((each) => each.name === name);
  if (command === undefined) return refuse(host, unknownCommand(name), 'plica --help');
  const given = readArguments(command, rest, COMMANDS);
  if ('wrong' in given) return refuse(host, given.wrong, `plica ${name} --help`);
  if (given.has('help')) return say(host, commandUsage(command));
  const code = await command.run(given, host);
  if (code === 2 && host.kind('.') === 'missing') complain(host, FOLDER_GONE);
  return code;
}

/** Why what is named from it cannot be found, or made. */
const FOLDER_GONE = 'this working folder has been taken away: go to one that is there, and try again';

function say({ out }: Host, text: string): ExitCode {
  out.write(text);
  return 0;
}

function refuse(host: Host, wrong: string, help: string): ExitCode {
  complain(host, `${wrong}\n\`${help}\` tells more`);
  return 2;
}

function unknownCommand(written: string): string {
  const [option] = nearest(written.replace(/^-+/, ''), ['version', 'help']);
  if (written.startsWith('-') && (option !== undefined || /^-[vV]$/.test(written)))
    return `there is no option \`${visible(written)}\`; did you mean \`--${option ?? 'version'}\`?`;
  if (written.startsWith('-'))
    return `the command comes first, then its options: \`plica check ${visible(written)}\``;
  const near = nearest(
    written,
    COMMANDS.map(({ name }) => name),
  ).slice(0, 1);
  return `there is no command \`${visible(written)}\`${didYouMean(near)}`;
}
