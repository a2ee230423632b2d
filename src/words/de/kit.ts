// German: the kit.
import type { Lens } from '../../kit/lens.ts';
import type { KitList, SavingFault } from '../../kit/change.ts';
import { byUnit } from '../countryInUse.ts';
import type { KitWords } from '../kitWords.ts';
import { FIELD_FAULT } from './fieldFaults.ts';
import { write } from './write.ts';

const CHANGED: Readonly<Record<KitList, string>> = {
  bodies: 'Dieses Gehäuse',
  lenses: 'Dieses Objektiv',
  converters: 'Dieser Konverter',
  situations: 'Diese Situation',
};

const CHOOSE: Readonly<Record<Extract<SavingFault, { is: 'situation lacks' }>['what'], string>> = {
  body: 'Wählen Sie zuerst ein Gehäuse für diese Situation.',
  lens: 'Wählen Sie zuerst ein Objektiv für diese Situation.',
  converter: 'Wählen Sie zuerst einen Konverter für diese Situation.',
};

const named = (lenses: readonly Pick<Lens, 'name' | 'serial'>[]): string =>
  write.list(lenses.map(({ name, serial }) => (serial === null ? name : `${name} (${serial})`)));

const range = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? write.number(from, 1) : `${write.number(from, 1)}\u2013${write.number(to, 1)}`;

export const words: KitWords = {
  title: 'Ausrüstung',
  lists: {
    body: { title: 'Gehäuse', add: 'Gehäuse hinzufügen', unnamed: 'Neues Gehäuse' },
    lens: { title: 'Objektive', add: 'Objektiv hinzufügen', unnamed: 'Neues Objektiv' },
    converter: { title: 'Konverter', add: 'Konverter hinzufügen', unnamed: 'Neuer Konverter' },
  },
  none: 'Noch leer.',
  retired: (count) => `Ausgemustert (${write.number(count)})`,
  save: 'Speichern',
  retire: 'Ausmustern, Messungen behalten',
  bringBack: 'Wieder in Gebrauch nehmen',
  warning: (warning) => {
    const body = warning.body.name;
    if (warning.about === 'memory') {
      const left = warning.left === 0 ? 'es ist kein Platz mehr frei' : write.count(warning.left, { one: 'ein Platz ist frei', other: '# Plätze sind frei' });
      return `${body} merkt sich ${write.count(warning.remembers, { one: '# Objektiv', other: '# Objektive' })}, ${left}. Löschen Sie dort eines, das Sie nicht mehr benutzen, bevor Sie ein weiteres einstellen.`;
    }
    const lenses = named(warning.lenses);
    return warning.surely
      ? `${body} kann ${lenses} nicht unterscheiden. Sie teilen sich einen gespeicherten Wert. Stellen Sie den des benutzten Objektivs ein.`
      : `${lenses} teilen sich an ${body} vielleicht einen gespeicherten Wert. Sehen Sie im Handbuch nach und tragen Sie es in der Ausrüstung ein.`;
  },
  fields: {
    name: 'Name',
    yourName: 'So, wie Sie es nennen.',
    serial: 'Serien\u00adnummer',
    model: 'Modell, wie in seinen Aufnahmen',
    sensor: { legend: 'Sensor, mm', width: 'Breite', height: 'Höhe' },
    scale: { legend: 'Korrektur\u00adbereich', from: 'Von', to: 'bis', step: 'Stufe' },
    remembers: { label: 'Wie viele Objektive es sich merkt', hint: 'Lassen Sie es leer, wenn Sie es nicht wissen. Es steht im Handbuch.' },
    focal: { legend: 'Brennweite, mm', hint: 'Lassen Sie die längste leer, wenn es kein Zoom ist.', from: 'kürzeste', to: 'längste' },
    widest: { legend: 'Größte Blende, f/', from: 'bei der kürzesten', to: 'bei der längsten' },
    get closest() {
      return byUnit({ m: 'Naheinstell\u00adgrenze,\u00a0m', ft: 'Naheinstell\u00adgrenze,\u00a0ft' });
    },
    factor: 'Faktor',
  },
  arrows: {
    label: 'Pfeile neben dem Fokuslicht',
    is: {
      absent: 'Keine Pfeile',
      'right-is-up': 'Pfeil rechts: höher, Richtung +',
      'right-is-down': 'Pfeil rechts: tiefer, Richtung \u2212',
    },
  },
  zoomStore: { label: 'Bei Zooms speichert es', is: { one: 'einen Wert', two: 'einen Wert je Ende' } },
  copies: {
    label: 'Zwei Exemplare eines Objektivs',
    is: { 'not known': 'unbekannt', 'told apart': 'unterscheidbar', 'share a value': 'ein Wert für beide' },
  },
  trigger: { label: 'Autofokus startet per', is: { 'half-press': 'Auslöser', 'rear button': 'Taste hinten' } },
  manualFocus: {
    label: 'Umschalten auf manuell',
    is: { 'not known': 'unbekannt', 'on the lens': 'am Objektiv', 'on the body': 'am Gehäuse', 'on both': 'an beiden' },
  },
  choices: 'Pfeile, Taste, Zooms, Exemplare',
  card: 'Karte für die Tasche, zum Drucken',
  happened: {
    open: 'Neue Firmware oder Wartung notieren',
    form: 'Was geschehen ist',
    what: 'Was geschehen ist',
    is: { firmware: 'Neue Firmware', service: 'Gewartet' },
    note: 'Notiz',
    save: 'Notiz speichern',
    saved: 'Gespeichert. Was vorher gemessen wurde, ist wieder fällig.',
  },
  photograph: {
    title: 'Angaben aus einer Aufnahme',
    choose: 'Eine Aufnahme',
    drop: 'Auswählen oder hier ablegen.',
    stays: 'Sie wird auf diesem Computer gelesen und nirgends hingesendet.',
    use: 'Markierte übernehmen',
    used: 'Die Angaben stehen in der Ausrüstung.',
    fault: {
      gone: 'Diese Datei ist nicht lesbar. Prüfen Sie, ob es sie noch gibt, und wählen Sie sie neu.',
      'no photograph': 'Diese Datei ist keine Aufnahme, die sich hier lesen lässt. Wählen Sie ein JPEG direkt aus der Kamera.',
      'no camera data': 'Diese Aufnahme enthält keine Kameradaten. Wählen Sie eine direkt aus der Kamera.',
      'camera data unread': 'Die Kameradaten dieser Aufnahme sind nicht lesbar. Wählen Sie eine andere.',
    },
    openSituation: 'Zugehörige Situation öffnen',
    read: ({ taken, focalLength, aperture, distance }, body, lens) =>
      [
        taken !== null && `Aufgenommen am ${write.day(taken)}.`,
        focalLength !== null && `Mit ${write.millimetres(focalLength)}.`,
        aperture !== null && `f/${write.number(aperture, 1)}.`,
        distance !== null && `Fokussiert auf ${write.distance(distance)}.`,
        body === null ? 'Das Gehäuse ist noch nicht in Ihrer Ausrüstung.' : `Gehäuse in Ihrer Ausrüstung: ${body}.`,
        lens === null ? 'Das Objektiv ist noch nicht in Ihrer Ausrüstung.' : `Objektiv in Ihrer Ausrüstung: ${lens}.`,
      ].filter((sentence) => sentence !== false),
    offer: (offer) => {
      switch (offer.field) {
        case 'model':
          return offer.to === 'body' ? `Modell des Gehäuses: ${offer.value}` : `Modell des Objektivs: ${offer.value}`;
        case 'serial':
          return offer.to === 'body' ? `Serien\u00adnummer des Gehäuses: ${offer.value}` : `Serien\u00adnummer des Objektivs: ${offer.value}`;
        case 'focal':
          return `Brennweite des Objektivs: ${range(offer.value)}\u00a0mm`;
        case 'widest':
          return `Größte Blende des Objektivs: f/${range(offer.value)}`;
        case 'focalLength':
          return `Brennweite: ${write.millimetres(offer.value)}`;
        case 'distance':
          return `Entfernung: ${write.distance(offer.value)}`;
      }
    },
    body: 'Gehäuse',
    lens: 'Objektiv',
  },
  fault: FIELD_FAULT,
  unsaved: (fault) => {
    switch (fault.is) {
      case 'changed elsewhere':
        return `${CHANGED[fault.list]} wurde in einem anderen Fenster geändert. Öffnen Sie den Eintrag neu und ändern Sie ihn dann.`;
      case 'gone':
        return `${CHANGED[fault.list]} ist nicht mehr da. Laden Sie die Liste neu.`;
      case 'situation lacks':
        return CHOOSE[fault.what];
    }
  },
};
