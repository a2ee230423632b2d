// German: each step of the set-up walk as it is spoken, in one short sentence.
import { sayCorrection } from '../../hearing/languages/de/sayCorrection.ts';
import { FROM } from './lengths.ts';
import type { Each } from '../setUpWords.ts';
import { write } from './write.ts';

export const SPOKEN: Each = {
  practice: () => 'Zur Übung ist nichts aufzubauen, beobachten Sie die Lampe auf dem Bildschirm.',
  'old value': () => 'Notieren Sie die jetzt gespeicherte Korrektur.',
  tripod: () => 'Kamera auf ein festes Stativ, Fernauslöser anschließen.',
  converter: ({ factor }) => `Konverter ${write.number(factor, 2)}-fach ansetzen.`,
  zoom: ({ focalLength }) => `Zoom auf ${write.number(focalLength)} Millimeter.`,
  target: () => 'Tafel flach aufhängen, ihre Mitte auf Objektivhöhe.',
  print: () => 'Die gedruckte Skala messen.',
  distance: ({ distance: length, from, unit }) => `Tafel auf ${write.distance(length, unit)} ab ${FROM[from]}.`,
  light: () => 'Tafel gleichmäßig beleuchten, Belichtung ablesen.',
  square: ({ by }) =>
    ({
      mirror: 'Tafel mit dem Spiegel ausrichten.',
      sides: 'Tafel nach ihren vier Seiten ausrichten.',
      spot: 'Tafel mit dem Lichtpunkt ausrichten.',
    })[by],
  stabiliser: () => 'Bildstabilisator aus.',
  'centre point': () => 'Mittleres Messfeld, Einzelautofokus.',
  aperture: ({ aperture }) => `Größte Blende, ${write.number(aperture, 1)}.`,
  'focus button': () => 'Für die Proben Ihre Fokustaste halten.',
  temperature: () => 'Alles Raumtemperatur annehmen lassen.',
  'start value': ({ start }) => `Korrektur für dieses Objektiv ein, auf ${sayCorrection(start)}.`,
  'critical focus': ({ by }) => (by === 'live view' ? 'Im voll vergrößerten Livebild scharfstellen.' : 'Mit Aufnahmen die genaue Schärfe finden.'),
  magnification: () => 'Skala fotografieren, ihre Pixel zählen.',
  'hold focus': ({ at }) => (at === 'body' ? 'Am Gehäuse auf manuell, Hände vom Ring.' : 'Am Objektiv auf manuell, Hände vom Ring.'),
  viewfinder: ({ leaves }) => (leaves === 'live view' ? 'Livebild aus, Auge an den Sucher.' : 'Auge an den Sucher.'),
};
