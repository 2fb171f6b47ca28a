import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { bell } from '../../src/host/bell.js';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** What a wait has come to so far. */
function hearing(wait: Promise<boolean>): { heard: boolean | null } {
  const ear: { heard: boolean | null } = { heard: null };
  void wait.then((more) => (ear.heard = more));
  return ear;
}

test('many rings are heard as one, once they have been still', async () => {
  const { ring, wait } = bell(60);
  const ear = hearing(wait());
  for (let step = 0; step < 5; step++) {
    ring();
    await vi.advanceTimersByTimeAsync(59);
    expect(ear.heard).toBe(null);
  }
  await vi.advanceTimersByTimeAsync(1);
  expect(ear.heard).toBe(true);
  const next = hearing(wait());
  await vi.advanceTimersByTimeAsync(1000);
  expect(next.heard).toBe(null);
});

test('what rings while nobody waits is heard at the next wait', async () => {
  const { ring, wait } = bell(60);
  ring();
  await vi.advanceTimersByTimeAsync(60);
  expect(await wait()).toBe(true);
});

test('once stopped it says so to who waits, and to who comes later, whatever rings', async () => {
  const { ring, wait, stop } = bell(60);
  const ear = hearing(wait());
  ring();
  stop();
  await vi.advanceTimersByTimeAsync(60);
  expect(ear.heard).toBe(false);
  ring();
  expect(await wait()).toBe(false);
  expect(vi.getTimerCount()).toBe(0);
});
