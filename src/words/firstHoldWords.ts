// What is said so that a hold goes right: where the keys go, a press that may be meant for the camera's button, what each
// button does, and what the light can do.
type Coached = 'dialling' | 'holding' | 'judging';
type ShownArrows = 'left' | 'right' | 'balanced' | 'lopsided';
type Shown = 'steady' | 'late' | 'flicker' | 'dark';

export interface FirstHoldWords {
  readonly keys: {
    readonly elsewhere: string;
    /** After the end tone, when a verdict by key would be lost. */
    readonly holdAtStake: string;
    readonly back: string;
  };
  /** Said and shown while a hold is under way. */
  readonly asked: Readonly<Record<'short' | 'double' | 'long', string>> & {
    /** `undoable`: there is something to take back from before this hold. */
    readonly kept: (undoable: boolean) => string;
  };
  /** Undo by the switch. */
  readonly keptDouble: string;
  readonly coach: {
    readonly label: string;
    readonly camera: string;
    readonly panel: string;
    readonly lights: string;
    readonly firstAloud: string;
    /** `aloud`: null where nothing may be said into the hold. */
    readonly steps: Readonly<Record<Coached, { readonly now: string; readonly press: string; readonly aloud: string | null }>>;
  };
  readonly lights: {
    readonly title: string;
    readonly open: string;
    readonly close: string;
    readonly does: Readonly<Record<Shown, string>>;
    /** When its press is told. */
    readonly when: Readonly<Record<Shown, string>>;
    /** The same for the steady light, in a word. */
    readonly after: string;
  };
  readonly arrows: {
    readonly title: string;
    readonly does: Readonly<Record<ShownArrows, string>>;
    /** How a steady light counts with them. */
    readonly counts: Readonly<Record<'in' | 'out', string>>;
  };
}
