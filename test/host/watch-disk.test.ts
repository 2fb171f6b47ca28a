import { EventEmitter } from 'node:events';
import { expect, test, vi } from 'vitest';
import { watchDisk } from '../../src/host/watch-disk.js';
import { scratch } from '../support/scratch.js';

/** A system that watches no more folders: it says so, and then nothing. */
vi.mock('chokidar', () => ({
  watch: () => {
    const watcher = Object.assign(new EventEmitter(), { close: async () => {} });
    setImmediate(() => {
      watcher.emit('error', Object.assign(new Error('too many'), { code: 'ENOSPC' }));
      watcher.emit('ready');
    });
    return watcher;
  },
}));

test('where the system does not tell of changes, it is looked again and again', {
  timeout: 30_000,
}, async () => {
  const listeners = process.listenerCount('SIGINT');
  const { follow, changed, stop } = watchDisk(scratch({ 'a.plica': '' }), null);
  await follow(['.']);
  for (let look = 0; look < 3; look++) expect(await changed()).toBe(true);
  await stop();
  expect(await changed()).toBe(false);
  expect(process.listenerCount('SIGINT')).toBe(listeners);
});
