// Contract of the finding: the target and the ramp are found in pictures of the range that the bench uses, to a fraction of a pixel; nothing
// else is taken for them; and what keeps a print from being found is told.
import { describe, expect, test } from 'vitest';
import { targetMarks } from '../../src/optics/print/targetMarks.ts';
import { rampMarks } from '../../src/optics/print/rampLayout.ts';
import { leaningSquare, rectangle, type Drawing } from '../../src/optics/print/drawing.ts';
import { findRamp } from '../../src/photographs/findRamp.ts';
import { findTarget } from '../../src/photographs/findTarget.ts';
import type { Plane } from '../../src/photographs/plane.ts';
import { lookAt } from '../../src/photographs/squaresSeen.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { mountRamp, mountTarget } from './camera/mounted.ts';
import { OTHER_KINDS, otherPicture } from './pictures/otherPictures.ts';
import { rampFor, targetFor, unmarked } from './pictures/prints.ts';
import { quickPicture, type QuickShot } from './pictures/quickPicture.ts';

const USUAL: QuickShot = {
  focalLength: 85,
  distance: 85 * 49,
  pose: { lean: 0, swing: 0, roll: 0, right: 0, down: 0 },
  frame: { width: 6000, height: 4000 },
  disc: 1,
  noise: 0.02,
  fall: 0.8,
  exposure: 0.85,
  around: 0.1,
};
const AT_48 = targetFor(1 / 48);
const faultIn = (plane: Plane) => {
  const found = findTarget(plane);
  return found.ok ? 'found' : found.fault.is;
};
const inPicture = (shot: Partial<QuickShot>, drawing: Drawing = AT_48.drawing) => quickPicture([drawing], { ...USUAL, ...shot }, 1).plane;
const upper = (sorted: readonly number[], share: number) => sorted[Math.floor(sorted.length * share)]!;

/** A drawing with the shapes of some marks painted over: squares are the four last polygons, each with its dots behind it. */
function without(drawing: Drawing, middles: readonly { x: number; y: number }[], box: number): Drawing {
  return { ...drawing, shapes: [...drawing.shapes, ...middles.map(({ x, y }) => rectangle(x - box / 2, y - box / 2, box, box, 'white'))] };
}

describe('the target in a picture', () => {
  test('is found in 196 or more of 200 pictures, with its size, and its marks lie within 0.15 pixels in the median', { timeout: 600_000 }, () => {
    const random = seededRandom(20);
    const between = (least: number, most: number) => least + random() * (most - least);
    const spread = (least: number, most: number) => least * (most / least) ** random();
    const offs: number[] = [];
    let found = 0;
    for (let index = 0; index < 200; index++) {
      // Drawn for one distance and photographed from up to half as far again, at 24 megapixels, or 6 where it is large.
      const share = spread(0.08, 0.6);
      const guess = targetFor(1 / 48, between(1.5, 5)).drawing.height;
      const m = (share * 24) / guess;
      const target = targetFor(Math.min(0.2, m * between(0.67, 1.5)), between(1, 3.5));
      const shown = Math.min(m, (0.6 * 24) / target.drawing.height);
      const focalLength = spread(24, 300);
      const [tilt, way] = [between(0, 8), between(0, 2 * Math.PI)];
      const pose = {
        lean: tilt * Math.sin(way),
        swing: tilt * Math.cos(way),
        roll: index % 5 === 4 ? between(-180, 180) : between(-5, 5),
        right: between(-3, 3) / shown,
        down: between(-2, 2) / shown,
      };
      const frame = share > 0.25 ? { width: 3000, height: 2000 } : USUAL.frame;
      const shot = { ...USUAL, frame, focalLength, distance: focalLength * (1 + 1 / shown), pose, disc: between(0, 6), noise: between(0.005, 0.05) };
      const picture = quickPicture([target.drawing], { ...shot, fall: between(0.4, 1), exposure: between(0.3, 1.05), around: between(0.03, 0.2) }, index);
      const seen = findTarget(picture.plane);
      if (!seen.ok || seen.value.sizes.index !== target.measure.index || seen.value.sizes.bars !== target.measure.bars) continue;
      found++;
      for (const [place, mark] of targetMarks(target.measure, target.middle).entries()) {
        const [is, was] = [seen.value.marks[place]!, picture.at(0, mark.middle)];
        offs.push(Math.hypot(is.x - was.x, is.y - was.y));
      }
    }
    offs.sort((a, b) => a - b);
    console.log(`found ${found} of 200; marks off by ${upper(offs, 0.5).toFixed(3)} px in the median, ${upper(offs, 0.95).toFixed(3)} at the 95th percentile`);
    expect(found).toBeGreaterThanOrEqual(196);
    expect(upper(offs, 0.5)).toBeLessThanOrEqual(0.15);
  });

  test.each([0, 90, 180, -90, 37])('turned by %s° it says so, and its edges keep their names', (roll) => {
    const found = findTarget(inPicture({ pose: { ...USUAL.pose, roll } }));
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
      const found = findTarget(inPicture({}, without(AT_48.drawing, [mark.middle], mark.box + 2)));
      expect(found).toEqual({ ok: false, fault: { is: 'half a print', missing: [mark.name] } });
      expect(index).toBeLessThan(4);
    }
  });

  test('two of them are told, and neither is measured', () => {
    const second = { ...mountTarget(AT_48.drawing), origin: [AT_48.drawing.width * 0.7, -AT_48.drawing.height / 2, 0] as const };
    const { plane } = quickPicture([mountTarget(AT_48.drawing), second], USUAL, 3);
    expect(faultIn(plane)).toBe('two prints');
  });

  test('tilted by 25° it is told how far, to two degrees', () => {
    const found = findTarget(inPicture({ pose: { ...USUAL.pose, swing: 25 } }));
    expect(found.ok ? 'found' : found.fault).toMatchObject({ is: 'print too tilted' });
    const tilt = !found.ok && found.fault.is === 'print too tilted' ? found.fault.tilt : Number.NaN;
    expect(Math.abs(tilt - 25)).toBeLessThan(2);
  });

  test('from so far that a dot is a pixel wide, or out of focus by more than a bar, it is never misread', () => {
    const far = [250, 350, 450].map((distance): Partial<QuickShot> => ({ distance: 85 * distance, disc: 3 }));
    const soft = [40, 60].map((disc): Partial<QuickShot> => ({ disc }));
    const told = [...far, ...soft].map((shot) => {
      const found = findTarget(inPicture(shot));
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
    [900, 40],
    [48 * 85, 90],
  ])('photographed from %s mm it is found by itself, with its numbering, within 0.5 pixels', (away, depth) => {
    const m = 85 / away;
    const [target, ramp] = [targetFor(m, 2.5, 0.012), rampFor(depth)];
    const mounted = mountRamp(ramp.drawing, ramp.layout.zero, target.drawing);
    const { plane, at } = quickPicture([target.drawing, mounted], { ...USUAL, distance: 85 + away, disc: 2, frame: { width: 3000, height: 4000 } }, 5);
    const found = findRamp(plane);
    if (!found.ok) throw new Error(found.fault.is);
    expect(found.value.layout).toEqual(ramp.layout);
    for (const [place, mark] of rampMarks(ramp.layout).entries()) {
      const [is, was] = [found.value.marks[place]!, at(1, mark.middle)];
      expect(Math.hypot(is.x - was.x, is.y - was.y)).toBeLessThan(0.5);
    }
    const depths = found.value.edges.map(({ depthFrom }) => depthFrom);
    expect(Math.min(...depths)).toBeCloseTo(-ramp.layout.reach, 6);
    const target2 = findTarget(plane);
    expect(target2.ok && target2.value.sizes.index).toBe(target.measure.index);
  });
});

describe('pictures of other things', () => {
  const KINDS = Object.keys(OTHER_KINDS) as (keyof typeof OTHER_KINDS)[];
  const EACH = 30;
  test.each(KINDS)(`in ${EACH} of %s no target and no ramp is found`, { timeout: 600_000 }, (kind) => {
    for (let seed = 1; seed <= EACH; seed++) {
      const plane = otherPicture(kind, 100 + seed);
      const seen = lookAt(plane);
      expect([seed, findTarget(plane, seen).ok, findRamp(plane, seen).ok]).toEqual([seed, false, false]);
    }
  });
});
