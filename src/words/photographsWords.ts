// Photographs of the printed target: bringing them in, and what each of them shows.
import type { Photograph } from '../kit/photograph/photograph.ts';
import type { PictureSize } from '../kit/photograph/jpeg.ts';
import type { PictureFault, PictureStage } from '../photographs/brought.ts';
import type { FindFault } from '../photographs/findFault.ts';
import type { FocusUntold, FocusReading } from '../photographs/focusReading.ts';
import type { Motion, MotionWay } from '../photographs/motion.ts';
import type { EdgeReading, TargetReading } from '../photographs/reading.ts';
import type { WithInterval } from '../photographs/withInterval.ts';

export interface PhotographsWords {
  readonly title: string;
  readonly about: string;
  readonly choose: string;
  readonly drop: string;
  readonly stays: string;
  /** The way to pictures of the practice camera. */
  readonly practise: string;
  /** The length of the target's scale on paper. */
  readonly printed: { readonly label: string; readonly hint: string; readonly fault: string };
  /** The list of pictures. */
  readonly pictures: string;
  /** Not all of so many are drawn. */
  readonly more: (count: number) => string;
  readonly progress: (read: number, all: number) => string;
  readonly stage: Readonly<Record<PictureStage | 'waiting' | 'let go', string>>;
  readonly stop: string;
  readonly clear: string;
  readonly fault: Readonly<Record<PictureFault, string>>;
  /** The picture with what was found drawn over it. */
  readonly found: (ramp: boolean) => string;
  readonly target: (target: TargetReading) => string;
  readonly notFound: (fault: FindFault) => string;
  /** Sharp enough or not, how far off, and how sure that is: the last as a sentence of its own. */
  readonly focus: (focus: FocusReading, motion: Motion) => readonly string[];
  readonly noFocus: (fault: FocusUntold) => string;
  /** The camera moved while the picture was taken. */
  readonly moved: (way: MotionWay) => string;
  /** Beside a file that was sharpened: what was measured flatters the lens. */
  readonly sharpened: string;
  readonly crops: string;
  readonly crop: (reading: EdgeReading) => string;
  readonly chart: {
    readonly title: string;
    /** For those who do not see it. */
    readonly said: (focus: FocusReading) => string;
    readonly target: string;
    readonly depth: (depth: number) => string;
  };
  readonly figures: {
    readonly title: string;
    readonly edge: (reading: EdgeReading) => string;
    readonly target: (target: TargetReading) => string;
    /** `measured`: what a bracket measured a step to be worth, in millimetres at the target; null where none did. */
    readonly focus: (focus: FocusReading, measured: WithInterval | null) => readonly string[];
  };
  /** Keeping what one picture or a series showed. */
  readonly keep: {
    readonly label: string;
    /** In place of it, once it is kept. */
    readonly done: string;
    /** `crops`: how many there are. */
    readonly what: (crops: number) => string;
    readonly kept: string;
    readonly erase: string;
    /** Why it cannot be kept yet, and what to do. */
    readonly noSituation: string;
    readonly noValue: string;
    readonly another: string;
  };
  /** The size of the picture, and what the camera wrote into it. */
  readonly camera: (frame: PictureSize, camera: Photograph | null) => string;
}
