// What has to be changed before the next situation of a plan.
import type { Change } from '../../logbook/plan/changes.ts';

const SAID: readonly (readonly [keyof Change, string])[] = [
  ['tripod', 'move the tripod'],
  ['body', 'change the body'],
  ['lens', 'change the lens'],
  ['converter', 'change the converter'],
  ['zoom', 'turn the zoom'],
];

export function changeInWords(change: Change): string {
  const [first, ...rest] = SAID.filter(([part]) => change[part]).map(([, words]) => words);
  return first ? `${[first.charAt(0).toUpperCase() + first.slice(1), ...rest].join(', ')}:` : '';
}
