// English: what Sweepbook is, and what is new in it.
import type { AboutWords } from '../aboutWords.ts';

export const words: AboutWords = {
  title: 'About Sweepbook',
  version: (version) => `Version ${version}`,
  updated: (version) => `Sweepbook is now ${version}: what is new`,
  news: {
    title: 'What is new',
    of: [
      {
        version: '0.1.0',
        lines: [
          'The first version: sweeps by voice, by keys or with one switch, and a logbook of every lens.',
          'Photographs check a value. A practice camera shows what the light can do.',
        ],
      },
    ],
  },
  privacy: {
    title: 'Privacy',
    sentences: [
      'What you enter and measure stays in this browser, on this computer.',
      'Sweepbook sends nothing anywhere by itself and reads none of the pages you visit.',
      'Two things leave it only once you switch them on: the last values, through your browser account, and your voice, where the browser’s own recogniser sends it to its maker.',
    ],
  },
  licences: { title: 'Licences', about: 'Sweepbook contains parts made by others. Their licences come with it.', open: 'Read the licences' },
  fault: {
    title: 'Report a fault',
    about: 'The report holds the settings, the versions, the languages and how much is kept. It holds no names of kit, no serial numbers and no notes.',
    give: 'Nothing is sent: give the file to whoever helps you.',
    save: 'Save a fault report',
  },
};
