// German: photographs of the printed target.
import type { EdgeFault } from '../../photographs/edge.ts';
import type { FindFault } from '../../photographs/findFault.ts';
import { focusErrorOf, type StepSize } from '../../photographs/focusError.ts';
import type { FocusUntold, FocusReading } from '../../photographs/focusReading.ts';
import type { Motion, MotionWay } from '../../photographs/motion.ts';
import type { EdgeReading } from '../../photographs/reading.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import type { MarkName } from '../../optics/print/marks.ts';
import { line } from '../line.ts';
import type { PhotographsWords } from '../photographsWords.ts';
import { BY_STEP, lengthAtTarget, sideOfTarget } from './focusFell.ts';
import { write } from './write.ts';

const CROPS = { one: ' und # kleiner Ausschnitt', other: ' und # kleine Ausschnitte' };

const MARK: Readonly<Record<MarkName, string>> = {
  'upper left': 'oben links',
  'upper right': 'oben rechts',
  'lower left': 'unten links',
  'lower right': 'unten rechts',
};

const EDGE_FAULT: Readonly<Record<EdgeFault['is'], string>> = {
  'edge outside': 'zu nah am Bildrand',
  'edge too short': 'zu kurz',
  'edge not slanted': 'nicht so schräg wie gedruckt',
  'no edge': 'keine Kante zu sehen',
  'edge not straight': 'nicht gerade',
  'edge clipped': 'zu hell oder zu dunkel',
  'two edges': 'etwas anderes steht daneben',
  'edge too blurred': 'zu unscharf',
  'edge too sharp': 'schärfer, als die Pixel zeigen können',
};

function notFound(fault: FindFault): string {
  switch (fault.is) {
    case 'no print':
      return 'Keine Tafel gefunden. Machen Sie ein Bild, das die ganze Tafel zeigt.';
    case 'half a print':
      return `Nur ein Teil der Tafel wurde gefunden: ${write.count(fault.missing.length, { one: 'Die Marke', other: 'Die Marken' })} ${write.list(fault.missing.map((name) => MARK[name]))} ${write.count(fault.missing.length, { one: 'fehlt', other: 'fehlen' })}. Nehmen Sie die ganze Tafel auf.`;
    case 'two prints':
      return 'Zwei Tafeln gefunden. Lassen Sie eine davon aus dem Bild.';
    case 'print too small':
      return 'Die Tafel ist in diesem Bild zu klein. Gehen Sie näher heran oder drucken Sie eine größere.';
    case 'print too tilted':
      return `Die Tafel ist um ${write.degrees(fault.tilt, 0)} weggedreht. Stellen Sie sie parallel zum Sensor.`;
    case 'older print':
      return 'Diese Tafel stammt aus der Zeit vor den Marken, an denen Tafeln gefunden werden, und lässt sich nicht messen. Drucken Sie eine neue.';
    case 'marks unread':
      return 'Die Marken der Tafel sind nicht lesbar. Beleuchten Sie sie gleichmäßig, geben Sie die Sicht auf sie frei, stellen Sie in ihrer Nähe scharf und schalten Sie das Schärfen in der Kamera aus.';
    case 'picture blown':
      return 'Dieses Bild ist ausgefressen. Belichten Sie knapper.';
    case 'picture black':
      return 'Dieses Bild ist schwarz. Belichten Sie reichlicher.';
  }
}

const moved = (way: MotionWay): string =>
  `Dieses Bild ist ${way === 'sideways' ? 'seitlich stärker verwischt als senkrecht' : 'senkrecht stärker verwischt als seitlich'}: Die Kamera hat sich bewegt. Benutzen Sie ein Stativ und einen Fernauslöser oder den Selbstauslöser.`;

const noRamp = (why: FindFault): string =>
  why.is === 'half a print'
    ? 'Nur ein Teil der Rampe wurde gefunden, die Lage der Schärfe ist deshalb nicht bekannt. Nehmen Sie die ganze Rampe auf.'
    : 'Keine Rampe gefunden, die Lage der Schärfe ist deshalb nicht bekannt. Stellen Sie die Rampe unter die Tafel und nehmen Sie sie ganz auf.';

const LACKING = { focalLength: 'die Brennweite', aperture: 'die Blende', sensor: 'die Sensorgröße' };

function noFocus(fault: FocusUntold): string {
  switch (fault.is) {
    case 'no target':
      return 'Ohne die Tafel ist die Lage der Schärfe nicht bekannt.';
    case 'no ramp':
      return noRamp(fault.why);
    case 'camera unknown':
      return `Um die Lage der Schärfe zu bestimmen, ${fault.lacking.length === 1 ? 'fehlt' : 'fehlen'} ${write.list(fault.lacking.map((each) => LACKING[each]))}. Vervoll\u00adständigen Sie Gehäuse und Objektiv in der Ausrüstung und holen Sie das Bild so herein, wie die Kamera es geschrieben hat.`;
    case 'not the whole picture':
      return 'Dieses Bild hat nicht die Form des Sensors, es ist also beschnitten oder ein Bildschirmfoto. Holen Sie das ganze Bild so herein, wie die Kamera es aufgenommen hat.';
    case 'cropped':
      return 'Dieses Bild wurde nachträglich beschnitten, die Lage der Schärfe ist deshalb nicht bekannt. Holen Sie das Bild so herein, wie die Kamera es aufgenommen hat.';
    case 'too few pixels':
      return 'Dieses Bild ist zu klein, um die Lage der Schärfe zu zeigen. Holen Sie das Bild so herein, wie die Kamera es aufgenommen hat.';
    case 'ramp unread':
      switch (fault.why.is) {
        case 'ramp hidden':
          return 'Von der Rampe ist zu wenig lesbar, um die Lage der Schärfe zu bestimmen. Geben Sie die Sicht auf sie frei und beleuchten Sie sie gleichmäßig.';
        case 'ramp blown out':
          return 'Die Rampe ist ausgefressen, die Lage der Schärfe ist deshalb nicht bekannt. Belichten Sie knapper.';
        case 'focus off the ramp':
          return `Die Schärfe lag jenseits des ${fault.why.lies === 'behind' ? 'fernen' : 'nahen'} Endes der Rampe. Stellen Sie näher an der Tafel scharf oder drucken Sie eine längere Rampe.`;
        case 'ramp too flat':
          return 'Die ganze Rampe ist etwa gleich scharf, die Lage der Schärfe ist deshalb nicht bekannt. Öffnen Sie die Blende oder drucken Sie eine längere Rampe.';
        case 'camera moved':
          return moved(fault.why.blurs === 'upright' ? 'sideways' : 'up and down');
      }
  }
}

const reached = ({ low, high }: FocusReading['ramp']['interval']): string =>
  low < 0 && high > 0
    ? `${lengthAtTarget(low)} davor und ${lengthAtTarget(high)} dahinter`
    : `${lengthAtTarget(Math.min(Math.abs(low), Math.abs(high)))} und ${lengthAtTarget(Math.max(Math.abs(low), Math.abs(high)))} ${low < 0 ? 'davor' : 'dahinter'}`;

const HEADLINE: Readonly<Record<FocusReading['is'], string>> = {
  sharp: 'Scharf genug.',
  'not sharp': 'Nicht scharf genug.',
  'not sure': 'Zu knapp, um zu sagen, ob es scharf genug ist.',
};

/** What is in focus is not sharp where the camera moved, which is told beside it. */
const focusSentences = ({ is, ramp }: FocusReading, motion: Motion = { is: 'alike' }): readonly string[] => [
  is === 'sharp' && motion.is === 'moved' ? 'Fokus stimmt.' : HEADLINE[is],
  ramp.lies === 'on the target'
    ? 'Die Schärfe lag auf der Tafel, soweit es sich sagen lässt.'
    : `Die Schärfe lag ${lengthAtTarget(ramp.error)} ${sideOfTarget(ramp.error)}.`,
  `Mit ${write.percent(0.95)} Sicherheit zwischen ${reached(ramp.interval)}.`,
];

function focusFigures(focus: FocusReading, measured: WithInterval | null): readonly string[] {
  const { ramp, depth, share } = focus;
  return [
    `Fokusfehler ${write.signed(ramp.error, 1)}\u00a0mm, ${write.percent(0.95)} zwischen ${write.signed(ramp.interval.low, 1)} und ${write.signed(ramp.interval.high, 1)}\u00a0mm; minus ist davor.`,
    `Schärfentiefe: ${lengthAtTarget(depth.front)} davor, ${depth.behind === 'infinite' ? 'unbegrenzt' : lengthAtTarget(depth.behind)} dahinter. Der Fokusfehler beträgt ${write.percent(share)} der Schärfentiefe auf seiner Seite.`,
    `Geringste Unschärfe: ${write.number(ramp.leastBlur, 2)} Pixel. Sie wächst ${write.number(ramp.growth, 2)}\u2011mal so schnell, wie von diesem Objektiv zu erwarten.`,
    ...undone(focus, measured),
  ];
}

/** How many steps undo a focus error that is told, by what a bracket measured a step to be worth, or else by an estimate. */
function undone({ ramp, depth, step }: FocusReading, measured: WithInterval | null): readonly string[] {
  if (ramp.lies === 'on the target') return [];
  const size: StepSize = measured === null ? { from: 'estimate', step } : { from: 'bracket', step: measured };
  const { toAdd } = focusErrorOf({ value: ramp.error, ...ramp.interval }, depth, size);
  return toAdd === null ? [] : [`Etwa ${write.signed(toAdd.value, 1)} Stufen Korrektur würden ihn aufheben, ${BY_STEP[size.from]}.`];
}

const AT: Readonly<Record<EdgeReading['edge']['at'], string>> = { middle: 'Mitte', corner: 'Ecke' };
const RUNS: Readonly<Record<EdgeReading['edge']['runs'], string>> = { upright: 'senkrechte Kante', level: 'waagerechte Kante' };
const edgeName = ({ edge }: EdgeReading): string => `${AT[edge.at]}, ${RUNS[edge.runs]}`;

export const words: PhotographsWords = {
  title: 'Mit Aufnahmen prüfen',
  choose: 'Bilder',
  drop: 'Auswählen, hier ablegen oder einfügen.',
  stays: 'Sie werden auf diesem Computer gelesen, nirgends hingesendet und nicht gespeichert.',
  practise: 'Mit Übungsbildern ausprobieren',
  printed: {
    label: 'Gedruckte Skala misst, mm',
    hint: 'Gezeichnet als 100. Misst sie etwas anderes, geben Sie es an, bevor Sie Bilder hereinholen.',
    fault: 'Geben Sie die Länge der gedruckten Skala in Millimetern an, von 50 bis 200, zum Beispiel 94.',
  },
  pictures: 'Hereingeholte Bilder',
  more: (count) => `Weitere von ${write.number(count)} zeigen`,
  progress: (read, all) => `${write.number(read)} von ${write.count(all, { one: '# Bild', other: '# Bildern' })} gelesen.`,
  stage: {
    waiting: 'Wartet',
    opening: 'Öffnet die Datei',
    decoding: 'Entpackt das Bild',
    measuring: 'Misst',
    'let go': 'Nicht gelesen. Holen Sie es noch einmal herein.',
  },
  stop: 'Lesen beenden',
  clear: 'Alle Bilder entfernen',
  fault: {
    'file unread': 'Diese Datei ist nicht lesbar. Prüfen Sie, ob es sie noch gibt, und holen Sie sie noch einmal herein.',
    'no picture':
      'Der Browser findet in dieser Datei kein Bild. Holen Sie ein JPEG, PNG, WebP oder AVIF in der Größe herein, in der die Kamera es aufgenommen hat.',
    'no picture inside': 'Der Browser findet in dieser Rohdatei kein Bild. Holen Sie ein JPEG derselben Aufnahme herein.',
    'only a small picture inside': 'Diese Rohdatei enthält nur eine kleine Vorschau. Holen Sie ein JPEG derselben Aufnahme in voller Größe herein.',
    'too large': 'Dieses Bild ist zu groß, um hier gelesen zu werden. Holen Sie eines mit höchstens 110 Megapixeln herein.',
    'too small': 'Dieses Bild ist zu klein, um gemessen zu werden. Holen Sie das Bild so herein, wie die Kamera es aufgenommen hat.',
    stopped: 'Das Lesen dieses Bildes ist misslungen. Holen Sie es noch einmal herein oder nehmen Sie ein anderes.',
  },
  found: (ramp) => (ramp ? 'Das Bild, Tafel und Rampe umrandet.' : 'Das Bild, die Tafel umrandet.'),
  target: ({ tilt, resized }) => {
    const stands =
      tilt < 3
        ? 'Die Tafel ist gefunden und steht parallel zum Sensor.'
        : `Die Tafel ist gefunden, aber um etwa ${write.degrees(tilt, 0)} weggedreht. Stellen Sie sie parallel zum Sensor.`;
    return resized === null
      ? stands
      : `${stands} Die Größe dieser Datei wurde auf ${write.percent(resized)} der Aufnahme geändert und damit ihre Schärfe. Holen Sie das Bild so herein, wie die Kamera es aufgenommen hat.`;
  },
  notFound,
  focus: focusSentences,
  noFocus,
  moved,
  sharpened: 'Dieses Bild wurde geschärft, seine MTF50 schmeichelt dem Objektiv. Schalten Sie das Schärfen in der Kamera aus.',
  unslanted: (roll) =>
    `Die Tafel ist um ${write.degrees(Math.abs(roll), 0)} ${roll < 0 ? 'gegen den' : 'im'} Uhrzeigersinn verdreht, ihre Kanten verlaufen deshalb entlang der Pixel und lassen sich nicht messen. Richten Sie sie gerade aus.`,
  unstated:
    'Dieser Datei fehlen die Kameradaten, ein Beschnitt würde nicht bemerkt. Wurde sie beschnitten, holen Sie das Bild so herein, wie die Kamera es aufgenommen hat.',
  crops: 'Kanten bei 100\u00a0%',
  crop: edgeName,
  chart: {
    title: 'Schärfe entlang der Rampe',
    said: (focus) => focusSentences(focus).join(' '),
    target: 'Tafel',
    depth: (depth) => write.unit(depth, 'millimeter'),
  },
  figures: {
    title: 'Zahlen',
    edge: (reading) =>
      reading.measure.ok
        ? `${edgeName(reading)}: MTF50 ${write.number(reading.measure.value.mtf50, 3)} Linienpaare je Pixel, ${write.percent(0.95)} zwischen ${write.number(reading.measure.value.interval.low, 3)} und ${write.number(reading.measure.value.interval.high, 3)}.`
        : `${edgeName(reading)}: ${EDGE_FAULT[reading.measure.fault.is]}.`,
    target: ({ scale, roll, tilt }) =>
      `${write.number(scale, 2)} Pixel je Millimeter, um ${write.degrees(Math.round(roll * 10) / 10, 1)} verdreht, um ${write.degrees(tilt, 1)} weggedreht.`,
    focus: focusFigures,
  },
  keep: {
    label: 'Im Logbuch behalten',
    done: 'Steht im Logbuch',
    what: (crops) => `Es bleiben die Zahlen${crops === 0 ? '' : write.count(crops, CROPS)}, nicht die Bilder.`,
    kept: 'Es steht im Verlauf dieser Situation.',
    erase: 'Wieder löschen',
    noSituation: 'Um das zu behalten, öffnen Sie das Logbuch, wählen Sie die Situation und holen Sie die Bilder von dort aus herein.',
    noValue: 'Um das zu behalten, geben Sie oben den zu prüfenden Wert an.',
    another: 'Dieses Bild passt nicht zu dieser Situation: Gehäuse, Objektiv oder Brennweite sind andere. Hier lässt es sich nicht behalten.',
  },
  camera: ({ width, height }, camera) =>
    line([
      `${write.number(width)} × ${write.number(height)} Pixel`,
      camera !== null && camera.focalLength !== null && write.millimetres(camera.focalLength),
      camera !== null && camera.aperture !== null && `f/${write.number(camera.aperture, 1)}`,
      camera !== null && camera.distance !== null && write.distance(camera.distance),
      camera !== null && camera.taken !== null && write.dayAndTime(camera.taken),
    ]),
};
