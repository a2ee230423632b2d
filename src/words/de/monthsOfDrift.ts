// German: how a centre drifted over months.
import type { Trend } from '../../logbook/trend.ts';
import { write } from './write.ts';

const DAY = 86_400_000;
const DAYS_IN_A_MONTH = 30.44;

/** Days up to two months, months from there on; after "in". */
function spanOf(milliseconds: number): string {
  const days = Math.round(milliseconds / DAY);
  return days < 60
    ? write.count(days, { one: '# Tag', other: '# Tagen' })
    : write.count(Math.round(days / DAYS_IN_A_MONTH), { one: '# Monat', other: '# Monaten' });
}

const stepsMoved = (value: number): string => `${write.signed(value, 1)} ${Math.round(Math.abs(value) * 10) === 10 ? 'Stufe' : 'Stufen'}`;

export function driftTold({ from, to, moved, tells }: Pick<Trend, 'from' | 'to' | 'moved' | 'tells'>): string {
  const between = `zwischen ${write.signed(moved.from, 1)} und ${write.signed(moved.to, 1)}`;
  return tells === 'drift'
    ? `Drift in ${spanOf(to - from)}: ${stepsMoved(moved.value)}, mit ${write.percent(0.95)} Sicherheit ${between}.`
    : `Keine klare Drift in ${spanOf(to - from)}: mit ${write.percent(0.95)} Sicherheit ${between} Stufen.`;
}
