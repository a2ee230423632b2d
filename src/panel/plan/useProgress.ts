// Where the plan stands, read off the logbook, and how long the rest will take at the person's own pace.
import { useMemo } from 'preact/hooks';
import type { Shelved } from '../../logbook/shelf.ts';
import { progressOf, type Progress } from '../../logbook/plan/jobPlan.ts';
import { paceOf, type SweepTime } from '../../logbook/plan/pace.ts';
import type { PlanWords } from '../../words/planWords.ts';
import { useShelf } from '../logbook/useShelf.ts';
import { useSession } from '../useSession.ts';

export interface PlanNow {
  readonly progress: Progress;
  readonly pace: SweepTime;
  readonly shelved: ReadonlyMap<string, Shelved>;
}

export function usePlanNow(): PlanNow | null {
  const session = useSession();
  const [plan, kit, records] = [session.plan.value, session.kit.value, session.records.value];
  const shelf = useShelf();
  return useMemo(() => {
    if (!plan) return null;
    const measured = shelf.flatMap(({ history }) => history.measured.map(({ subject, at }) => ({ situation: subject.situation, at })));
    const pace = paceOf(records);
    const shelved = new Map(shelf.map((one) => [one.subject.situation, one]));
    return { progress: progressOf(plan, kit.situations, measured, pace.perSweep), pace, shelved };
  }, [plan, kit, records, shelf]);
}

export function progressInWords({ progress: { done, stations, next, left }, shelved }: PlanNow, say: PlanWords): readonly string[] {
  const subject = (next && shelved.get(next.id)?.subject) ?? null;
  return say.progress({ done, all: stations.length, left, next: subject });
}
