// A keeper for tests that are not about the disk: everything is on it at once.
import { signal } from '@preact/signals';
import type { Keeper } from '../../../src/panel/session/keeper.ts';

export const DISK_AT_ONCE: Keeper = {
  keep: async () => undefined,
  written: async () => true,
  unwritten: signal(new Set<string>()),
  waitsFor: () => false,
  forget: () => undefined,
};
