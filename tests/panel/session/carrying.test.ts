// Contract of the session's effects: on disk before anything is said, and a new step cuts off what the last one still had to say.
import { expect, test, vi } from 'vitest';
import { seconds, steps } from '../../../src/units.ts';
import { phaseOf, sweeping } from './sweeping.ts';
import { settle } from './world.ts';

const both = (sentence: string) => ({ spoken: sentence, written: sentence });

test('a verdict is on disk before it is sounded and read back', async () => {
  const { computer, window } = await sweeping();
  await window.tell('holding');
  await window.tell('flicker');
  expect(computer.log).toEqual([
    'write live began',
    'tone begin',
    'write live judged',
    'tone noted',
    expect.stringMatching(/^say Flicker\. (Plus|Minus|Zero)/),
  ]);
});

test('the alarm of a hold counts from the press, however long the disk took', async () => {
  const { computer, window } = await sweeping();
  const pressed = computer.time;
  window.session.input({ told: 'hold', by: 'key', heard: null });
  computer.pass(2);
  await settle();
  expect(window.due('hold time')).toBe(pressed + 5000);
});

test('a hold counts from the press of the switch, however long the panel was not told of it', async () => {
  const { computer, window } = await sweeping();
  window.session.contact('down', seconds(0.3));
  window.session.contact('up');
  await settle();
  expect(phaseOf(window)).toBe('holding');
  expect(window.due('hold time')).toBe(computer.time + 4700);
  expect(window.foreseen).toEqual({ tone: 'end', after: 4.7 });
});

test('the end tone of a hold is foreseen from the press, however long the disk took; without sound none is', async () => {
  const { computer, window } = await sweeping();
  window.session.input({ told: 'hold', by: 'key', heard: null });
  computer.pass(2);
  await settle();
  expect(window.foreseen).toEqual({ tone: 'end', after: 3 });
  const { window: silent } = await sweeping({ sound: false });
  await silent.tell('holding');
  expect(silent.foreseen).toBeNull();
});

test('a new step cuts off speech, and drops what the step before still wanted', async () => {
  const { computer, window } = await sweeping({ manner: { pace: { set: 'counted', toDial: 6 as never } } });
  await window.tell('holding');
  window.holdSpeech = true;
  await window.tell('flicker');
  expect(window.alarmsSet()).toEqual([]);
  computer.log.length = 0;
  window.session.input({ told: 'set', value: steps(5), by: 'key', heard: null });
  window.holdSpeech = false;
  await settle();
  expect(computer.log).toEqual(['write live chose', 'say Plus five.', 'tone count in 3', 'tone count in 4', 'tone count in 5']);
  expect(window.alarmsSet()).toEqual(['dial']);
});

test('a refused input leaves the hold under way and its alarm alone', async () => {
  const { computer, window } = await sweeping();
  await window.tell('holding');
  computer.pass(1);
  await window.tell('solid');
  expect(phaseOf(window)).toBe('holding');
  expect(window.alarmsSet()).toEqual(['hold time']);
  expect(computer.log.slice(-2)).toEqual(['tone refused', 'say Four more seconds.']);
});

test('what is said beside the sweep leaves the hold under way and its alarm alone', async () => {
  const { computer, window } = await sweeping();
  await window.tell('holding');
  window.session.say(both('Plus five, in March.'));
  await settle();
  expect(phaseOf(window)).toBe('holding');
  expect(window.alarmsSet()).toEqual(['hold time']);
  expect(computer.log.at(-1)).toBe('say Plus five, in March.');
});

test('of what is said beside the sweep only the newest is still waited for', async () => {
  const { window } = await sweeping();
  window.session.say(both('Put the camera on the tripod.'));
  window.session.say(both('Switch the stabiliser off.'));
  window.session.say(both('Open the aperture.'));
  await settle();
  expect(window.speeches.slice(-2).map(({ text }) => text)).not.toContain('Switch the stabiliser off.');
  expect(window.speeches.at(-1)?.text).toBe('Open the aperture.');
});

test('the panel is deaf while it speaks', async () => {
  const { window } = await sweeping({ voice: { listen: 'browser' } });
  window.holdSpeech = true;
  await window.tell('holding');
  await window.tell('flicker');
  expect(window.deaf).toBeGreaterThan(0);
  const whileSpeaking = window.deaf;
  await window.said();
  expect(window.deaf).toBe(whileSpeaking - 1);
});

test('and as long after it as the browser knows that sound comes late', async () => {
  vi.useFakeTimers();
  const { window } = await sweeping({ voice: { listen: 'browser' } });
  window.holdSpeech = true;
  window.late = seconds(0.3);
  await window.tell('holding');
  await window.tell('flicker');
  // The tone has its own time of being deaf, which ends later.
  await vi.advanceTimersByTimeAsync(1);
  const whileSpeaking = window.deaf;
  await window.said();
  await vi.advanceTimersByTimeAsync(290);
  expect(window.deaf).toBe(whileSpeaking);
  await vi.advanceTimersByTimeAsync(20);
  expect(window.deaf).toBe(whileSpeaking - 1);
  vi.useRealTimers();
});

test('a prompt is on the screen also when nothing is spoken or sounded', async () => {
  const { computer, window } = await sweeping({ voice: { speak: false }, sound: false });
  await window.tell('holding');
  await window.tell('nothing');
  expect(computer.log).toEqual(['write live began', 'write live judged']);
  expect(window.session.announcement.value).toMatch(/^Nothing\. Set .*: .*\(dark\)\.$/);
});

test('an announcement is emptied when it has been heard, so that what is said again is announced again', async () => {
  vi.useFakeTimers();
  const { window } = await sweeping();
  await window.tell('holding');
  await window.tell('nothing');
  const said = window.session.announcement.value;
  expect(said).toMatch(/^Nothing/);
  await vi.advanceTimersByTimeAsync(4000);
  expect(window.session.announcement.value).toBe(said);
  await vi.advanceTimersByTimeAsync(20_000);
  expect(window.session.announcement.value).toBe('');
  await window.tell('repeat');
  expect(window.session.announcement.value).toMatch(/^Set /);
  vi.useRealTimers();
});

test('a failing disk loses no hold: the sweep goes on, the person is told, and all of it is written when that works', async () => {
  vi.useFakeTimers();
  const { computer, window } = await sweeping();
  computer.full = true;
  await window.tell('holding');
  await window.tell('flicker');
  await window.tell('holding');
  expect(phaseOf(window)).toBe('holding');
  expect(window.session.sweep.value?.holds).toHaveLength(1);
  expect(window.session.troubles.value.map(({ sentence }) => sentence)).toEqual([expect.stringMatching(/^Nothing can be saved just now \(full\)\./)]);
  expect(computer.journal()).toEqual(['opened']);

  computer.full = false;
  await vi.advanceTimersByTimeAsync(6000);
  expect(computer.journal()).toEqual(['opened', 'began', 'judged', 'began']);
  expect(window.session.troubles.value).toEqual([]);
  vi.useRealTimers();
});

test('repeat says the value again, help says the words, and neither changes the sweep', async () => {
  const { computer, window } = await sweeping();
  await window.tell('repeat');
  await window.tell('help');
  expect(computer.log).toEqual([
    expect.stringMatching(/^say (Plus|Minus|Zero)/),
    expect.stringMatching(/^say You can say: holding, set plus or minus a number, /),
  ]);
  expect(computer.journal()).toEqual(['opened']);
});

test('what came of an input is shown: taken, or the reason why not', async () => {
  const { window } = await sweeping();
  await window.tell('holding');
  expect(window.session.heard.value).toMatchObject({ words: 'holding', became: expect.stringMatching(/^hold at 0$/), by: 'key' });
  await window.tell('delayed');
  expect(window.session.heard.value).toMatchObject({ words: 'delayed', became: expect.stringMatching(/^late at 0$/) });
  await window.tell('accept');
  expect(window.session.heard.value?.became).toMatch(/^There is no result yet/);
});
