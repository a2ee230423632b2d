// The settings: how the person works, and how the panel speaks, sounds, listens and keeps values.
import type { DistanceUnit } from '../optics/writtenLength.ts';
import type { Settings, Theme } from '../settings.ts';
import type { Manner, Pace } from '../sweep/manner.ts';
import type { Seconds } from '../units.ts';

type Voice = Settings['voice'];
interface Option {
  readonly label: string;
  readonly note?: string;
}

/** How old a measurement may be. */
export type Age = { readonly in: 'months' | 'years'; readonly count: number };

export interface SettingsWords {
  readonly title: string;
  readonly find: { readonly label: string; readonly found: (count: number) => string };
  readonly pages: Readonly<Record<'working' | 'sound' | 'voice' | 'look' | 'language' | 'logbook', string>>;
  /** How each page is set, in few words. */
  readonly states: {
    readonly working: (care: string, manner: Manner) => string;
    readonly sound: (speaks: boolean, tones: boolean) => string;
    readonly voice: (listen: Voice['listen']) => string;
    readonly look: (theme: Theme, far: boolean) => string;
    /** Both by their own names; `voice`: null where it is that of the screens. */
    readonly language: (screens: string, voice: string | null) => string;
    /** `after`: the age at which a measurement is due; null for one that is no choice of the list. */
    /** `after`: when a measurement is due again. */
    readonly logbook: (after: Age | null, carried: boolean) => string;
  };
  readonly working: {
    readonly holdTime: (time: Seconds) => string;
    readonly holdTimeNote: string;
    readonly pace: string;
    readonly paces: Readonly<Record<Pace['set'], Option>>;
    readonly toDial: (time: Seconds) => string;
    /** On a slider, for those who hear the screen. */
    readonly seconds: (time: Seconds) => string;
  };
  /** What opens the panel; `where`: in a browser whose own page no extension may open. */
  readonly shortcut: { readonly title: string; readonly change: string; readonly where: string };
  readonly sound: {
    readonly speak: string;
    readonly tones: Required<Option>;
    readonly rate: string;
    readonly rates: Readonly<Record<'slow' | 'own' | 'brisk' | 'fast', string>>;
    readonly voice: string;
    /** No voice of the list is asked for. */
    readonly anyVoice: string;
  };
  readonly look: {
    readonly theme: string;
    readonly themes: Readonly<Record<Theme, Option>>;
    readonly far: Required<Option>;
  };
  readonly language: {
    readonly screens: string;
    /** `language`: the one that the browser has, by its own name. */
    readonly browser: (language: string) => string;
    readonly voice: string;
    readonly asScreens: string;
    readonly note: string;
    readonly distances: string;
    readonly units: Readonly<Record<DistanceUnit, string>>;
    /** As in the country that the browser's languages name. */
    readonly asCountry: (unit: DistanceUnit) => string;
  };
  readonly again: {
    readonly title: string;
    readonly after: string;
    /** In a list of its own, beside `after`. */
    readonly age: (age: Age) => string;
  };
  readonly backup: { readonly title: string; readonly remind: Required<Option> };
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
