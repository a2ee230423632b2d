// German: the settings.
import type { Settings, Theme } from '../../settings.ts';
import type { Pace } from '../../sweep/manner.ts';
import { line } from '../line.ts';
import type { Age, SettingsWords } from '../settingsWords.ts';
import { LISTENING_MEANS } from './listening.ts';
import { write } from './write.ts';

const PACED: Readonly<Record<Pace['set'], string>> = { own: 'eigenes Tempo', counted: 'gezähltes Tempo' };
const LISTENS: Readonly<Record<Settings['voice']['listen'], string>> = {
  off: 'aus',
  own: 'angelernte Wörter',
  here: 'Browser, auf diesem Computer',
  browser: 'Sprach\u00aderkennung des Browsers',
};
const LOOKS: Readonly<Record<Theme, string>> = { system: 'wie das System', light: 'hell', dark: 'dunkel', dim: 'gedämpft', red: 'rot' };

const AGE: Readonly<Record<Age['in'], Parameters<typeof write.count>[1]>> = {
  months: { one: '# Monat', other: '# Monate' },
  years: { one: '# Jahr', other: '# Jahre' },
};
const age = ({ in: unit, count }: Age): string => write.count(count, AGE[unit]);
/** After "nach". */
const AGES: typeof AGE = { months: { one: '# Monat', other: '# Monaten' }, years: { one: '# Jahr', other: '# Jahren' } };

const UNITS = { m: 'Metern', ft: 'Fuß' } as const;

export const words: SettingsWords = {
  title: 'Einstellungen',
  find: {
    label: 'Einstellung suchen',
    found: (count) => (count === 0 ? 'Keine Einstellung passt. Versuchen Sie ein anderes Wort.' : `${write.number(count)} gefunden`),
  },
  pages: { working: 'Ablauf', sound: 'Ton', voice: 'Spracheingabe', look: 'Anzeige', language: 'Sprache', logbook: 'Logbuch' },
  states: {
    working: (care, { holdTime, pace }) => line([care, write.unit(holdTime, 'second'), PACED[pace.set]]),
    sound: (speaks, tones) => line([speaks ? 'spricht jeden Wert' : 'spricht nicht', tones ? 'Töne' : 'keine Töne']),
    voice: (listen) => LISTENS[listen],
    look: (theme, far) => line([LOOKS[theme], far && 'Fernsicht']),
    language: (screens, voice) => line([screens, voice !== null && `gesprochen: ${voice}`]),
    logbook: (after, carried) =>
      line([after !== null && `wieder fällig nach ${write.count(after.count, AGES[after.in])}`, carried && 'zwischen Ihren Computern abgeglichen']),
  },
  working: {
    holdTime: (time) => `Haltezeit: ${write.unit(time, 'second')}`,
    holdTimeNote: 'Fünf Sekunden sind allgemein üblich.',
    pace: 'Tempo',
    paces: {
      own: { label: 'Eigenes', note: 'Jede Probe beginnt mit einem Druck oder einem Wort.' },
      counted: { label: 'Gezählt', note: 'Nach der Zeit zum Einstellen zählen drei Ticks herunter, dann beginnt die Probe.' },
    },
    toDial: (time) => `Zeit zum Einstellen: ${write.unit(time, 'second')}`,
    seconds: (time) => write.unit(time, 'second'),
  },
  shortcut: {
    title: 'Tastenkürzel zum Öffnen',
    change: 'Tastenkürzel ändern',
    where: 'Es wird in der Add-ons-Verwaltung des Browsers geändert, hinter dem Zahnrad.',
  },
  sound: {
    speak: 'Jeden Wert sprechen',
    tones: { label: 'Töne', note: 'Wenn eine Probe beginnt und endet und wenn eine Antwort notiert oder abgelehnt wird.' },
    rate: 'Sprechtempo',
    rates: { slow: 'langsam', own: 'wie die Stimme', brisk: 'flott', fast: 'schnell' },
    voice: 'Stimme',
    anyVoice: 'Wahl des Computers',
  },
  look: {
    theme: 'Farbschema',
    themes: {
      system: { label: 'Wie das System' },
      light: { label: 'Hell' },
      dark: { label: 'Dunkel' },
      dim: { label: 'Gedämpft', note: 'Für ein dunkles Studio: Nichts blendet.' },
      red: { label: 'Rot', note: 'Nur Rot, damit die Augen an das Dunkel gewöhnt bleiben.' },
    },
    far: {
      label: 'Fernsicht',
      note: 'Ein Durchlauf füllt die Seitenleiste und ist vom Stativ aus lesbar. Auch das Wort, seine Taste oder ein Druck auf den Wert schalten um.',
    },
  },
  language: {
    screens: 'Sprache der Anzeige',
    browser: (language) => `Wie der Browser: ${language}`,
    voice: 'Sprechen und verstehen',
    asScreens: 'Sprache der Anzeige',
    note: 'Angelernte Wörter gehören zu ihrer Sprache.',
    distances: 'Entfernungen in',
    units: UNITS,
    asCountry: (unit) => `Wie im Land üblich: in ${UNITS[unit]}`,
  },
  again: {
    title: 'Wieder fällig',
    after: 'Eine Messung gilt',
    age,
  },
  backup: {
    title: 'Sicherung',
    remind: { label: 'An die Sicherung erinnern', note: 'Nach fünf neuen Messungen oder nach 30 Tagen. Wird Sweepbook entfernt, ist das Logbuch gelöscht.' },
  },
  computers: {
    title: 'Ihre anderen Computer',
    carry: {
      label: 'Letzte Werte abgleichen',
      note:
        'Sie laufen über Ihr Browserkonto. Nur das verlässt diesen Computer: der letzte Wert jeder Situation, sein Datum, die Namen von Gehäuse ' +
        'und Objektiv, Brennweite und Entfernung. Durchläufe, Notizen und Serien\u00adnummern bleiben hier. Schalten Sie den Abgleich auf jedem ' +
        'Computer ein. Wenn Sie ihn ausschalten, werden die Werte dieses Computers aus dem Konto genommen.',
    },
  },
  listening: {
    title: 'Spracheingabe',
    by: 'Auf meine Wörter hören',
    recognisers: {
      off: { label: 'Nein', note: 'Tasten, Pedal und Maus können alles.' },
      own: { label: 'Mit angelernten Wörtern', note: 'Nichts verlässt diesen Computer. Lernen Sie sie in der Hörprüfung an.' },
      here: { label: 'Mit dem Browser, nur auf diesem Computer', note: 'Nur wo der Browser dafür bereit ist. Es wird nichts herunter\u00adgeladen.' },
      browser: { label: 'Mit der Sprach\u00aderkennung des Browsers', note: LISTENING_MEANS },
    },
    noRecogniser: 'Dieser Browser hat keine eigene Sprach\u00aderkennung.',
    open: 'Zuhören',
    openings: {
      always: { label: 'Während eines Durchlaufs' },
      pressed: {
        label: 'Wenn ich den Taster drücke',
        note: 'Für laute Räume. Halten oder tippen Sie den Taster, dann sprechen Sie. Etwas anderes tut er dann nicht.',
      },
    },
    learn: {
      label: 'Aus richtigen Wörtern lernen',
      note: 'Ein Wort, das angenommen und nicht zurückgenommen wurde, ist ab dem nächsten Durchlauf leichter zu erkennen. In der Hörprüfung lässt sich das Gelernte löschen.',
    },
    check: 'Hörprüfung: Mikrofon, Geräusche, Wörter anlernen',
    kept: 'Die in einem Durchlauf gehörten Wörter bleiben bei seinen Proben, in diesem Browser und in Sicherungen. Ton wird nie gespeichert.',
    erase: 'Gehörte Wörter löschen',
    erased: 'Das Gehörte ist gelöscht. Proben und Antworten sind alle noch da.',
  },
};
