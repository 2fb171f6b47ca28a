// A thread's work: leaves of one recipe file after the other.
'use strict';
const { program } = require('./plica.cjs').load();

module.exports = (task) => program.leafWork(task, program.nodeHost(task.cwd, process.env));
