import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { fNumber } from '../../src/optics/quantity.ts';
import { BenchReading, BenchRecord, latest } from '../../src/optics/setUp/reading.ts';
import type { SetUpCase } from '../../src/optics/setUp/step.ts';
import { STEP_IDS } from '../../src/optics/setUp/stepIds.ts';
import { beginWalk, currentStep, isDone, setUpWalk, walk, type WalkEvent } from '../../src/optics/setUp/walk.ts';
import { millimetres as mm, steps } from '../../src/units.ts';

const plain: SetUpCase = {
  practice: false,
  version: 'long',
  body: { stabiliser: false, liveView: true, rearButton: false, manualAtBody: true },
  lens: { stabiliser: false, zoom: false, heavy: false },
  converter: null,
  focalLength: mm(85),
  aperture: fNumber(1.8),
  distance: mm(4250),
  measuredFrom: 'film plane',
  unit: 'm',
  lighting: 'daylight',
  mains: 50,
  squareBy: 'mirror',
  start: steps(0),
};
const anyCase: fc.Arbitrary<SetUpCase> = fc.record({
  practice: fc.boolean(),
  version: fc.constantFrom('long', 'short'),
  body: fc.record({
    stabiliser: fc.boolean(),
    liveView: fc.boolean(),
    rearButton: fc.boolean(),
    manualAtBody: fc.boolean(),
  }),
  lens: fc.record({ stabiliser: fc.boolean(), zoom: fc.boolean(), heavy: fc.boolean() }),
  converter: fc.constantFrom(null, 'Orrin 1.4x'),
  focalLength: fc.constantFrom(mm(35), mm(400)),
  aperture: fc.constantFrom(fNumber(1.4), fNumber(5.6)),
  distance: fc.constantFrom(mm(1750), mm(20_000)),
  measuredFrom: fc.constantFrom('film plane', 'front of lens'),
  unit: fc.constantFrom('m', 'ft'),
  lighting: fc.constantFrom('daylight', 'steady lamp', 'mains lamp', 'warm lamp'),
  mains: fc.constantFrom(50, 60),
  squareBy: fc.constantFrom('mirror', 'sides', 'spot'),
  start: fc.constantFrom(steps(0), steps(-7)),
});
const ids = (given: SetUpCase) => setUpWalk(given).map(({ id }) => id);
const step = (given: SetUpCase, id: string) => setUpWalk(given).find((one) => one.id === id)!;
const cautions = (given: SetUpCase) => setUpWalk(given).flatMap((one) => one.cautions);

describe('the steps', () => {
  it('each is one short sentence to speak, one to read, and stands once, in order', () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        const all = setUpWalk(given);
        expect(all.map(({ id }) => STEP_IDS.indexOf(id))).toEqual(
          all.map(({ id }) => STEP_IDS.indexOf(id)).toSorted((a, b) => a - b),
        );
        expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
        for (const { say, show } of all) {
          expect(say.length).toBeLessThanOrEqual(70);
          expect(`${say} ${show}`).not.toMatch(/undefined|NaN/);
          for (const sentence of [say, show]) expect(sentence).toMatch(/^[A-Z][^.?]*(\.\d[^.?]*)*[.?]$/);
        }
      }),
    );
  });

  it('adapt to body, lens and converter', () => {
    expect(ids(plain)).not.toContain('stabiliser');
    expect(ids({ ...plain, lens: { ...plain.lens, stabiliser: true } })).toContain('stabiliser');
    expect(ids({ ...plain, lens: { ...plain.lens, zoom: true } })).toContain('zoom');
    expect(ids({ ...plain, converter: 'Orrin 1.4x' })).toContain('converter');
    expect(ids({ ...plain, body: { ...plain.body, rearButton: true } })).toContain('focus button');
    expect(step({ ...plain, body: { ...plain.body, manualAtBody: false } }, 'hold focus').show).toContain('tape');
    expect(step({ ...plain, body: { ...plain.body, liveView: false } }, 'critical focus').show).toMatch(/^Photograph/);
    expect(step({ ...plain, start: steps(-7) }, 'start value').say).toContain('minus 7');
    expect(step({ ...plain, measuredFrom: 'front of lens', unit: 'ft' }, 'distance').show).toContain(
      '13.9 ft from the front of the lens',
    );
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
    const all = (given: Partial<SetUpCase>) =>
      cautions({ ...plain, ...given })
        .map(({ show }) => show)
        .join('\n');
    expect(all({})).toMatch(/manual and advice on warranty/);
    expect(all({})).toMatch(/service/);
    expect(all({})).toMatch(/mirror throw the sun/);
    expect(all({})).not.toMatch(/laser/);
    expect(all({ squareBy: 'spot' })).toMatch(/class 1 or 2 \(IEC 60825-1\).*never.*viewfinder/s);
    expect(all({ lens: { ...plain.lens, heavy: true } })).toMatch(/own tripod foot/);
    expect(all({ lighting: 'warm lamp' })).toMatch(/hot.*leads.*flicker.*Warm/s);
  });
});

describe('walking', () => {
  const run = (given: SetUpCase, events: readonly WalkEvent[]) =>
    events.reduce((state, event) => walk(state, event).state, beginWalk(given));

  it('"next" to the end ticks every step once and says that it is ready', () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        const all = setUpWalk(given);
        const end = run(
          given,
          all.map(() => ({ walked: 'next' })),
        );
        expect(isDone(end)).toBe(true);
        expect(end.bench.ticked).toEqual(all.map(({ id }) => id));
        expect(walk(end, { walked: 'repeat' }).say).toBe('Set up. Ready for the first hold.');
      }),
    );
  });

  it('"back" returns to the step before, "repeat" says the same again, and neither ticks', () => {
    const second = run(plain, [{ walked: 'next' }]);
    expect(walk(second, { walked: 'repeat' })).toEqual({ state: second, say: currentStep(second)!.say });
    expect(walk(second, { walked: 'back' })).toMatchObject({ state: { at: 0 }, say: setUpWalk(plain)[0]!.say });
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
    [
      { reads: 'light', iso: 400, aperture: 0, shutter: 0.01, ev: 8 },
      /^Enter the aperture as the lens or the camera shows it/,
    ],
    [{ reads: 'distance', distance: 4, from: 'film plane' }, /^no distance/],
    [{ reads: 'sides', left: 1, right: 0, top: 1, bottom: 1, tilt: 0, uncertainty: 1 }, /^Enter all four sides/],
    [{ reads: 'temperature', celsius: 290 }, /^Enter the temperature in degrees Celsius/],
  ])('%o is refused with what to do', (reading, sentence) => {
    const result = v.safeParse(BenchReading, reading);
    expect(result.success ? '' : result.issues[0].message).toMatch(sentence);
  });
});
