// @vitest-environment happy-dom
// Contract of practice pictures on the screen: they say plainly that they are simulated, come in for what was asked, are read with what is
// known of the practice camera, and never stand among a person's own. Both workers are ones that know what they would have done.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { BroughtPicture, FromWorker, ToWorker } from '../../src/platform/pictures/bridge.ts';
import type { PracticeTaken, PracticeWanted } from '../../src/platform/pictures/practiceBridge.ts';
import { focusErrorIn, picturedCamera } from '../../src/practice/pictures/picturedCamera.ts';
import { PRACTICE_FACTS } from '../../src/practice/pictures/practiceFacts.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { got } from '../../src/result.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { seriesPicture } from '../photographs/series/seriesPictures.ts';
import { FakeSession } from './fakeSession.ts';
import { click, partsRead, show, text, type } from './show.tsx';

const wanted: PracticeWanted[] = [];
const read: ToWorker[] = [];

class KnowingWorkers extends EventTarget {
  private readonly script: URL;

  constructor(script: URL) {
    super();
    this.script = script;
  }

  postMessage(data: PracticeWanted | ToWorker): void {
    const answer = this.script.pathname.endsWith('/practiceWorker.js') ? take(data as PracticeWanted) : readPicture(data as ToWorker);
    queueMicrotask(() => this.dispatchEvent(new MessageEvent('message', { data: answer })));
  }

  terminate(): void {
    // Nothing of it goes on.
  }
}

function take(one: PracticeWanted): PracticeTaken {
  wanted.push(one);
  return { number: one.number, jpeg: new Blob(['x'], { type: 'image/jpeg' }) };
}

/** What a picture shows is what the practice camera took it with. */
function readPicture(one: ToWorker): FromWorker {
  read.push(one);
  const number = Number.parseInt(one.file.name, 10);
  const shot = wanted.find((each) => each.number === number);
  const error = shot ? focusErrorIn(picturedCamera(shot.seed, shot.scale), shot.turn, seededRandom(number)) : 0;
  const { frame, reading } = seriesPicture(number, { error, camera: null });
  const picture: BroughtPicture = { frame, camera: null, reading, small: new Blob(), crops: [], compared: [] };
  return { tells: 'end', picture: got(picture) };
}

beforeEach(() => {
  vi.stubGlobal('Worker', KnowingWorkers);
  let seed = 6;
  vi.spyOn(crypto, 'getRandomValues').mockImplementation((numbers) => {
    (numbers as Uint32Array)[0] = seed += 1;
    return numbers;
  });
  [wanted.length, read.length] = [0, 0];
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

async function practise(use: RegExp): Promise<void> {
  await show(new FakeSession());
  await act(() => void click('Check with photographs'));
  await partsRead();
  await press('Try it with practice pictures');
  await act(() => void fireEvent.click(screen.getByRole('radio', { name: use })));
}

async function press(name: string): Promise<void> {
  await act(() => void click(name));
  await partsRead();
}

test('a bracket of practice pictures says that it is simulated, and tells the centre of the practice camera', async () => {
  await practise(/^A bracket/);
  expect(text()).toContain('Simulated: the practice camera draws these pictures.');
  await press('Take the pictures');
  expect(text()).toContain('11 of 11 pictures read.');
  const { centre } = picturedCamera(wanted[0]?.seed ?? 0, USUAL_SCALE);
  const [, low, high] = /The pictures put the centre at \S+ \(95% between (\S+) and ([^)]+)\)/.exec(text().replaceAll('\u2212', '-')) ?? [];
  expect(Number(low)).toBeLessThan(centre + 0.6);
  expect(Number(high)).toBeGreaterThan(centre - 0.6);
  expect(text().replaceAll('\u2212', '-')).toContain(`Its true centre is ${centre > 0 ? '+' : ''}${centre.toFixed(1)}.`);
});

test('they are read as files with what is known of the practice camera, and without the person’s kit', async () => {
  await practise(/^One picture/);
  await press('Take a picture');
  await press('Take a picture');
  expect(text()).toContain('2 of 2 pictures read.');
  expect(read.map(({ file, practice, kit, situation }) => [file.type, practice, kit.bodies, situation])).toEqual([
    ['image/jpeg', { ...PRACTICE_FACTS, frame: null }, [], null],
    ['image/jpeg', { ...PRACTICE_FACTS, frame: null }, [], null],
  ]);
});

test('a check is one picture in live view and six with autofocus at the value that was typed; another value lets its pictures go', async () => {
  await practise(/^Check the value/);
  await act(() => void type('Value to check', '4'));
  await press('Take the pictures');
  expect(wanted.map(({ turn }) => (turn.by === 'live view' ? turn.by : `${turn.at} ${turn.thrown}`))).toEqual([
    'live view',
    ...['near', 'far', 'near', 'far', 'near', 'far'].map((thrown) => `4 ${thrown}`),
  ]);
  expect(text()).toContain('What the pictures show together');
  await act(() => void type('Value to check', '5'));
  expect(text()).not.toContain('pictures read');
  await act(() => void type('Value to check', '55'));
  expect(screen.getByRole<HTMLButtonElement>('button', { name: 'Take the pictures' }).disabled).toBe(true);
});

test('the practice camera’s pictures and one’s own never stand in one list, and its way is offered only while there are none of one’s own', async () => {
  await practise(/^One picture/);
  await press('Take a picture');
  await press('Back');
  expect(text()).not.toContain('Practice picture');
  await act(() => void fireEvent.change(screen.getByLabelText('Pictures'), { target: { files: [new File(['x'], '1.JPG')] } }));
  await partsRead();
  expect(read.at(-1)?.practice).toBeNull();
  expect(screen.queryByRole('button', { name: 'Try it with practice pictures' })).toBeNull();
});

test('from the practice camera, too, a way leads there, and another camera has another centre', async () => {
  await show(new FakeSession());
  await press('Practice camera');
  await press('Practice pictures');
  await press('Take a picture');
  await press('Another practice camera');
  await press('Take a picture');
  const [one, other] = wanted;
  expect(one?.seed).not.toBe(other?.seed);
});
