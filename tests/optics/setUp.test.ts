import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { fits } from '../../src/optics/fits.ts';
import { BenchReading, BenchRecord, latest } from '../../src/optics/setUp/reading.ts';
import type { SetUpCase } from '../../src/optics/setUp/step.ts';
import { STEP_IDS } from '../../src/optics/setUp/stepIds.ts';
import { beginWalk, currentStep, isDone, setUpWalk, walk, type WalkEvent } from '../../src/optics/setUp/walk.ts';
import { steps } from '../../src/units.ts';
import { anyCase, plain } from './setUpCases.ts';
import { fault } from './value.ts';

const ids = (given: SetUpCase) => setUpWalk(given).map(({ said }) => said.id);
const said = (given: SetUpCase, id: string) => setUpWalk(given).find((one) => one.said.id === id)!.said;
const cautions = (given: SetUpCase) => setUpWalk(given).flatMap((one) => one.cautions);

describe('the steps', () => {
  it('each stands once, in order', () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        const places = ids(given).map((id) => STEP_IDS.indexOf(id));
        expect(places).toEqual(places.toSorted((a, b) => a - b));
        expect(new Set(places).size).toBe(places.length);
      }),
    );
  });

  it('adapt to body, lens and converter', () => {
    expect(ids(plain)).not.toContain('stabiliser');
    expect(ids({ ...plain, lens: { ...plain.lens, stabiliser: true } })).toContain('stabiliser');
    expect(ids({ ...plain, lens: { ...plain.lens, zoom: true } })).toContain('zoom');
    expect(ids({ ...plain, converter: 1.4 })).toContain('converter');
    expect(ids({ ...plain, body: { ...plain.body, rearButton: true } })).toContain('focus button');
    expect(said({ ...plain, body: { ...plain.body, manualAtBody: false } }, 'hold focus')).toEqual({ id: 'hold focus', at: 'lens' });
    expect(said({ ...plain, body: { ...plain.body, liveView: false } }, 'critical focus')).toEqual({ id: 'critical focus', by: 'photographs' });
    expect(said({ ...plain, start: steps(-7) }, 'start value')).toEqual({ id: 'start value', start: -7 });
    expect(said({ ...plain, measuredFrom: 'front of lens', unit: 'ft' }, 'distance')).toEqual({
      id: 'distance',
      distance: 4250,
      from: 'front of lens',
      unit: 'ft',
    });
  });

  it('say where each stabiliser, switch and view is, and which reading may be entered', () => {
    const body = (given: Partial<SetUpCase['body']>) => ({ ...plain, body: { ...plain.body, ...given } });
    const stabilised = (inBody: boolean, inLens: boolean) =>
      said({ ...body({ stabiliser: inBody }), lens: { ...plain.lens, stabiliser: inLens } }, 'stabiliser');
    expect([stabilised(true, true), stabilised(false, true), stabilised(true, false)]).toEqual(
      ['both', 'lens', 'body'].map((at) => ({ id: 'stabiliser', at })),
    );
    expect([true, false].map((liveView) => said(body({ liveView }), 'viewfinder'))).toEqual([
      { id: 'viewfinder', leaves: 'live view' },
      { id: 'viewfinder', leaves: 'nothing' },
    ]);
    expect(said(plain, 'critical focus')).toEqual({ id: 'critical focus', by: 'live view' });
    expect(said(plain, 'hold focus')).toEqual({ id: 'hold focus', at: 'body' });
    expect(said({ ...plain, converter: 1.4 }, 'converter')).toEqual({ id: 'converter', factor: 1.4 });
    const reads = setUpWalk(plain).flatMap((one) => (one.reads === null ? [] : [[one.said.id, one.reads]]));
    expect(reads).toEqual([
      ['old value', 'old value'],
      ['print', 'print'],
      ['distance', 'distance'],
      ['light', 'light'],
      ['square', 'mirror'],
      ['temperature', 'temperature'],
      ['magnification', 'magnification'],
      ['hold focus', 'live view'],
    ]);
  });

  it('with the practice camera there is nothing to set up', () => {
    expect(ids({ ...plain, practice: true })).toEqual(['practice']);
  });

  it('the short version leaves out steps but no caution of harm', () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        const long = { ...given, version: 'long' } as const;
        const short = { ...given, version: 'short' } as const;
        expect(ids(long)).toEqual(expect.arrayContaining(ids(short)));
        const harm = (of: SetUpCase) => cautions(of).filter(({ may }) => may === 'hurt');
        expect(harm(short)).toEqual(harm(long));
      }),
    );
    expect(ids({ ...plain, version: 'short' }).length).toBeLessThan(ids(plain).length);
  });

  it('the cautions stand where something may hurt or break', () => {
    const all = (given: Partial<SetUpCase>) => cautions({ ...plain, ...given }).map(({ is }) => is);
    expect(all({})).toEqual(expect.arrayContaining(['manual', 'service', 'tripod', 'leads', 'mirror', 'edges of the mirror']));
    expect(all({})).not.toContain('laser');
    expect(all({ squareBy: 'spot' })).toEqual(expect.arrayContaining(['laser', 'laser on the sensor', 'mirror', 'edges of the mirror']));
    expect(all({ lens: { ...plain.lens, heavy: true } })).toContain('heavy lens');
    expect(all({ lighting: 'warm lamp' }).join()).toMatch(/hot lamps,leads,lamps on the mains,warm light/);
  });

  it('and nowhere else: each at its step, by the lens, the light and the way to square', () => {
    const at = (id: string, given: Partial<SetUpCase> = {}) =>
      setUpWalk({ ...plain, ...given })
        .find((one) => one.said.id === id)!
        .cautions.map(({ is }) => is);
    expect(at('old value')).toEqual(['manual', 'service']);
    expect(at('tripod')).toEqual(['tripod', 'leads']);
    expect(at('tripod', { lens: { ...plain.lens, heavy: true } })).toEqual(['heavy lens', 'tripod', 'leads']);
    expect((['daylight', 'steady lamp', 'mains lamp', 'warm lamp'] as const).map((lighting) => at('light', { lighting }))).toEqual([
      [],
      ['hot lamps', 'leads'],
      ['hot lamps', 'leads', 'lamps on the mains'],
      ['hot lamps', 'leads', 'lamps on the mains', 'warm light'],
    ]);
    expect((['mirror', 'sides', 'spot'] as const).map((squareBy) => at('square', { squareBy }))).toEqual([
      ['mirror', 'edges of the mirror'],
      [],
      ['laser', 'laser on the sensor', 'mirror', 'edges of the mirror'],
    ]);
    expect(['target', 'print', 'distance'].map((id) => at(id))).toEqual([[], [], []]);
  });
});

describe('walking', () => {
  const run = (given: SetUpCase, events: readonly WalkEvent[]) => events.reduce((state, event) => walk(state, event).state, beginWalk(given));

  it('"next" to the end ticks every step once and says that it is ready', () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        const all = setUpWalk(given);
        const end = run(
          given,
          all.map(() => ({ walked: 'next' })),
        );
        expect(isDone(end)).toBe(true);
        expect(end.bench.ticked).toEqual(ids(given));
        expect(walk(end, { walked: 'repeat' }).say).toBe('done');
      }),
    );
  });

  it('"back" returns to the step before, "repeat" says the same again, and neither ticks', () => {
    const second = run(plain, [{ walked: 'next' }]);
    expect(walk(second, { walked: 'repeat' })).toEqual({ state: second, say: currentStep(second)!.said });
    expect(walk(second, { walked: 'back' })).toMatchObject({ state: { at: 0 }, say: setUpWalk(plain)[0]!.said });
    expect(run(plain, [{ walked: 'back' }]).bench.ticked).toEqual([]);
  });

  /** Kept twice in a row, it is written down once. */
  const same = (one: unknown, before: unknown): boolean => JSON.stringify(one) === JSON.stringify(before);

  it('no order of words leaves the walk, ticks twice or loses a reading', () => {
    const event = fc.oneof(
      fc.constantFrom<WalkEvent>({ walked: 'next' }, { walked: 'back' }, { walked: 'repeat' }),
      fc.integer({ min: -2, max: 2 }).map((value): WalkEvent => ({ walked: 'read', reading: { reads: 'old value', value: steps(value) } })),
    );
    fc.assert(
      fc.property(anyCase, fc.array(event, { maxLength: 60 }), (given, events) => {
        const { steps: all, at, bench } = run(given, events);
        expect(at).toBeGreaterThanOrEqual(0);
        expect(at).toBeLessThanOrEqual(all.length);
        expect(new Set(bench.ticked).size).toBe(bench.ticked.length);
        const read = events.flatMap((one) => (one.walked === 'read' ? [one.reading] : []));
        expect(bench.readings).toEqual(read.filter((reading, index) => !same(reading, read[index - 1])));
        expect(v.safeParse(BenchRecord, bench).success).toBe(true);
      }),
    );
  });
});

describe('what is stored', () => {
  it('the latest reading of a kind speaks, the earlier ones stay', () => {
    const readings = [steps(3), steps(4)].map((value) => ({ reads: 'old value', value }) as const);
    expect(latest({ ticked: [], readings }, 'old value')?.value).toBe(4);
    expect(latest({ ticked: [], readings }, 'print')).toBeNull();
  });

  it.each([
    [{ reads: 'light', iso: 400, aperture: 0, shutter: 0.01, ev: 8 }, 'no aperture'],
    [{ reads: 'distance', distance: 4, from: 'film plane' }, 'no distance'],
    [{ reads: 'sides', left: 1, right: 0, top: 1, bottom: 1, tilt: 0, uncertainty: 1 }, 'no sides'],
    [{ reads: 'temperature', celsius: 290 }, 'no temperature'],
  ])('%o is refused by its name', (reading, wrong) => {
    expect(fault(fits(BenchReading, reading))).toEqual({ is: wrong });
  });
});
