import type { Palette } from '../diagnostics/render-text.js';
import type { Host, Outlet } from '../host/host.js';
import type { Arguments } from './arguments.js';

/** Colours for one of the host's streams; null: none are wanted there. */
export async function paletteFor(outlet: Outlet, { env }: Host, given: Arguments): Promise<Palette | null> {
  if (!wantsColour(outlet, env, given.value('color') ?? 'auto')) return null;
  const { Chalk } = await import('chalk');
  const chalk = new Chalk({ level: 1 });
  return {
    error: ink(chalk.bold.red),
    warning: ink(chalk.bold.yellow),
    note: ink(chalk.bold.cyan),
    strong: ink(chalk.bold),
    faint: ink(chalk.dim),
  };
}

/** One text at a time: an ink would print all that it is handed, as `map` hands over the index and the list too. */
const ink =
  (paint: (text: string) => string) =>
  (text: string): string =>
    paint(text);

function wantsColour(outlet: Outlet, env: Host['env'], when: string): boolean {
  if (when !== 'auto') return when === 'always';
  return !env['NO_COLOR'] && env['TERM'] !== 'dumb' && outlet.isTerminal();
}
