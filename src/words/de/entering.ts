// German: what to enter for a lens on a body.
import type { MemoryPlace } from '../../logbook/entering/advice.ts';
import type { Fit } from '../../logbook/entering/band.ts';
import type { ShownThere } from '../../logbook/entering/shown.ts';
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import type { EnteringWords } from '../enteringWords.ts';
import { correctionBetween, focusFell, marginOf } from './focusFell.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

const KEEPS = {
  one: 'Das Gehäuse speichert je Objektiv einen Wert.',
  two: 'Das Gehäuse speichert je Ende eines Zooms einen Wert.',
} as const;

const WHY: Readonly<Record<MemoryPlace['uncounted'][number]['why'], string>> = {
  'never measured': 'nie gemessen',
  'only a value is known': 'nur ein Wert ist bekannt',
  'past the limit': 'das Band reicht über die Grenze hinaus',
  'beyond the scale': 'das Band liegt außerhalb des Bereichs',
  'nothing held': 'kein Band gefunden',
};

const CAME: Readonly<Record<Measured['by'], string>> = {
  sweep: 'In einem Durchlauf gefunden',
  'by hand': 'Von Hand eingetragen',
  'from a table': 'Aus einer Tabelle',
  'from another computer': 'Von einem anderen Computer',
};

const CHECK = 'Prüfen Sie es dort mit Aufnahmen.';

const long = (focalLength: number): string => write.millimetres(millimetres(focalLength));
const where = ({ band }: Fit): string => place(band);
const missed = (fit: Fit): string =>
  `${where(fit)} (${write.count(fit.past, { one: '# Stufe über das Ende hinaus', other: '# Stufen über das Ende hinaus' }, 1)})`;

function lies(linear: Fit, logarithmic: Fit): readonly string[] {
  if (linear.inside && logarithmic.inside) return ['Beide liegen im dortigen Band.'];
  if (!linear.inside && !logarithmic.inside) return ['Keiner liegt im dortigen Band.', CHECK];
  return [linear.inside ? 'Nur der erste liegt im dortigen Band.' : 'Nur der zweite liegt im dortigen Band.', CHECK];
}

function bracketSaid({ subject, bracket }: ShownThere): readonly string[] {
  if (bracket === null) return [];
  const { centre, at } = bracket;
  const head = `${place(subject)}: Nach der Stufenserie vom ${write.day(at)} liegt die Mitte bei ${correctionBetween(centre)}.`;
  if (bracket.is === 'alone') return [head, ...(bracket.value === null ? ['Das liegt außerhalb des Bereichs.'] : [])];
  const { band, difference } = bracket;
  if (bracket.is === 'agree')
    return [
      head,
      `Das stimmt mit der Mitte des Bandes überein, ${write.signed(band, 1)}. Zusammen ergeben sie ${correctionBetween(bracket.joint)}, und das zählt hier.`,
    ];
  const apart = `${write.signed(difference.value, 1)} ± ${write.number(marginOf(difference), 1)} Stufen`;
  return [
    head,
    `Das weicht von der Mitte des Bandes, ${write.signed(band, 1)}, um ${apart} ab. Deshalb zählt nur das Band. Prüfen Sie den Aufbau, dann messen Sie beides noch einmal.`,
  ];
}

function checkSaid({ subject, check }: ShownThere): string {
  if (check === null) return '';
  const { correction, bias, found, at } = check;
  const which = `${place(subject)}: Die Prüfserie vom ${write.day(at)}`;
  return found === 'confirmed'
    ? `${which} hat ${writeSteps(correction)} bestätigt.`
    : `${which} hat mit ${writeSteps(correction)} einen Versatz gezeigt: Die Schärfe liegt ${focusFell(bias)}.`;
}

export const words: EnteringWords = {
  title: 'Zum Einstellen',
  gone: 'Dieses Gehäuse oder Objektiv ist nicht mehr in der Ausrüstung.',
  about: ({ body, lens }) => [`${pair({ lens: lens.name, body: body.name })}.`, KEEPS[body.zoomStore]],
  bare: 'Ohne Konverter',
  behind: (converter) => `Mit ${converter}`,
  bands: 'Wie es in jedem Band liegt',
  toPrint: 'Druckseite',
  entered: 'Ist eingestellt',
  enteredAt: (focalLength) => `Bei ${long(focalLength)} eingestellt`,
  weigh: {
    legend: 'Wie sie zählen',
    by: {
      'worst share': { label: 'Alle gleich', note: 'Der schlechteste Fall ist so gut wie möglich.' },
      use: { label: 'Nach Gebrauch', note: 'Was mehr benutzt wird, zählt mehr.' },
    },
    weightOf: (band, converter) => (converter ? `Gebrauch von ${place(band)}, mit Konverter` : `Gebrauch von ${place(band)}`),
    noUse: 'Geben Sie an, wie viel es benutzt wird, von 0 bis 100. Bis dahin zählt es als 1.',
  },
  unknown: 'Hier ist noch kein Band bekannt. Messen Sie es oder tragen Sie beide Enden eines Bandes von Hand ein.',
  missingEnd: (focalLength) =>
    `Dieses Gehäuse speichert für jedes Ende eines Zooms einen Wert. Messen Sie auch bei ${long(focalLength)}. Bis dahin gilt dieser eine Wert für alles.`,
  enter: 'Einstellen',
  wide: (focalLength) => `Weitwinkel, ${long(focalLength)}:`,
  tele: (focalLength) => `Tele, ${long(focalLength)}:`,
  serves: (outside, all, weighed) => {
    if (outside === 0) return write.count(all, { one: 'Dieser Wert liegt in dem einen gemessenen Band.', other: 'Dieser Wert liegt in allen # Bändern.' });
    return weighed
      ? `Nach der angegebenen Gewichtung liegt dieser Wert außerhalb von ${write.number(outside)} der ${write.number(all)} Bänder.`
      : `Kein Wert liegt in allen ${write.number(all)} Bändern. Dieser liegt außerhalb von ${write.number(outside)}.`;
  },
  table: { at: 'Gemessen bei', off: 'Dane\u00adben', share: 'Vom halben Band' },
  at: place,
  off: ({ error }) => write.signed(error, 1),
  share: ({ share, inside, past }) => (inside ? `${write.percent(share)}, im Band` : `${write.percent(share)}, um ${write.number(past, 1)} außerhalb`),
  middle: ({ band, linear, logarithmic }) => [
    `Bei ${place(band)}, zwischen den Enden, nähme das Gehäuse ${write.signed(linear.value, 1)}, wenn es nach der Brennweite geht, und ${write.signed(logarithmic.value, 1)}, wenn es nach ihrem Logarithmus geht.`,
    'Welches von beiden gilt, veröffentlichen die Hersteller nicht.',
    `Gemessen: ${write.signed(band.centre, 1)}.`,
    ...lies(linear, logarithmic),
  ],
  trade: {
    title: 'Wofür jeder Wert passt',
    option: ({ value, fits }) => [
      `${writeSteps(value)} passt für ${write.list(fits.filter(({ inside }) => inside).map(where))}.`,
      `Er verfehlt ${write.list(fits.filter(({ inside }) => !inside).map(missed))}.`,
    ],
  },
  shown: { title: 'Was Aufnahmen zeigten', bracket: bracketSaid, check: checkSaid },
  uncounted: (list) => `Nicht gezählt: ${write.list(list.map((one) => `${place(one)} (${WHY[one.why]})`))}.`,
  converter: (fNumber) => [
    'Das Gehäuse speichert diesen Wert getrennt von dem ohne Konverter.',
    ...(fNumber === null ? [] : [`Die Blende wird f/${write.number(fNumber, 1)}.`]),
  ],
  chart: {
    one: {
      'focal length': ['Balken: die Bänder, nach Brennweite.', 'Linie: der Wert.', 'Ein hohler Balken erreicht die Linie nicht.'],
      distance: ['Balken: die Bänder, nach Entfernung.', 'Linie: der Wert.', 'Ein hohler Balken erreicht die Linie nicht.'],
    },
    two: [
      'Balken: die Bänder, nach Brennweite.',
      'Linie: was das Gehäuse nähme, wenn es nach der Brennweite geht.',
      'Gestrichelt: wenn es nach ihrem Logarithmus geht.',
      'Ein hohler Balken erreicht die Linie nicht.',
    ],
    mark: { 'focal length': long, distance: (distance) => write.distance(millimetres(distance)) },
  },
  page: {
    title: ({ body, lens }) => pair({ lens: lens.name, body: body.name }),
    about: ({ body, lens }, printed) => [
      ...(body.serial === null ? [] : [`Gehäuse ${body.serial}.`]),
      ...(lens.serial === null ? [] : [`Objektiv ${lens.serial}.`]),
      `Gedruckt am ${write.day(printed)}.`,
      'Stellen Sie es ein, wie das Handbuch der Kamera es sagt, dann prüfen Sie es mit Aufnahmen.',
    ],
    restsOn: (weighed) => (weighed ? 'Worauf es beruht, nach Gebrauch gewichtet' : 'Worauf es beruht'),
    evidence: ({ band, measured: { at, by, holds, interval, within } }, use) => [
      `${place(band)}: Band von ${writeSteps(band.low)} bis ${writeSteps(band.high)}.`,
      by === 'sweep' && holds !== null ? `${write.count(holds, { one: '# Probe', other: '# Proben' })}, ${write.day(at)}.` : `${CAME[by]}, ${write.day(at)}.`,
      ...(interval ? [`Mitte mit ${write.percent(0.95)} Sicherheit zwischen ${write.signed(interval.from, 1)} und ${write.signed(interval.to, 1)}.`] : []),
      ...(within === null ? [] : [`Auf eine Stufe genau: zu ${write.chance(within)} sicher.`]),
      ...(use === null ? [] : [`Zählt ${write.number(use, 1)}\u2011fach.`]),
    ],
    lensGone: 'Dieses Objektiv ist nicht mehr in der Ausrüstung. Schließen Sie diese Seite und öffnen Sie sie vom Logbuch aus neu.',
    gone: 'Das ist nicht mehr in der Ausrüstung. Schließen Sie diese Seite und öffnen Sie sie vom Logbuch aus neu.',
  },
};
