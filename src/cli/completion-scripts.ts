import type { Command, Option } from './command.js';

/** What a shell is told to offer. */
export interface Offered {
  readonly commands: readonly Command[];
  /** Options that every command takes. */
  readonly common: readonly Option[];
  /** Words that are offered as operands of a command, instead of files. */
  readonly words: Readonly<Record<string, readonly string[]>>;
}

export const SHELLS = ['bash', 'zsh', 'fish'] as const;
export type Shell = (typeof SHELLS)[number];

/** How the script of each shell is installed. */
export const INSTALLING: Readonly<Record<Shell, string>> = {
  bash: 'plica completion bash > ~/.local/share/bash-completion/completions/plica',
  zsh: 'plica completion zsh > ~/.zfunc/_plica   (a folder in $fpath, named before compinit runs)',
  fish: 'plica completion fish > ~/.config/fish/completions/plica.fish',
};

/** The script that teaches a shell what can follow `plica`. */
export const completionScript = (shell: Shell, offered: Offered): string => SCRIPTS[shell](offered);

const optionsOf = (command: Command, { common }: Offered): readonly Option[] => [
  ...command.options,
  ...common,
];
const names = (commands: readonly Command[]): string => commands.map(({ name }) => name).join(' ');
/** In single quotes, for any of the shells. */
const quoted = (text: string): string => `'${text.replaceAll("'", '’')}'`;

function bash(offered: Offered): string {
  const { commands, words } = offered;
  const values = commands.flatMap((command) =>
    optionsOf(command, offered)
      .filter(({ value }) => value !== null)
      .map(({ name, choices }) => `    ${command.name}:--${name}) ${bashValue(choices)} ;;`),
  );
  const options = commands.map(
    (command) =>
      `    ${command.name}) options=${quoted(
        optionsOf(command, offered)
          .map(({ name }) => `--${name}`)
          .join(' '),
      )} words=${quoted((words[command.name] ?? []).join(' '))} ;;`,
  );
  return `# Completion of plica for bash. To install: ${INSTALLING.bash}
_plica() {
  local word=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} command=\${COMP_WORDS[1]}
  local options words
  COMPREPLY=()
  if ((COMP_CWORD == 1)); then
    mapfile -t COMPREPLY < <(compgen -W '${names(commands)} help --help --version' -- "$word")
    return
  fi
  case $command:$before in
    help:help) mapfile -t COMPREPLY < <(compgen -W '${names(commands)}' -- "$word"); return ;;
${values.join('\n')}
  esac
  case $command in
${options.join('\n')}
  esac
  if [[ $word == -* ]]; then
    mapfile -t COMPREPLY < <(compgen -W "$options" -- "$word")
  elif [[ -n $words ]]; then
    mapfile -t COMPREPLY < <(compgen -W "$words" -- "$word")
  else
    compopt -o filenames 2>/dev/null
    mapfile -t COMPREPLY < <(compgen -d -- "$word"; compgen -f -X '!*.plica' -- "$word")
  fi
}
complete -F _plica plica
`;
}

const bashValue = (choices: readonly string[] | undefined): string =>
  choices === undefined
    ? 'mapfile -t COMPREPLY < <(compgen -f -- "$word"); return'
    : `mapfile -t COMPREPLY < <(compgen -W '${choices.join(' ')}' -- "$word"); return`;

function zsh(offered: Offered): string {
  const { commands, words } = offered;
  const cases = commands.map((command) => {
    const options = optionsOf(command, offered).map(zshOption);
    const operands = words[command.name];
    const rest = operands ? `(${operands.join(' ')})` : '_files -g "*.plica"';
    return `    ${command.name}) _arguments ${[...options, `'*:operand:${rest}'`].join(' ')} ;;`;
  });
  return `#compdef plica
# Completion of plica for zsh. To install: ${INSTALLING.zsh}
_plica() {
  local -a commands
  commands=(
${commands.map(({ name, summary }) => `    ${quoted(`${name}:${summary}`)}`).join('\n')}
  )
  if ((CURRENT == 2)); then
    _describe command commands
    return
  fi
  local command=$words[2]
  words=("\${(@)words[2,-1]}")
  ((CURRENT--))
  case $command in
    help) ((CURRENT == 2)) && _describe command commands ;;
${cases.join('\n')}
  esac
}
if [[ $funcstack[1] == _plica ]]; then _plica "$@"; else compdef _plica plica; fi
`;
}

/** `'--format[for people …]:FORMAT:(text json)'` */
function zshOption({ name, value, choices, meaning }: Option): string {
  const said = meaning.replaceAll(/[[\]:\\]/g, (mark) => `\\${mark}`);
  const wanted = value === null ? '' : `:${value}:${choices ? `(${choices.join(' ')})` : '_files'}`;
  return quoted(`--${name}[${said}]${wanted}`);
}

function fish(offered: Offered): string {
  const { commands, words } = offered;
  const first = `-n __fish_use_subcommand`;
  const lines = commands.flatMap((command) => {
    const within = `complete -c plica -n '__fish_seen_subcommand_from ${command.name}'`;
    const operands = words[command.name];
    return [
      `complete -c plica ${first} -a ${command.name} -d ${quoted(command.summary)}`,
      ...optionsOf(command, offered).map(({ name, value, choices, meaning }) => {
        const wanted = value === null ? '' : choices ? ` -x -a ${quoted(choices.join(' '))}` : ' -r -F';
        return `${within} -l ${name}${wanted} -d ${quoted(meaning)}`;
      }),
      operands
        ? `${within} -a ${quoted(operands.join(' '))}`
        : `${within} -a '(__fish_complete_suffix .plica)'`,
    ];
  });
  return `# Completion of plica for fish. To install: ${INSTALLING.fish}
complete -c plica -f
complete -c plica ${first} -a help -d 'tell about a command'
complete -c plica -n '__fish_seen_subcommand_from help' -a ${quoted(names(commands))}
${lines.join('\n')}
`;
}

const SCRIPTS: Readonly<Record<Shell, (offered: Offered) => string>> = { bash, zsh, fish };
