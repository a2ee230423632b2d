// Listening for the words the person taught, on this computer alone. The room is heard all the time, so that its noise is
// known; what comes while the panel itself sounds is dropped.
import { Ear, type EarEvent } from '../../voice/ownWords/ear.ts';
import { takeIn } from '../../voice/ownWords/learning.ts';
import { recogniserOf } from '../../voice/ownWords/recogniser.ts';
import { gaveUp, spelt, wholeText, type Spelling } from '../../voice/ownWords/spelledValue.ts';
import type { Take } from '../../voice/ownWords/take.ts';
import { takes as store } from '../takes.ts';
import { lineIn } from './lineIn.ts';
import type { Deafness } from './listening.ts';
import type { EarOwner } from './owner.ts';
import { sample } from './samples.ts';

const NOTHING_TAUGHT = 'No words are taught yet. Open the hearing check and teach them, five times each.';
const NOT_POSSIBLE = 'This browser cannot hand over the microphone’s sound, so words are not heard. Keys, the pedal and the pointer do everything.';
const HELD_BACK = 'The browser holds the microphone’s sound back until you touch the panel. Press a key or click once.';
/** A sound context that has not begun by then waits for a touch. */
const TO_BEGIN = 1500;

/** A value under way, in the words said so far and how they sounded. */
interface Spelt {
  readonly value: Spelling;
  readonly doubtful: boolean;
  readonly takes: readonly Take[];
}

export async function keepListeningForOwnWords(owner: EarOwner, deafness: Deafness, stop: AbortSignal): Promise<void> {
  const taught = await store.read();
  if (!taught.ok) return giveUp(taught.sentence);
  if (taught.value.length === 0) return giveUp(NOTHING_TAUGHT);
  while (!stop.aborted) {
    owner.onState('starting');
    const track = await lineIn(owner, 'plain', stop);
    if (track === null) return;
    const heard = hearing();
    try {
      const sampling = await sample(track, heard.push);
      await nextIdle();
      const recogniser = recogniserOf(taught.value, sampling.rate);
      heard.listen(new Ear(sampling.rate, recogniser, () => owner.wordsNow()), sampling.rate);
      const held = setTimeout(() => sampling.held() && owner.onTrouble({ sentence: HELD_BACK, page: null }), TO_BEGIN);
      await over(track, stop);
      clearTimeout(held);
      sampling.stop();
    } catch {
      track.stop();
      return giveUp(NOT_POSSIBLE);
    }
    track.stop();
  }

  function giveUp(sentence: string): void {
    owner.onState('unavailable');
    owner.onTrouble({ sentence, page: sentence === NOT_POSSIBLE ? null : 'hearing.html' });
  }

  /** From samples to what the person told. */
  function hearing() {
    let ear: Ear | null = null;
    let began = false;
    let at = 0;
    /** Where sound was left out, in seconds of what the ear was given. */
    let given = 0;
    let gap = 0;
    let rate = 1;
    let deaf = false;
    /** The largest sample since something was heard last. */
    let peak = 0;
    let spelling: Spelt | null = null;

    function push(samples: Float32Array): void {
      if (!ear) return;
      if (!began) owner.onTrouble(null);
      const isDeaf = deafness.isDeaf();
      if (!began || isDeaf !== deaf) owner.onState(isDeaf ? 'deaf while speaking' : 'listening');
      began = true;
      deaf = isDeaf;
      at += samples.length / rate;
      // A sound of the panel's own is silence to the ear: it neither opens a word nor passes for the noise of the room.
      const events = isDeaf ? [] : ear.push(samples);
      if (isDeaf) {
        gap = given;
        spelling = null;
      } else {
        given += samples.length / rate;
        for (const one of samples) peak = Math.max(peak, Math.abs(one));
      }
      for (const event of events) {
        take(event);
        if (event.heard !== 'beginning') peak = 0;
      }
      if (spelling) finish(spelling);
    }

    function take(event: EarEvent): void {
      if (event.heard !== 'word' && event.heard !== 'unsure') return;
      if (event.began < gap && gap < event.ended) return;
      const doubtful = event.heard === 'unsure' || (spelling?.doubtful ?? false);
      const good = takeIn(event, peak);
      const takes = good ? [good] : [];
      const value = spelt(spelling?.value ?? null, event.word, at);
      spelling = value && { value, doubtful, takes: [...(spelling?.takes ?? []), ...takes] };
      if (value === null) owner.onHeard([{ text: event.word, doubtful, takes }], true);
    }

    function finish({ value, doubtful, takes }: Spelt): void {
      const text = wholeText(value, at);
      if (text === null && !gaveUp(value, at)) return;
      spelling = null;
      owner.onHeard([{ text: text ?? value.words.join(' '), doubtful, takes }], true);
    }

    return {
      push,
      listen(opened: Ear, sampleRate: number) {
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
