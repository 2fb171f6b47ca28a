#!/usr/bin/env node
// Starts the program beside it. It comes in two packs of parts: what nearly every start wants, and the rest, read when it is
// asked for. The build leaves the packs' compiled forms for the Node it was built with; any other Node finds none and
// compiles anew (DEVELOPERS.md, decisions 22 and 108).
'use strict';
const { readFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script } = require('node:vm');

const PACKS = ['program.cjs', 'further.cjs'];
const MAIN = './main.cjs';

/** The parts of the packs read so far, by name; and what those that have run export. */
const parts = {};
const ran = {};
const scripts = [];

/** Takes a part of the program as `require` takes a file; anything else is Node's. */
function take(name) {
  if (!name.startsWith('./')) return require(name);
  if (ran[name]) return ran[name].exports;
  while (!parts[name]) readPack(PACKS[scripts.length]);
  const module = { exports: {} };
  ran[name] = module;
  parts[name](module.exports, take, module, __dirname);
  return module.exports;
}

function readPack(pack) {
  const filename = join(__dirname, pack);
  const script = new Script(readFileSync(filename, 'latin1'), { filename, cachedData: kept(pack) });
  scripts.push(script);
  Object.assign(parts, script.runInThisContext());
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

/** What the build keeps of each pack for the next start: where, and the bytes. */
const compiledForms = () => scripts.map((script, index) => [placeOfCompiled(PACKS[index]), script.createCachedData()]);

if (require.main === module) take(MAIN).main();
else module.exports = { program: () => take(MAIN), partsRun: () => Object.keys(ran), compiledForms };
