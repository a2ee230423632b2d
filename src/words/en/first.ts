// English: what stands before the catalogue can be read.
import type { FirstWords } from '../firstWords.ts';

export const words: FirstWords = {
  name: 'Sweepbook',
  places: 'More',
  place: { logbook: 'Logbook', plan: 'Plan', kit: 'Kit', settings: 'Settings', help: 'Help' },
  field: 'Look up a lens, or name a new one',
  placeholder: 'Lens, known or new',
  start: 'Start',
  back: 'Back',
  dismiss: 'Dismiss',
  announcement: 'Announcement',
  opening: 'Opening…',
  unread: 'A part of this panel cannot be read. Close the panel and open it again. Nothing is lost.',
  notRead: 'What is stored has not been read, so nothing can be saved. Close this panel and open it again.',
  mark: { word: 'voice off', press: 'voice off: switch it on' },
};
