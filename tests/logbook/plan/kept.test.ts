// Orders, costs, pace and what is wanted of seeded plans, kept; and where the count of stops changes how the order is found.
import { describe, expect, test } from 'vitest';
import { newConverter, newLens } from '../../../src/kit/kit.ts';
import { changeBetween, costBetween, secondsFor } from '../../../src/logbook/plan/changes.ts';
import { progressOf, type JobPlan } from '../../../src/logbook/plan/jobPlan.ts';
import { orderOf } from '../../../src/logbook/plan/order.ts';
import { paceOf } from '../../../src/logbook/plan/pace.ts';
import { situationsWanted } from '../../../src/logbook/plan/wanted.ts';
import { millimetres, moment, seconds } from '../../../src/units.ts';
import { orThrown } from '../../kept/orThrown.ts';
import { stopsFrom } from './stops.ts';

const upTo = (count: number): number[] => Array.from({ length: count }, (_, index) => index);
const idsOf = (stops: readonly { id: string }[]): string => stops.map(({ id }) => id).join(' ');

test('the order of plans of every size', () => {
  const orders = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20].map((count) => orThrown(() => idsOf(orderOf(stopsFrom(count + 40, count)))));
  expect(orders).toMatchSnapshot('first');
  expect(upTo(12).map((seed) => orThrown(() => idsOf(orderOf(stopsFrom(seed, 3 + (seed % 4))))))).toMatchSnapshot('second');
  expect(upTo(6).map((seed) => orThrown(() => idsOf(orderOf(stopsFrom(seed + 70, 11)))))).toMatchSnapshot('third');
});

test('one or two stops stay as they were given', () => {
  const [one, other, third] = [stopsFrom(3, 1), stopsFrom(3, 2), stopsFrom(3, 3)];
  expect([orderOf([]), orderOf(one), orderOf(other), orderOf(other.toReversed())]).toEqual([[], one, other, other.toReversed()]);
  expect(orderOf(third)).toHaveLength(3);
});

test('what each change costs', () => {
  const stops = stopsFrom(5, 14);
  const costs = stops.slice(1).map((stop, at) => {
    const before = stops[at] ?? stop;
    const change = changeBetween(before, stop);
    return `${Object.values(change).map(Number).join('')} ${secondsFor(change)} ${costBetween(before, stop)}`;
  });
  expect(costs).toMatchSnapshot();
  const all = { tripod: true, body: true, lens: true, converter: true, zoom: true };
  expect(secondsFor(all)).toBe(300 + 90 + 60 + 45 + 20);
});

test('how far a plan is, and how long the rest takes', () => {
  const stops = stopsFrom(8, 6);
  const plan: JobPlan = { begun: moment(1000), situations: ['0', '1', '2', 'gone', '3', '4', '5'] };
  const told = [[], ['0'], ['1', '3'], ['0', '1', '2', '3', '4'], ['0', '1', '2', '3', '4', '5']].map((done) => {
    const measured = done.map((situation) => ({ situation, at: moment(1000) }));
    const { stations, next, left, done: count } = progressOf(plan, stops, measured, seconds(200));
    return [
      stations.map(({ is }) => is.slice(0, 1)).join(''),
      count,
      next?.id,
      left,
      stations.map(({ change }) => (change ? secondsFor(change) : '-')).join(' '),
    ];
  });
  expect(told.map((row) => row.join(' | '))).toMatchSnapshot();
  expect(progressOf(plan, stops, [{ situation: '0', at: moment(999) }], seconds(1)).done).toBe(0);
});

describe('the pace', () => {
  const taking = (time: number, practice = false) => ({ practice, outcome: { tally: { seconds: seconds(time) } } });
  test('rests on the latest fifteen', () => {
    expect(paceOf(upTo(16).map((at) => taking(at === 15 ? 9000 : 100 + at)))).toEqual({ perSweep: 107, sweeps: 15 });
    expect(paceOf([...upTo(14).map(() => taking(100)), taking(9, true), taking(300)])).toEqual({ perSweep: 100, sweeps: 15 });
    expect(paceOf([taking(300), taking(100), taking(120), taking(900)])).toEqual({ perSweep: 210, sweeps: 4 });
  });

  test('is three and a half minutes before the first', () => {
    // Common practice, no source.
    expect(paceOf([])).toEqual({ perSweep: 210, sweeps: 0 });
    expect(paceOf([taking(7)])).toEqual({ perSweep: 7, sweeps: 1 });
  });
});

test('what is wanted, of every choice of ends and distances', () => {
  const zoom = { ...newLens('zoom', 'Orrin 24-70', moment(0)), focal: { from: millimetres(24), to: millimetres(70) } };
  const plain = { ...newLens('plain', 'Orrin 85', moment(0)), focal: { from: millimetres(85), to: millimetres(85) } };
  const unknown = newLens('unknown', 'Velde', moment(0));
  const converters = [newConverter('c', 'Orrin 1.4', 1.4, moment(0)), newConverter('d', 'Orrin 2', 2, moment(0))];
  const of = (ends: 'both' | 'wide' | 'tele', lenses: readonly string[], chosen: readonly string[], distances: readonly number[]) =>
    orThrown(() => {
      const wanted = { bodies: ['b', 'e'], lenses, converters: chosen, ends, distances: distances.map(millimetres) };
      const result = situationsWanted(wanted, { lenses: [zoom, plain, { ...unknown, focal: null }], converters });
      return result.ok
        ? result.value.map(({ body, lens, converter, focalLength, distance }) => [body, lens, converter, focalLength, distance].join(' ')).join(', ')
        : JSON.stringify(result.fault);
    });
  const both = ['zoom', 'plain'];
  expect([
    of('both', both, ['c'], []),
    of('wide', both, [], [1000]),
    of('tele', both, ['d'], [1000, 2000]),
    of('both', [...both, 'unknown'], [], []),
  ]).toMatchSnapshot('first');
  expect([of('both', [], [], []), of('both', ['gone'], [], [])]).toMatchSnapshot('second');
});
