// The rooms of the program and which may know which, lowest first: a room knows only rooms above it in this table, so no
// two can ever know each other. An import of a type is knowing, too. DEVELOPERS.md draws the same table.

/** `holds`: folders with all below them, and single files; of two that fit a file, the longer one counts. */
type Table<Name extends string> = { readonly [Each in Name]: { readonly holds: readonly string[]; readonly knows: readonly NoInfer<Name>[] } };

const table = <const Name extends string>(rooms: Table<Name>): Table<Name> => rooms;

export const ROOMS = table({
  units: { holds: ['src/units.ts'], knows: [] },
  calendar: { holds: ['src/calendar.ts'], knows: ['units'] },
  result: { holds: ['src/result.ts'], knows: [] },
  unread: { holds: ['src/unread.ts'], knows: [] },
  'a stored sweep': {
    holds: [
      'src/sweep/scale.ts',
      'src/sweep/verdict.ts',
      'src/sweep/care.ts',
      'src/sweep/memory.ts',
      'src/sweep/oddity.ts',
      'src/sweep/storedBench.ts',
      'src/sweep/widthTransfer.ts',
      'src/sweep/manner.ts',
      'src/sweep/plan.ts',
      'src/sweep/named.ts',
      'src/sweep/event.ts',
      'src/sweep/hold.ts',
    ],
    knows: ['units'],
  },
  'sweep/belief': { holds: ['src/sweep/belief'], knows: ['units', 'a stored sweep'] },
  'sweep/end': { holds: ['src/sweep/end'], knows: ['units', 'a stored sweep', 'sweep/belief'] },
  'sweep/next': { holds: ['src/sweep/next'], knows: ['units', 'a stored sweep', 'sweep/belief', 'sweep/end'] },
  'sweep/trouble': { holds: ['src/sweep/trouble'], knows: ['units', 'a stored sweep', 'sweep/belief', 'sweep/end'] },
  'sweep/transfer': { holds: ['src/sweep/transfer'], knows: ['units', 'a stored sweep', 'sweep/belief', 'sweep/end'] },
  sweep: { holds: ['src/sweep'], knows: ['units', 'a stored sweep', 'sweep/belief', 'sweep/end', 'sweep/next', 'sweep/trouble', 'sweep/transfer'] },
  kit: { holds: ['src/kit'], knows: ['units', 'calendar', 'result', 'a stored sweep'] },
  practice: { holds: ['src/practice'], knows: ['units', 'a stored sweep', 'sweep'] },
  settings: { holds: ['src/settings.ts'], knows: ['a stored sweep', 'practice'] },
  optics: { holds: ['src/optics'], knows: ['units', 'result', 'a stored sweep', 'kit'] },
  'optics/print': { holds: ['src/optics/print'], knows: ['units', 'result', 'optics'] },
  'the bench': { holds: ['src/optics/bench.ts'], knows: ['units', 'result', 'optics', 'optics/print'] },
  'optics/setUp': { holds: ['src/optics/setUp'], knows: ['units', 'a stored sweep', 'kit', 'optics'] },
  'voice/vocabulary': { holds: ['src/voice/vocabulary'], knows: ['a stored sweep', 'sweep'] },
  'voice/ownWords': { holds: ['src/voice/ownWords'], knows: ['a stored sweep', 'voice/vocabulary'] },
  voice: { holds: ['src/voice'], knows: ['units', 'a stored sweep', 'sweep/end', 'sweep/next', 'sweep/trouble', 'sweep/transfer', 'sweep', 'voice/vocabulary', 'voice/ownWords'] },
  'voice/phonetic': { holds: ['src/voice/phonetic', 'src/voice/pronunciation'], knows: ['units', 'a stored sweep', 'sweep', 'voice/vocabulary', 'voice'] },
  'logbook/plan': { holds: ['src/logbook/plan'], knows: ['units', 'result', 'kit'] },
  logbook: { holds: ['src/logbook'], knows: ['units', 'result', 'a stored sweep', 'sweep/end', 'sweep/trouble', 'sweep', 'kit', 'settings', 'logbook/plan'] },
  'logbook/search': { holds: ['src/logbook/search'], knows: ['kit', 'voice/vocabulary', 'logbook'] },
  'logbook/entering': { holds: ['src/logbook/entering'], knows: ['units', 'a stored sweep', 'kit', 'logbook'] },
  'logbook/backup': { holds: ['src/logbook/backup'], knows: ['units', 'result', 'kit', 'voice/ownWords', 'logbook'] },
  'logbook/csv': { holds: ['src/logbook/csv'], knows: ['units', 'calendar', 'result', 'a stored sweep', 'kit', 'logbook'] },
  'logbook/sync': { holds: ['src/logbook/sync'], knows: ['units', 'a stored sweep', 'kit', 'logbook'] },
  words: { holds: ['src/words'], knows: ['units', 'a stored sweep', 'sweep/end', 'sweep/trouble', 'kit', 'voice', 'logbook/plan', 'logbook', 'logbook/entering', 'logbook/backup', 'logbook/csv'] },
  platform: { holds: ['src/platform'], knows: ['units', 'result', 'sweep', 'voice/vocabulary', 'voice/ownWords'] },
  'platform/ear': { holds: ['src/platform/ear'], knows: ['voice/ownWords', 'voice', 'platform'] },
  background: { holds: ['src/background'], knows: ['units', 'logbook', 'logbook/search', 'words', 'platform'] },
  'panel/words': { holds: ['src/panel/words'], knows: ['units', 'a stored sweep', 'sweep/end', 'optics', 'optics/setUp', 'voice/vocabulary'] },
  'panel/session': { holds: ['src/panel/session'], knows: ['units', 'result', 'unread', 'a stored sweep', 'sweep/end', 'sweep/transfer', 'sweep', 'kit', 'practice', 'settings', 'voice/vocabulary', 'voice/ownWords', 'voice', 'voice/phonetic', 'logbook/plan', 'logbook', 'logbook/search', 'logbook/backup', 'logbook/sync', 'words', 'platform', 'platform/ear', 'panel/words'] },
  screens: { holds: ['src/panel'], knows: ['units', 'calendar', 'result', 'unread', 'a stored sweep', 'sweep/belief', 'sweep/end', 'sweep/trouble', 'sweep/transfer', 'sweep', 'kit', 'practice', 'settings', 'optics', 'optics/print', 'the bench', 'optics/setUp', 'voice/vocabulary', 'voice/ownWords', 'voice', 'logbook/plan', 'logbook', 'logbook/search', 'logbook/entering', 'logbook/backup', 'logbook/csv', 'words', 'platform', 'panel/words', 'panel/session'] },
  pages: { holds: ['src/pages'], knows: ['a stored sweep', 'optics/print', 'optics/setUp', 'voice/vocabulary', 'voice/ownWords', 'voice', 'logbook', 'logbook/entering', 'words', 'platform', 'platform/ear', 'screens'] },
});
