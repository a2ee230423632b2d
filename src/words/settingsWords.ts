// The settings: how the person works, and how the panel speaks, sounds, listens and keeps values.
import type { Settings, Theme } from '../settings.ts';
import type { Pace } from '../sweep/manner.ts';
import type { Seconds } from '../units.ts';

type Voice = Settings['voice'];
interface Option {
  readonly label: string;
  readonly note?: string;
}

export interface SettingsWords {
  readonly title: string;
  readonly working: {
    readonly title: string;
    readonly holdTime: (time: Seconds) => string;
    readonly holdTimeNote: string;
    readonly pace: string;
    readonly paces: Readonly<Record<Pace['set'], Option>>;
    readonly toDial: (time: Seconds) => string;
    /** On a slider, for those who hear the screen. */
    readonly seconds: (time: Seconds) => string;
  };
  readonly sound: {
    readonly title: string;
    readonly speak: string;
    readonly tones: Required<Option>;
    readonly rate: string;
    readonly rates: Readonly<Record<'slow' | 'own' | 'brisk' | 'fast', string>>;
    readonly voice: string;
    /** No voice of the list is asked for. */
    readonly anyVoice: string;
  };
  readonly look: {
    readonly title: string;
    readonly theme: string;
    readonly themes: Readonly<Record<Theme, Option>>;
    readonly far: Required<Option>;
  };
  readonly again: {
    readonly title: string;
    readonly after: string;
    readonly months: (count: number) => string;
    readonly years: (count: number) => string;
  };
  readonly computers: { readonly title: string; readonly carry: Required<Option> };
  readonly listening: {
    readonly title: string;
    readonly by: string;
    readonly recognisers: Readonly<Record<Voice['listen'], Option>>;
    readonly noRecogniser: string;
    readonly open: string;
    readonly openings: Readonly<Record<Voice['open'], Option>>;
    readonly learn: Required<Option>;
    readonly check: string;
    readonly kept: string;
    readonly erase: string;
    readonly erased: string;
  };
}
