// A thread's work: leaves of one recipe file after the other.
'use strict';
const { join } = require('node:path');

// Beside this file once it is built.
const program = require(join(__dirname, 'plica.cjs')).program();

module.exports = (task) => program.leafWork(task, program.nodeHost(task.cwd, process.env));
