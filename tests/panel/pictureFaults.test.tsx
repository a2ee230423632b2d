// @vitest-environment happy-dom
// Contract of what is said of a picture that something is wrong with: one sentence each, that says what to do, and nothing that another
// one of them contradicts.
import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import type { Photograph } from '../../src/kit/photograph/photograph.ts';
import { PictureFaults } from '../../src/panel/photographs/pictureFaults.tsx';
import { NeverKept } from '../../src/panel/photographs/keepProof.tsx';
import { PictureView } from '../../src/panel/photographs/pictureView.tsx';
import type { EdgeFault } from '../../src/photographs/edge.ts';
import type { Motion } from '../../src/photographs/motion.ts';
import type { PictureReading, TargetReading } from '../../src/photographs/reading.ts';
import { degrees } from '../../src/optics/quantity.ts';
import { failed, got } from '../../src/result.ts';
import { focusAt } from '../photographs/series/seriesPictures.ts';

afterEach(cleanup);

const edge = { at: 'middle', runs: 'upright', from: { x: 0, y: 0 }, to: { x: 1, y: 30 } } as const;

function reading(overshoot: number, motion: Motion = { is: 'alike' }): PictureReading {
  const measure = { ...edge, mtf50: 0.3, interval: { low: 0.29, high: 0.31 }, angle: 5, overshoot };
  const edges = [{ edge, measure: got(measure) }] as unknown as TargetReading['edges'];
  return {
    target: got({ outline: [], scale: 5, roll: degrees(0), tilt: degrees(0), resized: null, motion, edges, compared: [] }),
    focus: got(focusAt(0)),
  };
}

const CAMERA = {} as Photograph;
const said = (of: PictureReading, camera: Photograph | null = CAMERA): string =>
  render(<PictureFaults picture={{ camera, reading: of }} />).container.textContent ?? '';
const MOVED: Motion = { is: 'moved', way: 'sideways', ratio: 2 };

test('overshoot beyond a tenth says that the file was sharpened and flatters the lens; a tenth of it does not', () => {
  expect(said(reading(0.14))).toBe('This picture was sharpened, so its MTF50 flatters the lens. Turn sharpening off in the camera.');
  expect(said(reading(0.06))).toBe('');
});

test('movement says which way and what helps, is not taken for sharpening, and its picture is in focus but not called sharp', () => {
  expect(said(reading(0.5, MOVED))).toMatch(/^This picture is blurred more sideways than up and down: the camera moved\. Use a tripod/);
  const brought = { frame: { width: 4000, height: 6000 }, camera: null, small: new Blob(), crops: [], compared: [] };
  const shown = (motion: Motion): string =>
    render(
      <NeverKept.Provider value>
        <PictureView situation={null} step={null} folded={false} picture={{ id: 'p', name: 'P1', is: got({ ...brought, reading: reading(0, motion) }) }} />
      </NeverKept.Provider>,
    ).container.textContent ?? '';
  expect(shown(MOVED)).toContain('In focus.');
  expect(shown(MOVED)).not.toContain('Sharp enough.');
  expect(shown({ is: 'alike' })).toContain('Sharp enough.');
});

test('a picture that was cut says to bring in the whole one', () => {
  expect(said({ ...reading(0), focus: failed({ is: 'not the whole picture' }) })).toBe(
    'This picture does not have the shape of the sensor, so it was cropped or is a screenshot. Bring in the whole picture as the camera took it.',
  );
});

test('a focus error read from a file without the camera’s data says that a crop would go unnoticed; a practice picture, and one without a focus error, do not', () => {
  expect(said(reading(0), null)).toBe(
    'The camera’s data is missing from this file, so a crop would go unnoticed. If it was cropped, bring in the picture as the camera took it.',
  );
  expect(said({ ...reading(0), focus: failed({ is: 'too few pixels' }) }, null)).not.toContain('unnoticed');
  const practice = render(
    <NeverKept.Provider value>
      <PictureFaults picture={{ camera: null, reading: reading(0) }} />
    </NeverKept.Provider>,
  );
  expect(practice.container.textContent).toBe('');
});

test('a target turned until its edges run along the pixels says to turn it upright, and one that has a slanted edge left does not', () => {
  const { target, ...rest } = reading(0);
  if (!target.ok) throw new Error('There is a target.');
  const straight = { edge, measure: failed<EdgeFault>({ is: 'edge not slanted', angle: degrees(0.3) }) } as const;
  const turned = (edges: TargetReading['edges']): PictureReading => ({ ...rest, target: got({ ...target.value, roll: degrees(-5), edges }) });
  expect(said(turned([straight, straight]))).toBe(
    'The target is turned by 5° anticlockwise, so its edges run along the pixels and cannot be measured. Turn it upright.',
  );
  expect(said(turned([straight, ...target.value.edges]))).toBe('');
});
