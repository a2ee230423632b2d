// What a person says while the panel itself sounds. Where the microphone hears the panel, nobody can tell who said a word:
// it is told as not taken. Where it does not, as with headphones or an echo canceller, the word counts. Which of the two it
// is shows in what was heard beside the last things that the panel said.
import { Frames } from './bands.ts';
import type { Endpoints, Sounding } from './endpoints.ts';

type Ended = Extract<Sounding, { sign: 'ended' }>;

/** Frames that a sound of the panel's must last to tell anything: a tone may be too short to be heard. */
const TELLS = 60;
/** Of so many in a row one at most was heard: once it may have been a person who was not understood. */
const PAST = 4;
const ONCE = 1;

export class BesidePanel {
  private readonly frames: Frames;
  private endpoints: Endpoints | null = null;
  private count = 0;
  private heard = false;
  /** Of the last sounds that tell it, whether each was heard. */
  private past: readonly boolean[] = [];

  constructor(rate: number) {
    this.frames = new Frames(rate);
  }

  get sounds(): boolean {
    return this.endpoints !== null;
  }

  /** The microphone does not hear the panel. */
  get isUnheard(): boolean {
    return this.past.length === PAST && this.past.filter((heard) => heard).length <= ONCE;
  }

  /** The panel begins to sound; `endpoints` know the noise of the room. */
  begin(endpoints: Endpoints): void {
    this.endpoints = endpoints;
    this.count = 0;
    this.heard = false;
  }

  /** What ended in these samples, and how many frames after it began. */
  push(samples: Float32Array): { readonly sounding: Ended; readonly ago: number }[] {
    const { endpoints } = this;
    if (endpoints === null) return [];
    return this.frames.push(samples).flatMap((frame) => {
      this.count++;
      const sounding = endpoints.push(frame);
      if (sounding?.sign === 'began') this.heard = true;
      return sounding?.sign === 'ended' ? [{ sounding, ago: endpoints.heard - sounding.begins }] : [];
    });
  }

  /** What was heard was the person and not the panel. */
  wasPerson(): void {
    this.heard = false;
  }

  /** The panel is silent again. */
  end(): void {
    if (this.endpoints === null) return;
    this.endpoints = null;
    if (this.heard || this.count >= TELLS) this.past = [...this.past, this.heard].slice(-PAST);
  }
}
