// What the panel shows before the catalogue can be read: the top of the start, and what is told while a part is being read or
// cannot be read.
export interface FirstWords {
  readonly name: string;
  readonly places: string;
  readonly place: Readonly<Record<'logbook' | 'plan' | 'kit' | 'settings' | 'help', string>>;
  readonly field: string;
  readonly placeholder: string;
  readonly start: string;
  readonly back: string;
  readonly dismiss: string;
  /** Names, for those who hear the screen, the place where things are announced. */
  readonly announcement: string;
  readonly opening: string;
  /** The files of the panel lie beside it, so they have been taken away or replaced under it. */
  readonly unread: string;
  /** Before what is stored was read nothing can be saved, or it would be overwritten unread. */
  readonly notRead: string;
  /** The microphone mark while voice is off; `press`: what a press does, beginning with the word. */
  readonly mark: { readonly word: string; readonly press: string };
}
