// English: how a centre drifted over months.
import type { Trend } from '../../logbook/trend.ts';
import { write } from './write.ts';

const DAY = 86_400_000;
const DAYS_IN_A_MONTH = 30.44;

/** Days up to two months, months from there on. */
function spanOf(milliseconds: number): string {
  const days = Math.round(milliseconds / DAY);
  return days < 60
    ? write.count(days, { one: '# day', other: '# days' })
    : write.count(Math.round(days / DAYS_IN_A_MONTH), { one: '# month', other: '# months' });
}

const stepsMoved = (value: number): string => `${write.signed(value, 1)} ${Math.round(Math.abs(value) * 10) === 10 ? 'step' : 'steps'}`;

export function driftTold({ from, to, moved, tells }: Pick<Trend, 'from' | 'to' | 'moved' | 'tells'>): string {
  const between = `between ${write.signed(moved.from, 1)} and ${write.signed(moved.to, 1)}`;
  return tells === 'drift'
    ? `Drift in ${spanOf(to - from)}: ${stepsMoved(moved.value)}, ${between}, 95% sure.`
    : `No clear drift in ${spanOf(to - from)}: ${between} steps, 95% sure.`;
}
