import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { newConverter, newLens } from '../../../src/kit/kit.ts';
import { CHANGE } from '../../../src/logbook/plan/changes.ts';
import { JobPlan, progressOf } from '../../../src/logbook/plan/jobPlan.ts';
import { paceOf } from '../../../src/logbook/plan/pace.ts';
import { situationsWanted, type Wanted } from '../../../src/logbook/plan/wanted.ts';
import { millimetres, moment, seconds } from '../../../src/units.ts';
import { libraryWith, sweepRecord, T0 } from '../libraryWith.ts';

const stop = (id: string, distance: number) => ({ id, body: 'b', lens: 'l', converter: null, focalLength: millimetres(85), distance: millimetres(distance) });
const stops = [stop('near', 1200), stop('far', 8000)];
const plan = v.parse(JobPlan, { begun: T0, situations: ['near', 'gone', 'far'] });

describe('the progress of a plan', () => {
  it('is read off the logbook: what was measured since it began is done, the first other is next', () => {
    const progress = progressOf(plan, stops, [{ situation: 'near', at: moment(T0 + 1) }], seconds(200));
    expect(progress.stations.map(({ stop: { id }, is }) => [id, is])).toEqual([
      ['near', 'done'],
      ['far', 'next'],
    ]);
    expect(progress).toMatchObject({ done: 1, next: { id: 'far' }, left: 200 + CHANGE.tripod });
  });

  it('does not count what was measured before it began', () => {
    expect(progressOf(plan, stops, [{ situation: 'near', at: moment(T0 - 1) }], seconds(200))).toMatchObject({ done: 0, left: 400 + CHANGE.tripod });
  });

  it('is over when everything still in the kit is done', () => {
    const measured = stops.map(({ id }) => ({ situation: id, at: moment(T0) }));
    expect(progressOf(plan, stops, measured, seconds(200))).toMatchObject({ done: 2, next: null, left: 0 });
  });
});

describe('the pace of a person', () => {
  const taking = (id: string, time: number, practice = false) =>
    sweepRecord(id, T0, 0, 4, { practice, outcome: { found: 'nothing', tally: { holds: 9, seconds: time } } });
  const of = (records: unknown[]) => paceOf(libraryWith({ records }).records);

  it('is the middle of their sweeps, the practice camera left out', () => {
    expect(of([taking('a', 100), taking('b', 900), taking('c', 200), taking('d', 5, true)])).toEqual({ perSweep: 200, sweeps: 3 });
    expect(of([taking('a', 100), taking('b', 200)])).toEqual({ perSweep: 150, sweeps: 2 });
  });

  it('is a guess, and says so, before the first', () => {
    expect(of([])).toMatchObject({ sweeps: 0 });
  });
});

describe('what is wanted', () => {
  const zoom = { ...newLens('zoom', 'Orrin 24–70 f/2.8', moment(0)), focal: { from: millimetres(24), to: millimetres(70) } };
  const plain = newLens('plain', 'Orrin 85 f/1.8', moment(0));
  const converters = [newConverter('c', 'Orrin 1.4×', 1.4, moment(0))];
  const wanted: Wanted = { bodies: ['b'], lenses: ['zoom'], converters: ['c'], ends: 'both', distances: [millimetres(1500), millimetres(9000)] };

  it('is every end at every distance, bare and with the converter', () => {
    const result = situationsWanted(wanted, { lenses: [zoom], converters });
    expect(result.ok && result.value).toHaveLength(8);
  });

  it('is at fifty focal lengths, those with the converter together, where no distance is named', () => {
    const result = situationsWanted({ ...wanted, ends: 'tele', distances: [] }, { lenses: [zoom], converters });
    expect(result.ok && result.value.map(({ focalLength, distance }) => [focalLength, distance])).toEqual([
      [70, 3500],
      [70, 4900],
    ]);
  });

  it.each([
    [{ ...wanted, bodies: [] }, { is: 'no body' }],
    [{ ...wanted, lenses: [] }, { is: 'no lens' }],
    [
      { ...wanted, lenses: ['plain'] },
      { is: 'no focal length', lens: 'Orrin 85 f/1.8' },
    ],
  ])('asks for what is missing', (incomplete, fault) => {
    expect(situationsWanted(incomplete, { lenses: [zoom, plain], converters })).toEqual({ ok: false, fault });
  });
});
