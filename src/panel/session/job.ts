// Planning a job: the order is worked out once, so that a plan picked up again goes on in the order it was begun in.
import { orderOf } from '../../logbook/plan/order.ts';
import type { Moment } from '../../units.ts';
import type { LibraryStore } from './library.ts';

export interface Job {
  planJob(situations: readonly string[]): void;
}

export function createJob({ kit, changePlan }: Pick<LibraryStore, 'kit' | 'changePlan'>, now: () => Moment): Job {
  return {
    planJob(situations) {
      const ordered = orderOf(kit.peek().situations.filter(({ id }) => situations.includes(id)));
      changePlan(ordered.length > 0 ? { begun: now(), situations: ordered.map(({ id }) => id) } : null);
    },
  };
}
