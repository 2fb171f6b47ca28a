#!/usr/bin/env node
// Starts the program beside it. The build leaves the program's compiled form for the Node it was built with; any other
// Node finds none and compiles the program anew (DEVELOPERS.md, decision 22).
'use strict';
const { readFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script } = require('node:vm');

/** Compiles `program.cjs` and runs it, as `require` would. */
function load() {
  const filename = join(__dirname, 'program.cjs');
  const text = `(function (exports, require, module, __filename, __dirname) {${readFileSync(filename, 'latin1')}\n})`;
  const script = new Script(text, { filename, cachedData: kept() });
  const program = { exports: {} };
  script.runInThisContext()(program.exports, require, program, filename, __dirname);
  return { program: program.exports, script };
}

/** Where the compiled form for this Node lies. */
const place = join(__dirname, `program-${process.version}-${process.arch}.cache`);

function kept() {
  try {
    return readFileSync(place);
  } catch {
    return undefined;
  }
}

if (require.main === module) load().program.main();
else module.exports = { load, place };
