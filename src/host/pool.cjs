// Opens a pool of threads that run the program beside it. The pool's package is an ES module, which only a real file may
// import; the program is compiled from text (start.cjs).
'use strict';
const { join } = require('node:path');

/** @param {number} threads */
exports.open = async (threads) => {
  const { Tinypool } = await import('tinypool');
  return new Tinypool({
    filename: join(__dirname, 'leaf-thread.cjs'),
    minThreads: threads,
    maxThreads: threads,
    concurrentTasksPerWorker: 1,
  });
};
