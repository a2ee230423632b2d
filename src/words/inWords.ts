// What is said, short for the ear, and the same whole for the eye.
export interface InWords {
  readonly spoken: string;
  readonly written: string;
}
