// French: how a centre drifted over months.
import type { Trend } from '../../logbook/trend.ts';
import { write } from './write.ts';

const DAY = 86_400_000;
const DAYS_IN_A_MONTH = 30.44;

/** Days up to two months, months from there on. */
function spanOf(milliseconds: number): string {
  const days = Math.round(milliseconds / DAY);
  return days < 60 ? write.count(days, { one: '# jour', other: '# jours' }) : write.count(Math.round(days / DAYS_IN_A_MONTH), { other: '# mois' });
}

export function driftTold({ from, to, moved, tells }: Pick<Trend, 'from' | 'to' | 'moved' | 'tells'>): string {
  const between = `entre ${write.signed(moved.from, 1)} et ${write.signed(moved.to, 1)}`;
  const sure = `sûr à ${write.percent(0.95)}`;
  return tells === 'drift'
    ? `Dérive en ${spanOf(to - from)} : ${write.signed(moved.value, 1)} pas, ${between}, ${sure}.`
    : `Pas de dérive nette en ${spanOf(to - from)} : ${between} pas, ${sure}.`;
}
