// German: each step of the set-up walk as it is shown, in a few short sentences.
import { writeSteps } from '../../sweep/scale.ts';
import { FROM } from './lengths.ts';
import type { Each } from '../setUpWords.ts';
import { write } from './write.ts';

export const SHOWN: Each = {
  practice: () => 'Mit der Übungskamera gibt es nichts aufzubauen. Beobachten Sie die Lampe auf dem Bildschirm wie das Fokuslicht.',
  'old value': () => 'Geben Sie die Korrektur an, die die Kamera für dieses Gehäuse und Objektiv gespeichert hat. So können Sie immer dorthin zurück.',
  tripod: () =>
    'Setzen Sie die Kamera auf ein festes Stativ und ziehen Sie jede Klemme an. Benutzen Sie für Aufnahmen einen Fernauslöser, auch für die Proben, wenn er sich halb drücken lässt.',
  converter: ({ factor }) => `Setzen Sie den ${write.number(factor, 2)}\u00d7-Konverter zwischen Gehäuse und Objektiv. Der Wert gilt nur mit diesem Konverter.`,
  zoom: ({ focalLength }) => `Stellen Sie den Zoomring auf ${write.millimetres(focalLength)} und lassen Sie ihn dort.`,
  target: () => 'Befestigen Sie die Tafel flach auf einem festen, senkrechten Brett oder an der Wand. Ihre Mittelmarke liegt auf Höhe der Objektivmitte.',
  print: () => 'Messen Sie die gedruckte Skala zwischen den Außenkanten ihrer Endmarken und geben Sie die Länge an.',
  distance: ({ distance: length, from, unit }) =>
    `Stellen Sie die Tafel ${write.distance(length, unit)} ab ${from === 'film plane' ? 'der Sensor\u00admarke am Gehäuse' : FROM[from]} auf. Geben Sie die gemessene Entfernung an.`,
  light: () =>
    'Beleuchten Sie die Tafel von beiden Seiten gleichmäßig und ohne Reflexe. Geben Sie ISO, Blende und Verschlusszeit an, die die Kamera dafür zeigt.',
  square: ({ by }) =>
    ({
      mirror:
        'Legen Sie einen kleinen Spiegel flach auf die Mitte der Tafel. Drehen Sie die Tafel, bis sich das Objektiv in der Mitte des Livebilds spiegelt. Geben Sie an, wie weit daneben es bleibt.',
      sides: 'Messen Sie im Livebild die vier Seiten zwischen den Eckmarken und geben Sie sie an. Drehen Sie die Tafel, wie die Seitenleiste es sagt.',
      spot: 'Niemand darf am Sucher sein. Richten Sie den Lichtpunkt vom Objektiv aus auf den Spiegel. Drehen Sie die Tafel, bis er zu seiner Quelle zurückkommt. Geben Sie an, wie weit daneben er bleibt.',
    })[by],
  stabiliser: ({ at }) =>
    ({
      both: 'Schalten Sie den Bildstabilisator im Objektiv und im Gehäuse aus. Auf dem Stativ bewegt er das Bild.',
      lens: 'Schalten Sie den Bildstabilisator am Objektiv aus. Auf dem Stativ bewegt er das Bild.',
      body: 'Schalten Sie den Bildstabilisator im Gehäuse aus. Auf dem Stativ bewegt er das Bild.',
    })[at],
  'centre point': () => 'Wählen Sie nur das mittlere AF-Messfeld und den Einzel\u00adautofokus. Legen Sie das Messfeld auf die Mittelmarke.',
  aperture: ({ aperture }) => `Wählen Sie Zeitautomatik oder manuelle Belichtung und die größte Blende, f/${write.number(aperture, 1)}.`,
  'focus button': () =>
    'Dieses Gehäuse fokussiert mit einer Taste auf der Rückseite. Halten Sie diese Taste, nicht den Auslöser, wann immer vom Drücken die Rede ist.',
  temperature: () =>
    'Lassen Sie Kamera und Objektiv mindestens eine halbe Stunde im Raum, bis sie seine Temperatur haben. Geben Sie sie an, wenn Sie sie kennen.',
  'start value': ({ start }) => `Schalten Sie die Korrektur nur für dieses Objektiv ein und stellen Sie sie auf\u00a0${writeSteps(start)}.`,
  'critical focus': ({ by }) =>
    by === 'live view'
      ? 'Drehen Sie im voll vergrößerten Livebild bei größter Blende den Ring über die schärfste Stelle hinaus und zu ihr zurück. Dreimal dieselbe Stelle ist genaue Schärfe.'
      : 'Fotografieren Sie die Tafel mehrmals, den Ring jedes Mal eine Spur weitergedreht. Vergleichen Sie in voller Größe und gehen Sie zur schärfsten Stelle zurück. Zweimal dieselbe Stelle ist genaue Schärfe.',
  magnification: () =>
    'Fotografieren Sie die Tafel. Zählen Sie in voller Größe die Pixel, über die sich ihre Skala erstreckt, und geben Sie sie an. Daraus folgt der wahre Abbildungs\u00admaßstab.',
  'hold focus': ({ at }) =>
    at === 'body'
      ? 'Stellen Sie den Fokus am Gehäuse auf manuell, damit Sie das Objektiv nicht berühren. Lassen Sie den Ring von jetzt an in Ruhe.'
      : 'Stellen Sie den Schalter des Objektivs auf manuell, ohne den Ring zu drehen. Sichern Sie den Ring mit rückstandsfrei ablösbarem Klebeband und prüfen Sie die Schärfe noch einmal.',
  viewfinder: ({ leaves }) =>
    leaves === 'live view'
      ? 'Schalten Sie das Livebild aus und sehen Sie durch den Sucher. Stellen Sie das Okular nach, wenn Sie das Fokuslicht nicht klar sehen.'
      : 'Sehen Sie durch den Sucher. Stellen Sie das Okular nach, wenn Sie das Fokuslicht nicht klar sehen.',
};
