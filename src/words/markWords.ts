// What the microphone mark says while voice is off.
export interface MarkWords {
  readonly word: string;
  /** What a press does, beginning with the word. */
  readonly press: string;
}
