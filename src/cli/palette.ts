import type { Palette } from '../diagnostics/render-text.js';
import type { Host, Outlet } from '../host/host.js';
import type { Arguments } from './arguments.js';

/** Colours for one of the host's streams; null: none are wanted there. */
export async function paletteFor(outlet: Outlet, { env }: Host, given: Arguments): Promise<Palette | null> {
  if (!wantsColour(outlet, env, given.value('color') ?? 'auto')) return null;
  const { Chalk } = await import('chalk');
  const chalk = new Chalk({ level: 1 });
  return {
    error: chalk.bold.red,
    warning: chalk.bold.yellow,
    note: chalk.bold.cyan,
    strong: chalk.bold,
    faint: chalk.dim,
  };
}

function wantsColour(outlet: Outlet, env: Host['env'], when: string): boolean {
  if (when !== 'auto') return when === 'always';
  return !env['NO_COLOR'] && env['TERM'] !== 'dumb' && outlet.isTerminal();
}
