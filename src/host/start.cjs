#!/usr/bin/env node
// Starts the program beside it. It comes in two packs of parts: what nearly every start wants, and the rest, read when it is
// asked for. The build leaves the packs' compiled forms for the Node it was built with; any other Node finds none and
// compiles anew (DEVELOPERS.md, decisions 22 and 108).
'use strict';
const { readFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script } = require('node:vm');

const FIRST = 'program.cjs';
const FURTHER = 'further.cjs';

/** What the parts that have run export, by name; and the parts of the second pack, once it is read. */
const exported = {};
let further = null;
const scripts = new Map();

/** Takes a part of the program as `require` takes a file; anything else is Node's. */
function take(name) {
  if (!name.startsWith('./')) return require(name);
  if (exported[name] === undefined) {
    further ??= read(FURTHER);
    const module = { exports: (exported[name] = {}) };
    further[name](module.exports, take, module, __dirname);
    exported[name] = module.exports;
  }
  return exported[name];
}

/** The first pack is one function, and exports its parts by their names. */
function takeFirst() {
  const module = { exports: exported };
  read(FIRST)(module.exports, take, module, __dirname);
  Object.assign(exported, module.exports);
}

function read(pack) {
  const filename = join(__dirname, pack);
  const script = new Script(readFileSync(filename, 'latin1'), { filename, cachedData: kept(pack) });
  scripts.set(pack, script);
  return script.runInThisContext();
}

/** Where the compiled form of a pack for this Node lies. */
const placeOfCompiled = (pack) => join(__dirname, `${pack}-${process.version}-${process.arch}.cache`);

function kept(pack) {
  try {
    return readFileSync(placeOfCompiled(pack));
  } catch {
    return undefined;
  }
}

takeFirst();
if (require.main === module) take('./main.cjs').main();
else module.exports = { program: () => take('./main.cjs'), partsRun: () => Object.keys(exported), compiledForms };

/** What the build keeps of each pack for the next start: where, and the bytes. */
function compiledForms() {
  return [...scripts].map(([pack, script]) => [placeOfCompiled(pack), script.createCachedData()]);
}
