// One whole sweep of a noisy person against the real session: its reducer, matcher and questions. Time is simulated:
// speech takes time and makes the ear deaf, recognisers answer late, and clocks ring when they are due.
import { vi } from 'vitest';
import { cameraOf } from '../../../../src/practice/cameras.ts';
import { seededRandom } from '../../../../src/practice/random.ts';
import type { Beginning, SettingsPatch } from '../../../../src/panel/session/session.ts';
import type { Hold } from '../../../../src/sweep/hold.ts';
import type { Scale } from '../../../../src/sweep/scale.ts';
import { understood } from '../../../../src/sweep/understood.ts';
import type { Verdict } from '../../../../src/sweep/verdict.ts';
import { moment, seconds, steps, type Moment } from '../../../../src/units.ts';
import { readBack } from '../../../../src/words/en/verdict.ts';
import type { Guess } from '../../../../src/voice/matching.ts';
import { Computer, promisesKept, settle, type Window } from '../world.ts';
import { talk, through, type Recogniser } from './channel.ts';
import { capital, NoisyPerson } from './person.ts';

export interface NoisyRun {
  readonly isFinished: boolean;
  readonly minutes: number;
  readonly holds: readonly Hold[];
  /** Verdicts that differ from what was seen and still stand; `readBack`: the person could hear it to the end. */
  readonly wrong: readonly { readonly hold: Hold; readonly seen: Verdict | null; readonly readBack: boolean }[];
  /** Seconds of the longest hold, from its beginning to whatever ended it. */
  readonly longestHold: number;
  readonly asked: number;
  readonly lost: number;
  readonly noticed: number;
  readonly log: readonly string[];
}

/** The ear stays deaf a moment after a sound. */
const TAIL = 250;
const WORD = 500;
const PATIENCE = 3500;
const LONGEST_SWEEP = 20 * 60_000;
export const HOLD_TIME = seconds(5);

export async function noisyRun(seed: number): Promise<NoisyRun> {
  const random = seededRandom(seed);
  const recogniser: Recogniser = seed % 2 === 0 ? 'browser' : 'own';
  const arrows = recogniser === 'browser' && seed % 4 === 0 ? 'right-is-up' : 'absent';
  const scale: Scale = { min: steps(-5), max: steps(5), step: 1 };
  const computer = new Computer();
  const window = await computer.open();
  window.holdSpeech = true;
  const voice: SettingsPatch = { manner: { holdTime: HOLD_TIME, care: 'standard' }, voice: { listen: recogniser } };
  window.session.changeSettings(voice);
  const situation = kit(window, scale, arrows);
  const began = await window.session.begin(situation);
  if (!began.ok) throw new Error(began.fault);
  await settle();

  const start = computer.time;
  const camera = { ...cameraOf({ seed }, scale, arrows), lapses: 0.03 };
  const away = { ...camera, low: camera.low - 4, high: camera.high - 4 };
  const person = new NoisyPerson((press) => (seed % 5 === 0 && press > 5 ? away : camera), random);
  const agenda: { at: number; what: () => void | Promise<void> }[] = [];
  const log: string[] = [];
  const truths = new Map<Moment, Verdict>();
  const heardBack = new Set<Moment>();
  let read = 0;
  let spoken = 0;
  let deafFrom = -Infinity;
  let deafUntil = -Infinity;
  let isDeaf = false;
  let saying = 0;
  let holdBegan: number | null = null;
  let longestHold = 0;
  let asked = 0;
  let lost = 0;

  const at = (ms: number, what: () => void | Promise<void>): void => void agenda.push({ at: computer.time + ms, what });
  const between = (low: number, high: number): number => low + (high - low) * random();
  const sweep = () => window.session.sweep.value;

  function say(): void {
    const turn = ++saying;
    const word = person.wish;
    if (word === null) return;
    const from = computer.time;
    log.push(`${stamp()} says ${word}`);
    const late = random() < 0.1;
    at(WORD, () => {
      const state = sweep();
      const drowned = isDeaf || deafUntil + TAIL > from || deafFrom > from;
      const heard = state && !drowned ? through(recogniser, word, understood(state).words, random) : null;
      if (heard === null) lost++;
      else at(late ? between(1500, 4000) : between(200, 900), () => deliver(heard, from));
    });
    at(WORD + PATIENCE, () => {
      if (turn === saying) say();
    });
  }

  /** Says what is wished for after a while, unless something else came up meanwhile. */
  function sayIn(ms: number): void {
    const turn = ++saying;
    at(ms, () => {
      if (turn === saying) say();
    });
  }

  function deliver(heard: readonly Guess[], from: number): void {
    // The browser's recogniser is stopped by a sound; the own words are decided as soon as there is quiet.
    if (recogniser === 'browser' && (deafFrom > from || isDeaf)) return;
    if (isDeaf) return at(300, () => deliver(heard, from));
    if (!window.earOpen) return;
    log.push(`${stamp()} heard ${heard.map(({ text, doubtful }) => text + (doubtful ? '?' : '')).join(' | ')}`);
    const interim = recogniser === 'browser' && random() < 0.3;
    if (!(interim && window.ear?.onHeard(heard.slice(0, 1), false))) window.ear?.onHeard(heard, true);
  }

  function chat(): void {
    const from = computer.time;
    const state = sweep();
    const heard = state && !isDeaf ? talk(recogniser, understood(state).words, random) : null;
    if (heard) at(between(200, 900), () => deliver(heard, from));
    at(between(8000, 40_000), chat);
  }

  /** What the person notices of what the panel did. */
  function notice(): void {
    for (; read < computer.log.length; read++) {
      const entry = computer.log[read] ?? '';
      if (!entry.startsWith('write')) log.push(`${stamp()} ${entry}`);
      if (entry === 'tone begin') {
        const { phase } = sweep() ?? {};
        const seen = person.begins();
        if (phase?.name === 'holding') truths.set(phase.since, seen);
        sayIn(random() < 0.08 ? between(5000, 18_000) : between(800, 3000));
      } else if (entry === 'tone end') {
        person.ends();
        sayIn(random() < 0.08 ? between(5000, 14_000) : between(400, 1200));
      } else if (entry.startsWith('say ')) {
        const text = entry.slice(4);
        if (text.endsWith('?') && !/hold|Held|Accept|shifted/.test(text)) asked++;
        const length = 300 + 320 * text.split(' ').length;
        const speech = window.speeches[spoken++];
        const noted = sweep()?.holds.at(-1);
        at(length, async () => {
          if (window.speeches.at(-1) === speech) await window.said();
          if (speech?.whole && noted && text.startsWith(`${capital(readBack(noted.verdict))}.`)) heardBack.add(noted.ended);
        });
        if (sweep()?.phase.name === 'finished') continue;
        person.hears(text);
        sayIn(random() < 0.15 ? between(0, length) : length + between(350, 1200));
      }
    }
    const { phase } = sweep() ?? {};
    const since = phase?.name === 'holding' || phase?.name === 'judging' ? phase.since : null;
    if (holdBegan !== null) longestHold = Math.max(longestHold, (computer.time - holdBegan) / 1000);
    holdBegan = since;
    const deafNow = window.deaf > 0;
    if (deafNow && !isDeaf) deafFrom = computer.time;
    if (!deafNow && isDeaf) deafUntil = computer.time;
    isDeaf = deafNow;
    if (isDeaf) at(100, () => undefined);
  }

  const stamp = (): string => ((computer.time - start) / 1000).toFixed(1);

  at(between(8000, 40_000), chat);
  notice();
  while (computer.time - start < LONGEST_SWEEP) {
    const { phase } = sweep() ?? {};
    if (phase?.name === 'finished') {
      if (person.wish === 'accept') break;
      // Ended by a word that was misheard: the ear is closed, the key is not.
      log.push(`${stamp()} key undo`);
      await window.tell('undo');
      notice();
      continue;
    }
    agenda.sort((a, b) => a.at - b.at);
    const alarm = window.alarmsSet().toSorted((a, b) => (window.due(a) ?? 0) - (window.due(b) ?? 0))[0];
    const due = alarm === undefined ? Infinity : (window.due(alarm) ?? Infinity);
    const [first] = agenda;
    if (first === undefined) throw new Error('nothing more would ever happen');
    const next = Math.max(computer.time, Math.min(first.at, due));
    await vi.advanceTimersByTimeAsync(next - computer.time);
    computer.time = moment(next);
    if (alarm !== undefined && due <= first.at) await window.ring(alarm);
    else {
      agenda.shift();
      await first.what();
    }
    await promisesKept();
    notice();
  }
  const state = sweep();
  const holds = state ? [...state.spent, ...state.holds] : [];
  return {
    isFinished: state?.phase.name === 'finished',
    minutes: (computer.time - start) / 60_000,
    holds,
    wrong: holds.flatMap((hold) => {
      const seen = truths.get(hold.began) ?? null;
      const same = seen?.light === hold.verdict.light && seen.arrows === hold.verdict.arrows;
      return same ? [] : [{ hold, seen, readBack: heardBack.has(hold.ended) }];
    }),
    longestHold,
    asked,
    lost,
    noticed: person.noticed,
    log,
  };
}

function kit({ session }: Window, scale: Scale, arrows: 'absent' | 'right-is-up'): Beginning {
  const body = session.saveBody({ name: 'Velde M1', scale, arrows });
  const lens = session.saveLens({ name: 'Orrin 85 f/1.8' });
  if (!body.ok || !lens.ok) throw new Error('the kit was refused');
  const situation = session.saveSituation({ body: body.value, lens: lens.value, converter: null, focalLength: 85, distance: 4250 });
  if (!situation.ok) throw new Error('the situation was refused');
  return { with: 'kit', situation: situation.value };
}
