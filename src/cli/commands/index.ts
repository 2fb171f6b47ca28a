import type { Command } from '../command.js';
import { build } from './build.js';
import { catalogue } from './catalogue.js';
import { check } from './check.js';
import { completion } from './completion.js';
import { diff } from './diff.js';
import { explain } from './explain.js';
import { fit } from './fit.js';
import { format } from './format.js';
import { gitDiff } from './git-diff.js';
import { gitSetup } from './git-setup.js';
import { gitText } from './git-text.js';
import { log } from './log.js';
import { plan } from './plan.js';
import { newCommand } from './new.js';
import { show } from './show.js';
import { watch } from './watch.js';

/** Every command, in the order of the help. */
export const COMMANDS: readonly Command[] = [
  check,
  watch,
  format,
  show,
  build,
  catalogue,
  plan,
  fit,
  diff,
  log,
  explain,
  newCommand,
  gitSetup,
  gitText,
  gitDiff,
  completion,
];
