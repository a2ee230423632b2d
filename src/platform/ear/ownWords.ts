// Listening for the words the person taught, on this computer alone. The room is heard all the time, so that its noise is
// known; what comes while the panel itself sounds is heard beside it.
import { OwnWordsEar, type EarEvent } from '../../voice/ownWords/ear.ts';
import { takeFrom } from '../../voice/ownWords/learning.ts';
import { recogniserOf } from '../../voice/ownWords/recogniser.ts';
import { spelledQuestions, wholeQuestion } from '../../voice/ownWords/spelledQuestion.ts';
import { spelledValues, type WordByWord } from '../../voice/ownWords/spelledValue.ts';
import type { Take } from '../../voice/ownWords/take.ts';
import { takesIn } from '../takes.ts';
import type { Deaf } from '../../voice/deaf.ts';
import { faultOf, lineIn } from './lineIn.ts';
import type { Deafness } from './listening.ts';
import type { EarOwner } from './owner.ts';
import { sample } from './samples.ts';

/** A sound context that has not begun by then waits for a touch. */
const TO_BEGIN = 1500;
/** How soon words that are taught now are heard. */
const TAUGHT_MEANWHILE = 1000;

/** A value or a question under way, in the words said so far and how they sounded. */
interface Spelt {
  readonly telling: WordByWord;
  readonly doubtful: boolean;
  readonly takes: readonly Take[];
  /** Where its sound began, in seconds of what the ear was given. */
  readonly began: number;
}

export async function keepListeningForOwnWords(owner: EarOwner, deafness: Deafness, stop: AbortSignal): Promise<void> {
  const taught = await taughtWords();
  if (taught === null) return;
  while (!stop.aborted) {
    owner.onState('starting');
    const track = await lineIn(owner, 'plain', stop);
    if (track === null) return;
    const heard = hearing(track);
    try {
      const sampling = await sample(track, heard.push);
      await nextIdle();
      const recogniser = recogniserOf(taught, sampling.rate);
      heard.listen(new OwnWordsEar(sampling.rate, recogniser, () => owner.wordsNow()), sampling.rate);
      const held = setTimeout(() => sampling.held() && owner.onDeaf('held back'), TO_BEGIN);
      await over(track, stop);
      clearTimeout(held);
      sampling.stop();
    } catch {
      track.stop();
      return giveUp('no sound');
    }
    track.stop();
  }

  /** Null once listening is over: they may be taught meanwhile in another tab. */
  async function taughtWords(): Promise<readonly Take[] | null> {
    const store = takesIn(() => owner.language.tag);
    while (!stop.aborted) {
      const read = await store.read();
      if (read.ok && read.value.length > 0) return read.value;
      giveUp(read.ok ? 'no words' : 'words unreadable');
      await new Promise((again) => setTimeout(again, TAUGHT_MEANWHILE));
    }
    return null;
  }

  function giveUp(why: Deaf): void {
    owner.onState('unavailable');
    owner.onDeaf(why);
  }

  /** From samples to what the person told. */
  function hearing(track: MediaStreamTrack) {
    let ear: OwnWordsEar | null = null;
    let began = false;
    let at = 0;
    /** Seconds of sound that the ear was given, by which it counts. */
    let given = 0;
    let rate = 1;
    let deaf = false;
    /** The largest sample since something was heard last. */
    let peak = 0;
    let spelling: Spelt | null = null;
    const { asked, isQuestion } = spelledQuestions(owner.language);
    const { spelt, wholeText, gaveUp } = spelledValues(owner.language);

    function push(samples: Float32Array): void {
      if (!ear) return;
      if (!began) owner.onDeaf(faultOf(track));
      const isDeaf = deafness.isDeaf();
      if (!began || isDeaf !== deaf) owner.onState(isDeaf ? 'deaf while speaking' : 'listening');
      began = true;
      deaf = isDeaf;
      at += samples.length / rate;
      // A sound of the panel's own neither opens a word nor passes for the noise of the room.
      const events = isDeaf ? ear.beside(samples) : ear.push(samples);
      if (isDeaf) spelling = null;
      else given += samples.length / rate;
      for (const one of samples) peak = Math.max(peak, Math.abs(one));
      for (const event of events) {
        take(event);
        if (event.heard !== 'beginning') peak = 0;
      }
      if (spelling) finish(spelling);
    }

    function take(event: EarEvent): void {
      if (event.heard === 'nothing' && event.missed !== null) owner.onMissed(event.missed, event.because === 'amid talk' ? 'amid talk' : 'beside the panel');
      if (event.heard !== 'word' && event.heard !== 'unsure') return;
      const doubtful = event.heard === 'unsure' || (spelling?.doubtful ?? false);
      const good = takeFrom(event, peak);
      const takes = good ? [good] : [];
      const before = spelling?.telling ?? null;
      const telling = asked(before, event.word, at, owner.namesNow()) ?? spelt(before, event.word, at);
      const began = spelling?.began ?? event.began;
      spelling = telling && { telling, doubtful, takes: [...(spelling?.takes ?? []), ...takes], began };
      if (telling === null) owner.onHeard([{ text: event.word, doubtful, takes }], true, ago(event.began));
    }

    function finish({ telling, doubtful, takes, began }: Spelt): void {
      const text = isQuestion(telling) ? wholeQuestion(telling, at) : wholeText(telling, at);
      if (text === null && (isQuestion(telling) || !gaveUp(telling, at))) return;
      spelling = null;
      owner.onHeard([{ text: text ?? telling.words.join(' '), doubtful, takes }], true, ago(began));
    }

    /** In milliseconds. */
    function ago(began: number): number {
      return (given - began) * 1000;
    }

    return {
      push,
      listen(opened: OwnWordsEar, sampleRate: number) {
        rate = sampleRate;
        ear = opened;
      },
    };
  }
}

/** Comparing the takes with one another takes most of a second: not while something is being drawn. */
const nextIdle = (): Promise<void> => new Promise((idle) => requestIdleCallback(() => idle(), { timeout: 500 }));

/** The microphone is gone, or listening is over. */
const over = (track: MediaStreamTrack, stop: AbortSignal): Promise<void> =>
  new Promise((done) => {
    track.addEventListener('ended', () => done(), { once: true, signal: stop });
    stop.addEventListener('abort', () => done(), { once: true });
    if (stop.aborted || track.readyState === 'ended') done();
  });
