// Where the plan stands, read off the logbook, and how long the rest will take at the person's own pace.
import { useMemo } from 'preact/hooks';
import type { Shelved } from '../../logbook/shelf.ts';
import { progressOf, type Progress } from '../../logbook/plan/jobPlan.ts';
import { paceOf, type SweepTime } from '../../logbook/plan/pace.ts';
import { useShelf } from '../logbook/useShelf.ts';
import { useSession } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';

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

/** In one sentence or two, to be read and to be heard. */
export function progressInWords({ progress: { done, stations, next, left }, shelved }: PlanNow): string {
  const count = `${done} of ${stations.length} measured`;
  const subject = next && shelved.get(next.id)?.subject;
  if (!subject) return `${count}: the plan is done.`;
  const { lens, details } = subjectInWords(subject);
  return `${count}, about ${minutes(left)} left. Next: ${lens}, ${details}.`;
}

export function minutes(seconds: number): string {
  const whole = Math.max(1, Math.round(seconds / 60));
  return whole < 100 ? `${whole} min` : `${Math.floor(whole / 60)} h ${whole % 60} min`;
}
