// Japanese: how a centre drifted over months.
import type { Trend } from '../../logbook/trend.ts';
import { between } from './focusFell.ts';
import { write } from './write.ts';

const DAY = 86_400_000;
const DAYS_IN_A_MONTH = 30.44;

/** Days up to two months, months from there on. */
function spanOf(milliseconds: number): string {
  const days = Math.round(milliseconds / DAY);
  return days < 60 ? `${write.number(days)}日間` : `${write.number(Math.round(days / DAYS_IN_A_MONTH))}か月間`;
}

export function driftTold({ from, to, moved, tells }: Pick<Trend, 'from' | 'to' | 'moved' | 'tells'>): string {
  const interval = between(moved.from, moved.to);
  return tells === 'drift'
    ? `${spanOf(to - from)}の変動：${write.signed(moved.value, 1)}ステップ（95%区間${interval}）。`
    : `${spanOf(to - from)}に明らかな変動はありません（95%区間${interval}ステップ）。`;
}
