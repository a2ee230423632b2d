// Contract of the four lights shown to a person: each does what its name says, all differ, also where nothing moves.
import { expect, test } from 'vitest';
import { FOUR_LIGHTS, isLit, litStretches, showingOf, untilNextChange } from '../../src/practice/fourLights.ts';
import { seconds } from '../../src/units.ts';

const at = (light: (typeof FOUR_LIGHTS)[number], ...times: readonly number[]) => times.map((time) => isLit(showingOf(light), seconds(time)));

test('in one showing the steady light stays on, the late one comes on late, the flickering one goes out and comes back, the dark one never comes on', () => {
  const times = Array.from({ length: 59 }, (_, index) => index * 0.05 + 0.02);
  const seen = Object.fromEntries(FOUR_LIGHTS.map((light) => [light, at(light, ...times)]));
  expect(seen['steady']).not.toContain(false);
  expect(seen['dark']).not.toContain(true);
  expect([seen['late']?.[0], seen['late']?.at(-1)]).toEqual([false, true]);
  expect([seen['flicker']?.[0], seen['flicker']?.includes(false), seen['flicker']?.at(-1)]).toEqual([true, true, true]);
});

test('between two showings every light is out, and then they begin anew', () => {
  expect(FOUR_LIGHTS.flatMap((light) => at(light, 3.2, 3.7))).not.toContain(true);
  expect(at('steady', 3.9)).toEqual([true]);
});

test('drawn still, each has a shape of its own: whole, beginning late, broken, empty', () => {
  const shapes = FOUR_LIGHTS.map((light) => litStretches(showingOf(light)));
  expect(shapes.map((stretches) => stretches.length)).toEqual([1, 1, expect.any(Number), 0]);
  expect(shapes[0]).toEqual([{ from: 0, to: 1 }]);
  expect(shapes[1]?.[0]?.from).toBeGreaterThan(0.15);
  expect(shapes[2]?.length).toBeGreaterThan(1);
});

test('the next change is always ahead, so that no clock spins', () => {
  const courses = FOUR_LIGHTS.map(showingOf);
  for (let time = 0; time < 20; time += 0.037) expect(untilNextChange(courses, seconds(time))).toBeGreaterThan(0);
});
