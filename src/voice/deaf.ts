// Why the ear hears nothing although it is on, as data: the panel writes the sentence and offers the way on.
export type Deaf =
  /** There is none, or the one there was has gone. */
  | 'no microphone'
  /** The browser has not allowed it yet, or no longer does. */
  | 'not asked'
  | 'blocked'
  /** There is one, but it cannot be opened: another program holds it. */
  | 'in use'
  /** It is open, and switched off at the device or in the system. */
  | 'muted'
  /** It is open, and nothing at all comes from it. */
  | 'silent'
  /** The browser's recogniser does not answer. */
  | 'no service'
  /** The browser tells that the network is gone, which its recogniser needs. */
  | 'no network'
  | 'no recogniser'
  /** The browser has no recogniser ready on this computer. */
  | 'not on this computer'
  /** It would have to download one first; it is doing so. */
  | 'to be downloaded'
  | 'being downloaded'
  /** The browser, or whoever manages it, does not let its recogniser be used. */
  | 'not usable'
  /** Its recogniser does not know the language. */
  | 'no language'
  | 'no words'
  | 'words unreadable'
  /** The browser hands over no sound. */
  | 'no sound'
  /** The browser holds the sound back until the panel is touched. */
  | 'held back'
  | 'another window'
  /** A part of the panel cannot be read. */
  | 'unread';

/** What recognises the words: those the person taught, or the browser, on this computer only or wherever its maker does. */
export type RecognisedBy = 'own' | 'here' | 'browser';

/** Why one word was not taken: talk ran before or after it, or the panel itself still spoke when it began. */
export type Missed = 'amid talk' | 'beside the panel';
