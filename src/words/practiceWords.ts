// The practice camera: what it is, how it may be set, and its light for those who hear the screen.
export interface PracticeWords {
  readonly title: string;
  readonly about: string;
  readonly arrows: string;
  readonly past: string;
  readonly odd: string;
  readonly begin: string;
  readonly train: string;
  readonly pictures: string;
  readonly light: (lit: boolean, arrows: 'none' | 'left' | 'right' | 'both') => string;
}
