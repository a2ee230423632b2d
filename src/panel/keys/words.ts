// What is said and shown about where the keys go.
export const KEYS_SAID = {
  elsewhere: 'Keys go to the page: click the panel.',
  /** After the end tone, when a verdict by key would be lost. */
  holdAtStake: 'The time is up, but keys go to the page: click the panel.',
  back: 'The panel hears the keys again.',
};
