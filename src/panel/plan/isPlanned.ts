// Is this sweep one of the plan's?
import type { JobPlan } from '../../logbook/plan/jobPlan.ts';
import { isNamed } from '../../sweep/named.ts';
import type { SweepState } from '../../sweep/state.ts';

export const isPlanned = (plan: JobPlan | null, { plan: { subject, practice } }: SweepState): boolean =>
  plan !== null && practice === null && isNamed(subject) && plan.situations.includes(subject.situation);
