// The page that opens after the first install: how the panel is opened.
export interface WelcomeWords {
  readonly title: string;
  readonly button: string;
  /** Where the browser keeps the button out of sight. */
  readonly hidden: string;
  /** `keys`: the shortcut, as the browser writes it. */
  readonly shortcut: (keys: string) => string;
  /** What to begin with, once it is open. */
  readonly first: string;
  /** The picture, in words. */
  readonly picture: string;
}
