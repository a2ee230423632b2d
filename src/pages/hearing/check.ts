// The state of the hearing check: the microphone's level, what was last heard, and the lesson under way.
import { signal, type ReadonlySignal } from '@preact/signals';
import { openMicrophone } from '../../platform/ear/microphone.ts';
import { sample } from '../../platform/ear/samples.ts';
import type { Takes } from '../../platform/takes.ts';
import { OwnWordsEar } from '../../voice/ownWords/ear.ts';
import { withoutWord } from '../../voice/ownWords/forgetting.ts';
import { withoutLearned } from '../../voice/ownWords/learning.ts';
import { clearnessOf } from '../../voice/ownWords/noiseMeter.ts';
import { recogniserOf, type Recogniser } from '../../voice/ownWords/recogniser.ts';
import type { Take } from '../../voice/ownWords/take.ts';
import { words } from '../../words/catalogue.ts';
import { Lesson, TAKES_A_WORD } from './lesson.ts';

interface Teaching {
  readonly word: string;
  readonly done: number;
  /** What became of the last take. */
  readonly said: string;
}

export interface Check {
  readonly takes: ReadonlySignal<readonly Take[]>;
  /** A sentence on the microphone, the advice or what went wrong. */
  readonly state: ReadonlySignal<string>;
  readonly listens: ReadonlySignal<boolean>;
  /** Decibels under full scale, ten times a second. */
  readonly level: ReadonlySignal<number>;
  readonly heard: ReadonlySignal<string>;
  readonly teaching: ReadonlySignal<Teaching | null>;
  begin(): Promise<void>;
  listen(): Promise<void>;
  /** One word after another; the next begins by itself. */
  teach(words: readonly string[]): void;
  stopTeaching(): void;
  forgetLearned(): Promise<void>;
  erase(): Promise<void>;
}

const QUIETEST = -90;
/** Pieces of 20 ms to one reading of the meter. */
const PIECES = 5;

export function createCheck(store: Takes): Check {
  const takes = signal<readonly Take[]>([]);
  const say = words('hearing');
  const state = signal<string>(say.room.toListen);
  const listens = signal(false);
  const level = signal(QUIETEST);
  const heard = signal('');
  const teaching = signal<Teaching | null>(null);
  let rate = 0;
  let ear: OwnWordsEar | null = null;
  let recogniser: Recogniser | null = null;
  let lesson: Lesson | null = null;
  /** To be taught after the lesson under way. */
  let waiting: readonly string[] = [];
  let wasMany = false;
  let peak = 0;
  let pieces = 0;

  function meter(samples: Float32Array): void {
    for (const one of samples) peak = Math.max(peak, Math.abs(one));
    if (++pieces < PIECES) return;
    level.value = Math.max(QUIETEST, 20 * Math.log10(Math.max(peak, 1e-5)));
    [peak, pieces] = [0, 0];
  }

  /** Compares with what is taught now. */
  function prepare(): void {
    recogniser = recogniserOf(takes.peek(), rate);
    ear = new OwnWordsEar(rate, recogniser);
  }

  function push(samples: Float32Array): void {
    meter(samples);
    if (lesson) return follow(lesson, samples);
    for (const event of ear?.push(samples) ?? []) {
      if (event.heard === 'nothing' && event.because !== 'too short') heard.value = say.heard.noWord;
      if (event.heard !== 'word' && event.heard !== 'unsure') continue;
      heard.value = event.heard === 'word' ? say.heard.word(event.word) : say.heard.perhaps(event.word);
      state.value = words('take').heard[clearnessOf(event.stretch)];
    }
  }

  function follow(under: Lesson, samples: Float32Array): void {
    const outcome = under.push(samples);
    if (outcome === null) return;
    if (outcome.advice !== null) state.value = outcome.advice;
    teaching.value = { word: under.word, done: under.taken.length, said: outcome.sentence };
    if (under.taken.length < TAKES_A_WORD) return;
    void taught(under);
  }

  async function taught({ word, taken }: Lesson): Promise<void> {
    const rest = waiting;
    const last = rest.length === 0;
    const kept = await change((now) => [...withoutWord(now ?? [], word), ...taken], last && wasMany ? say.lesson.allTaught : say.lesson.taught(word), last);
    if (kept && !last) begin(rest);
  }

  function begin([word, ...rest]: readonly string[]): void {
    if (word === undefined) return;
    waiting = rest;
    lesson = new Lesson(word, rate, takes.peek());
    teaching.value = { word, done: 0, said: say.lesson.begin };
  }

  async function change(how: Parameters<Takes['change']>[0], sentence: string, thenListens = true): Promise<boolean> {
    lesson = null;
    waiting = [];
    teaching.value = null;
    const kept = await store.change(how);
    if (kept.ok) takes.value = kept.value;
    heard.value = kept.ok ? sentence : words('store').taught[kept.fault];
    // It takes most of a second: not between two words that are taught.
    if (rate > 0 && (thenListens || !kept.ok)) prepare();
    return kept.ok;
  }

  return {
    takes,
    state,
    listens,
    level,
    heard,
    teaching,
    async begin() {
      const read = await store.read();
      if (read.ok) takes.value = read.value;
      else heard.value = words('store').taught[read.fault];
    },
    async listen() {
      const opened = await openMicrophone('plain');
      if (!opened.ok) {
        state.value = say.room.refused[opened.fault];
        return;
      }
      try {
        ({ rate } = await sample(opened.value, push));
      } catch {
        opened.value.stop();
        state.value = say.room.noSound;
        return;
      }
      prepare();
      listens.value = true;
      state.value = opened.value.muted ? say.room.muted : say.room.stand;
      opened.value.addEventListener('ended', () => {
        listens.value = false;
        state.value = say.room.gone;
      });
    },
    teach(words) {
      heard.value = '';
      wasMany = words.length > 1;
      begin(words);
    },
    stopTeaching() {
      [lesson, waiting] = [null, []];
      teaching.value = null;
    },
    forgetLearned: async () => void (await change((now) => now && withoutLearned(now), say.own.learnedForgotten)),
    async erase() {
      [lesson, waiting] = [null, []];
      teaching.value = null;
      const erased = await store.erase();
      if (erased.ok) takes.value = [];
      heard.value = erased.ok ? say.own.erased : words('store').taught[erased.fault];
      if (rate > 0) prepare();
    },
  };
}
