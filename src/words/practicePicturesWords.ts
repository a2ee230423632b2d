// Pictures that the practice camera takes.
export interface PracticePicturesWords {
  readonly title: string;
  /** That none of it is real. */
  readonly simulated: string;
  readonly about: Readonly<Record<'one' | 'check' | 'bracket', string>>;
  readonly take: Readonly<Record<'one' | 'check' | 'bracket', string>>;
  /** The name of one of them. */
  readonly picture: (number: number) => string;
  readonly another: string;
  readonly truth: { readonly title: string; /** `step`: in millimetres at the target. */ readonly told: (centre: number, step: number) => string };
}
