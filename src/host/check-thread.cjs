// A thread's work: checks recipes beside the thread that started it.
'use strict';
const { join } = require('node:path');
const { parentPort, workerData } = require('node:worker_threads');

// Beside this file once it is built.
const program = require(join(__dirname, 'plica.cjs')).program();

program.checkTurns(workerData, program.nodeHost(workerData.cwd, process.env), (told) => parentPort.postMessage(told));
