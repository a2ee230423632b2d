// The sound check, and what is so where nothing sounds or nothing is spoken.
export interface SoundWords {
  readonly title: string;
  readonly offer: string;
  readonly play: string;
  readonly loudness: string;
  readonly percent: (value: number) => string;
  /** Its name, and how loud. */
  readonly loudnessAt: (percent: number) => string;
  readonly playing: string;
  readonly heard: string;
  readonly done: string;
  readonly tonesOnly: string;
  readonly speechOnly: string;
  readonly standsStill: string;
  /** `language`: of what is spoken, by its name in the language of the screens. */
  readonly mute: (language: string) => string;
  readonly off: string;
  readonly switchOn: string;
}
