// Whether a person is shown what the camera's button does and what the switch does, and in which holds. The switch feels like
// a shutter; two holds are enough to know that it is not one.
import type { Settings } from '../../settings.ts';
import type { SweepState } from '../../sweep/state.ts';

const HOLDS_COACHED = 2;

type Kept = readonly { readonly practice: boolean }[];

/** Has this person yet to learn it? Whoever has a sweep of a real camera in the logbook has not. */
export const isNew = ({ coached }: Pick<Settings, 'coached'>, records: Kept): boolean => coached < HOLDS_COACHED && !records.some(({ practice }) => !practice);

/** What the sweep screen shows of it now. */
export type Coached =
  /** The picture of the two buttons, before the first hold on a real camera. */
  | { readonly shows: 'buttons'; readonly lights: boolean }
  /** What happens now, and what to press. */
  | { readonly shows: 'phase'; readonly phase: 'dialling' | 'holding' | 'judging'; readonly lights: boolean }
  /** The four lights alone, before the first verdict on the practice camera. */
  | { readonly shows: 'lights' };

export function coachedNow({ phase, holds, spent, plan }: SweepState, settings: Pick<Settings, 'coached'>, records: Kept): Coached | null {
  if (!isNew(settings, records)) return null;
  const lights = holds.length + spent.length === 0 && settings.coached === 0;
  const { name } = phase;
  if (plan.practice) return lights && records.length === 0 && name === 'dialling' ? { shows: 'lights' } : null;
  if (name === 'dialling' && lights) return { shows: 'buttons', lights };
  return name === 'dialling' || name === 'holding' || name === 'judging' ? { shows: 'phase', phase: name, lights: name === 'holding' } : null;
}
