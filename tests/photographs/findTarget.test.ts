// Contract of the finding: the target and the ramp are found in pictures, to a fraction of a pixel; nothing else is taken for them; and
// what keeps a print from being found is told. A few pictures are tried here, hundreds by the bench.
import { describe, expect, test } from 'vitest';
import { targetMarks } from '../../src/optics/print/targetMarks.ts';
import { rampMarks } from '../../src/optics/print/rampLayout.ts';
import { leaningSquare, rectangle, type Drawing } from '../../src/optics/print/drawing.ts';
import { findRamp } from '../../src/photographs/findRamp.ts';
import { findTarget } from '../../src/photographs/findTarget.ts';
import { wholePicture } from '../../src/photographs/pixelSource.ts';
import type { Plane } from '../../src/photographs/plane.ts';
import { lookAt } from '../../src/photographs/squaresSeen.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { mountRamp, mountTarget } from '../../src/practice/pictures/mounted.ts';
import { OTHER_KINDS, otherPicture } from './pictures/otherPictures.ts';
import { rampFor, targetFor, unmarked } from './pictures/prints.ts';
import { findDrawn } from './pictures/findDrawn.ts';
import { quickPicture, USUAL_QUICK, type QuickShot } from './pictures/quickPicture.ts';

const AT_48 = targetFor(1 / 48);
const look = (plane: Plane) => lookAt(wholePicture(plane));
const faultIn = (plane: Plane) => {
  const found = findTarget(look(plane));
  return found.ok ? 'found' : found.fault.is;
};
const inPicture = (shot: Partial<QuickShot>, drawing: Drawing = AT_48.drawing) => quickPicture([drawing], { ...USUAL_QUICK, ...shot }, 1).plane;

/** A drawing with the shapes of some marks painted over: squares are the four last polygons, each with its dots behind it. */
function without(drawing: Drawing, middles: readonly { x: number; y: number }[], box: number): Drawing {
  return { ...drawing, shapes: [...drawing.shapes, ...middles.map(({ x, y }) => rectangle(x - box / 2, y - box / 2, box, box, 'white'))] };
}

describe('the target in a picture', () => {
  test('is found in each of twelve, with its size, and its marks lie within 0.15 pixels in the median', { timeout: 60_000 }, () => {
    const random = seededRandom(20);
    const found = Array.from({ length: 12 }, (_, index) => findDrawn(random, index)).filter((offs) => offs !== null);
    const offs = found.flat().sort((a, b) => a - b);
    expect(found.length).toBe(12);
    expect(offs[offs.length >> 1]).toBeLessThanOrEqual(0.15);
  });

  test.each([0, 90, 180, -90, 37])('turned by %s° it says so, and its edges keep their names', (roll) => {
    const found = findTarget(look(inPicture({ pose: { ...USUAL_QUICK.pose, roll } })));
    if (!found.ok) throw new Error(found.fault.is);
    expect(Math.cos(((found.value.roll - roll) * Math.PI) / 180)).toBeCloseTo(1, 6);
    // 1/48 of a millimetre is 3.47 pixels of 6 µm.
    expect(found.value.scale).toBeCloseTo(1 / 48 / 0.006, 2);
    const [first] = found.value.edges;
    const turn = (Math.atan2(first!.to.y - first!.from.y, first!.to.x - first!.from.x) * 180) / Math.PI;
    expect(Math.cos(((turn - 95 - roll) * Math.PI) / 180)).toBeCloseTo(1, 4);
  });

  test('with one mark covered it is half a print, and the mark is named', () => {
    for (const [index, mark] of targetMarks(AT_48.measure, AT_48.middle).entries()) {
      const found = findTarget(look(inPicture({}, without(AT_48.drawing, [mark.middle], mark.box + 2))));
      expect(found).toEqual({ ok: false, fault: { is: 'half a print', missing: [mark.name] } });
      expect(index).toBeLessThan(4);
    }
  });

  test('two of them are told, and neither is measured', () => {
    const second = { ...mountTarget(AT_48.drawing), origin: [AT_48.drawing.width * 0.7, -AT_48.drawing.height / 2, 0] as const };
    const { plane } = quickPicture([mountTarget(AT_48.drawing), second], USUAL_QUICK, 3);
    expect(faultIn(plane)).toBe('two prints');
  });

  test('tilted by 25° it is told how far, to two degrees', () => {
    const found = findTarget(look(inPicture({ pose: { ...USUAL_QUICK.pose, swing: 25 } })));
    expect(found.ok ? 'found' : found.fault).toMatchObject({ is: 'print too tilted' });
    const tilt = !found.ok && found.fault.is === 'print too tilted' ? found.fault.tilt : Number.NaN;
    expect(Math.abs(tilt - 25)).toBeLessThan(2);
  });

  test('from so far that a dot is a pixel wide, or out of focus by more than a bar, it is never misread', () => {
    const far = [250, 350, 450].map((distance): Partial<QuickShot> => ({ distance: 85 * distance, disc: 3 }));
    const soft = [40, 60].map((disc): Partial<QuickShot> => ({ disc }));
    const told = [...far, ...soft].map((shot) => {
      const found = findTarget(look(inPicture(shot)));
      return found.ok ? found.value.sizes.index === AT_48.measure.index : found.fault.is;
    });
    expect(told).not.toContain(false);
    expect(told.at(2)).not.toBe(true);
    expect(told.at(-1)).not.toBe(true);
  });

  test('one printed before there were dots is told from none at all', () => {
    const { measure, middle } = AT_48;
    const { bar, field } = measure;
    const box = 7 * bar;
    const old = [-1, 1].flatMap((y) =>
      [-1, 1].map((x) => leaningSquare({ x: middle.x + x * (field / 2 - box / 2), y: middle.y + y * (field / 2 + 4 + box / 2) }, box, 5)),
    );
    const bare = unmarked(AT_48);
    expect(faultIn(inPicture({}, { ...bare, shapes: [...bare.shapes, ...old] }))).toBe('older print');
    expect(faultIn(inPicture({}, bare))).toBe('no print');
  });

  test('a picture that is blown, or black, or of one pixel, says so or shows none', () => {
    const even = (light: number, width: number, height: number): Plane => ({ width, height, light: new Float32Array(width * height).fill(light) });
    expect(faultIn(even(1, 500, 400))).toBe('picture blown');
    expect(faultIn(even(0.001, 500, 400))).toBe('picture black');
    expect(faultIn(even(0.4, 500, 400))).toBe('no print');
    for (const [width, height] of [
      [1, 1],
      [1, 900],
      [900, 1],
      [2, 2],
      [7, 3],
    ] as const)
      expect(faultIn(even(0.4, width, height))).toBe('no print');
  });
});

describe('the ramp in a picture', () => {
  test.each([
    [85, 900, 40, 0],
    [85, 48 * 85, 90, 0],
    // So near that its far end looks a quarter less high, and leaning by seven degrees more.
    [26, 1030, 200, 3],
    [130, 6500, 800, 7],
  ])('photographed with %s mm from %s mm it is found by itself, with its numbering, within 0.5 pixels', (focalLength, away, depth, lean) => {
    const m = focalLength / away;
    const [target, ramp] = [targetFor(m, 2.5, 0.012), rampFor(depth)];
    const mounted = mountRamp(ramp.drawing, ramp.layout.zero, target.drawing);
    const shot = {
      ...USUAL_QUICK,
      focalLength,
      distance: focalLength + away,
      disc: 2,
      frame: { width: 3000, height: 4000 },
      pose: { ...USUAL_QUICK.pose, lean },
    };
    const { plane, at } = quickPicture([target.drawing, mounted], shot, 5);
    const seen = look(plane);
    const found = findRamp(seen);
    if (!found.ok) throw new Error(found.fault.is);
    expect(found.value.layout).toEqual(ramp.layout);
    for (const [place, mark] of rampMarks(ramp.layout).entries()) {
      const [is, was] = [found.value.marks[place]!, at(1, mark.middle)];
      expect(Math.hypot(is.x - was.x, is.y - was.y)).toBeLessThan(0.5);
    }
    const depths = found.value.edges.map(({ depthFrom }) => depthFrom);
    expect(Math.min(...depths)).toBeCloseTo(-ramp.layout.reach, 6);
    const target2 = findTarget(seen);
    expect(target2.ok && target2.value.sizes.index).toBe(target.measure.index);
  });
});

describe('pictures of other things', () => {
  const KINDS = Object.keys(OTHER_KINDS) as (keyof typeof OTHER_KINDS)[];
  test.each(KINDS)('in one of %s no target and no ramp is found', { timeout: 60_000 }, (kind) => {
    const plane = otherPicture(kind, 101);
    const seen = look(plane);
    expect([findTarget(seen).ok, findRamp(seen).ok]).toEqual([false, false]);
  });
});
