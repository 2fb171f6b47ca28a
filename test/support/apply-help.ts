/**
 * Does with a recipe's text what a finding's help says, as its author would: nothing of the compiler is used.
 * Blocks must be laid out as `plica format` does: the header and the closing brace on lines of their own.
 */
export function applyHelp(text: string, envelope: string, help: string): string {
  const lines = text.split('\n');
  const start = lines.findIndex((line) => line.startsWith(`envelope ${envelope} `));
  const end = lines.findIndex((line, index) => index > start && line === '}');
  const block = lines.slice(start + 1, end);
  for (const [, statement = ''] of help.matchAll(/write `([^`]+)`/g)) put(block, statement);
  for (const [, gone = ''] of help.matchAll(/leave ((?:`[^`]+`(?:, | and )?)+) out/g)) takeOut(block, gone);
  for (const [, gone = ''] of help.matchAll(/instead of ((?:`[^`]+`(?: and )?)+)/g)) takeOut(block, gone);
  return [...lines.slice(0, start + 1), ...block, ...lines.slice(end)].join('\n');
}

/** The ways out that a help offers. */
export const alternatives = (help: string): readonly string[] => help.split(', or ');

/** Replaces the entry that states the same property or expectation, or adds one. */
function put(block: string[], statement: string): void {
  const [name = ''] = /^(expect )?[a-z-]+/.exec(statement) ?? [];
  const at = block.findIndex((line) => new RegExp(`^ *${name}\\b(?!-)`).test(line));
  block.splice(at < 0 ? block.length : at, at < 0 ? 0 : 1, `  ${statement}`);
}

function takeOut(block: string[], names: string): void {
  for (const [, name = ''] of names.matchAll(/`([a-z-]+)`/g)) {
    const at = block.findIndex((line) => line.trim().startsWith(`${name}:`));
    if (at >= 0) block.splice(at, 1);
  }
}
