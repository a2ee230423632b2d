// Spanish: how a centre drifted over months.
import type { Trend } from '../../logbook/trend.ts';
import { write } from './write.ts';

const DAY = 86_400_000;
const DAYS_IN_A_MONTH = 30.44;

/** Days up to two months, months from there on. */
function spanOf(milliseconds: number): string {
  const days = Math.round(milliseconds / DAY);
  return days < 60 ? write.count(days, { one: '# día', other: '# días' }) : write.count(Math.round(days / DAYS_IN_A_MONTH), { one: '# mes', other: '# meses' });
}

const stepsMoved = (value: number): string => `${write.signed(value, 1)} ${Math.round(Math.abs(value) * 10) === 10 ? 'paso' : 'pasos'}`;

export function driftTold({ from, to, moved, tells }: Pick<Trend, 'from' | 'to' | 'moved' | 'tells'>): string {
  const between = `entre ${write.signed(moved.from, 1)} y ${write.signed(moved.to, 1)}`;
  const sure = `con un ${write.percent(0.95)} de confianza`;
  return tells === 'drift'
    ? `Deriva en ${spanOf(to - from)}: ${stepsMoved(moved.value)}, ${between}, ${sure}.`
    : `Sin deriva clara en ${spanOf(to - from)}: ${between} pasos, ${sure}.`;
}
