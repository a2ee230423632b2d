// The bench: what the methods cost and give, on simulated people and cameras, in one run. Ratios are compared within the
// run, so a slow machine changes nothing but the time it takes. Exit 1 where a bound is missed.
//   npm run bench [-- --only NAME] [--json FILE] [--data FOLDER] [--kills NUMBER] [--record FILE]
// The folder of measured data is ../shared/data where none is named and it stands there. Kills and their file are those of `power`.
import { existsSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { hearing } from './hearing/hearing.ts';
import { isMet, type Family, type Figure } from './figure.ts';
import { holdTimer } from './holdTimer/holdTimer.ts';
import { lookUp } from './lookUp/lookUp.ts';
import { paint } from './paint/paint.ts';
import { panel } from './panel.ts';
import { photographs } from './photographs/photographs.ts';
import { readingTime } from './photographs/readingTime.ts';
import { power } from './power/power.ts';
import { records } from './records/records.ts';
import { suggestion } from './suggestion.ts';
import { awkwardSweeps } from './sweep/awkwardFamily.ts';
import { memory } from './sweep/memoryFamily.ts';
import { moved } from './sweep/movedFamily.ts';
import { observers } from './sweep/observersFamily.ts';
import { remaining } from './sweep/remainingFamily.ts';
import { sweeps } from './sweep/ordinaryFamily.ts';
import { transfer } from './sweep/transferFamily.ts';
import { troubles } from './sweep/troublesFamily.ts';
import { taughtRule } from './taughtRule.ts';
import { makeReady } from '../programs/ready.ts';

const families: readonly Family[] = [
  taughtRule,
  sweeps,
  awkwardSweeps,
  observers,
  moved,
  troubles,
  remaining,
  memory,
  transfer,
  suggestion,
  panel,
  paint,
  lookUp,
  records,
  holdTimer,
  hearing,
  photographs,
  readingTime,
  power,
];

const BESIDE = '../shared/data';
const { values } = parseArgs({
  options: { only: { type: 'string' }, json: { type: 'string' }, data: { type: 'string' }, kills: { type: 'string' }, record: { type: 'string' } },
});
const wanted = values.only?.split(',') ?? families.map(({ name }) => name);
const unknown = wanted.filter((name) => !families.some((family) => family.name === name));
const chosen = families.filter(({ name }) => wanted.includes(name));
if (unknown.length > 0) {
  console.error(`No family is called ${unknown.join(', ')}. There are: ${families.map(({ name }) => name).join(', ')}.`);
  process.exit(2);
}

makeReady(chosen.flatMap(({ needs }) => needs ?? []));

const all: (Figure & { family: string; holds: boolean })[] = [];
for (const family of chosen) {
  console.log(`\n${family.name}`);
  const figures = await family.run({
    data: values.data ?? (existsSync(BESIDE) ? BESIDE : null),
    kills: values.kills === undefined ? undefined : Number(values.kills),
    record: values.record,
    tell: (sentence) => console.log(`  … ${sentence}`),
  });
  for (const figure of figures) {
    const holds = isMet(figure);
    all.push({ ...figure, family: family.name, holds });
    console.log(`  ${holds ? ' ' : '✗'} ${figure.name}: ${shownNumber(figure.value)}${boundInWords(figure)}`);
  }
}
if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify(all, null, 2)}\n`);
const missed = all.filter(({ holds }) => !holds).length;
console.log(`\n${all.length - missed} figures hold, ${missed} missed`);
process.exitCode = missed > 0 ? 1 : 0;

function shownNumber(value: number): string {
  return Number.isInteger(value) ? String(value) : value.toPrecision(4);
}

function boundInWords({ bound }: Figure): string {
  if (bound === null) return '';
  return 'most' in bound ? `  (at most ${bound.most})` : `  (at least ${bound.least})`;
}
