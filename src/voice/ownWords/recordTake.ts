// Records one take: samples until a word has ended, then its stretch and what is needed to judge it.
import { Frames } from './bands.ts';
import { Endpoints } from './endpoints.ts';
import type { TakeRecorded } from './takeQuality.ts';

export class TakeRecording {
  private readonly frames: Frames;
  private readonly endpoints = new Endpoints();
  private peak = 0;

  constructor(rate: number) {
    this.frames = new Frames(rate);
  }

  /** The take once a word has ended, else null. */
  push(samples: Float32Array): TakeRecorded | null {
    for (const sample of samples) this.peak = Math.max(this.peak, Math.abs(sample));
    for (const frame of this.frames.push(samples)) {
      const sounding = this.endpoints.push(frame);
      if (sounding?.sign === 'ended') return this.told(sounding.loudest.stretch, sounding.loudest.long);
    }
    return null;
  }

  /** When the time for it is up and no word has ended. */
  gaveUp(): TakeRecorded {
    return this.told(null, false);
  }

  private told(stretch: TakeRecorded['stretch'], long: boolean): TakeRecorded {
    return { stretch, peak: this.peak, long };
  }
}
