// How much later than the panel knows its own sound ends in the room: a wireless loudspeaker may be late by more than any
// browser tells. It shows in sound that still runs when the ear opens again, time after time; once it may be a person.

/** Frames. Later than this no loudspeaker is. */
const LATEST = 100;
const PAST = 3;

export class LateOutput {
  private past: readonly number[] = [];

  /** After one sound of the panel's: frames for which what ran when the ear opened again went on; 0 where nothing did. */
  note(ranOn: number): void {
    this.past = [...this.past, Math.min(ranOn, LATEST)].slice(-PAST);
  }

  /** Frames after the ear opened again in which the panel may still be heard: the middle of the last three. */
  get frames(): number {
    return this.past.length < PAST ? 0 : [...this.past].sort((a, b) => a - b)[1]!;
  }
}
