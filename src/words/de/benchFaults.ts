// German: what does not fit at the bench, and what to do about it.
import type { BenchFault, PlainFault } from '../../optics/fault.ts';
import { byUnit } from '../countryInUse.ts';
import { FROM } from './lengths.ts';
import { write } from './write.ts';

const PLAIN: Readonly<Record<PlainFault, string>> = {
  'no aperture': 'Geben Sie die Blende so an, wie Objektiv oder Kamera sie zeigen, zum Beispiel 2,8. Sie liegt zwischen 0,7 und 128.',
  'no factor': 'Geben Sie den auf dem Konverter gravierten Faktor an, von 1 bis 3, zum Beispiel 1,4.',
  'no focal length': 'Geben Sie die Brennweite in Millimetern an, von 4 bis 2000.',
  'focal length unread': 'Geben Sie die Brennweite in Millimetern an, zum Beispiel 85.',
  get 'no distance'() {
    return byUnit({ m: 'Geben Sie die Entfernung in Metern an, von 0,05 bis 500.', ft: 'Geben Sie die Entfernung in Fuß an, von 0,17 bis 1640.' });
  },
  'no measured distance': 'Geben Sie die gemessene Entfernung an.',
  'no reach': 'Geben Sie in Millimetern an, wie weit die Vorderkante des Objektivs von der Sensor\u00admarke entfernt ist, von 1 bis 1000.',
  'no magnification': 'Geben Sie den Abbildungs\u00admaßstab als Größe auf dem Sensor durch Größe der Tafel an, von 0,0002 bis 10. Lebensgröße ist 1.',
  'no length on the target': 'Geben Sie die Länge auf der Tafel in Millimetern an, zum Beispiel die 100\u00a0mm ihrer Skala.',
  'no pixels': 'Zählen Sie in der Aufnahme in voller Größe die Pixel, über die sich die Länge erstreckt. Es müssen mindestens 10 sein.',
  'no pixels spanned': 'Geben Sie an, über wie viele Pixel sich die Skala in einer Aufnahme in voller Größe erstreckt.',
  'no pixel pitch': 'Geben Sie den Pixelabstand in Mikrometern an, von 0,5 bis 50.',
  'no width of a photograph': 'Geben Sie die Breite einer Aufnahme in voller Größe in Pixeln an, zum Beispiel 6000.',
  'no sensor width': 'Geben Sie die Breite des Sensors in Millimetern an, von 4 bis 100.',
  'no sensor height': 'Geben Sie die Höhe des Sensors in Millimetern an, von 3 bis 100.',
  'no circle of confusion': 'Geben Sie den Zerstreuungskreis in Millimetern an, von 0,001 bis 0,2. Üblich ist 0,03.',
  'no area': 'Geben Sie die Größe des AF-Messfelds auf dem Sensor in Millimetern an, von 0,2 bis 30. Üblich ist 2,5.',
  'no step worth': 'Geben Sie an, welcher Anteil der halben Fokustiefe eine Stufe ist, von 0,01 bis 1. Üblich ist 0,125.',
  'no exposure': 'Geben Sie ISO, Blende und Verschlusszeit an, die die Kamera für die Tafel zeigt.',
  'no iso speed': 'Geben Sie die ISO-Empfindlichkeit an, wie die Kamera sie zeigt, zum Beispiel 400.',
  'no shutter': 'Geben Sie die Verschlusszeit als 1/125 für Bruchteile oder als 2" für ganze Sekunden an.',
  'no light value': 'Lesen Sie ISO, Blende und Verschlusszeit noch einmal an der Kamera ab. So hell oder dunkel ist kein Raum.',
  'plenty below fine': 'Setzen Sie „reichlich“ höher als „genug“.',
  'no angle': 'Geben Sie den Winkel in Grad an, von \u221290 bis 90.',
  'no reflection': 'Geben Sie an, wie viele Pixel die Spiegelung in einer Aufnahme in voller Größe neben der Mitte liegt.',
  'no offset on the sensor': 'Geben Sie die Abweichung auf dem Sensor in Millimetern an.',
  'offset beyond the picture': 'Diese Abweichung ist größer als jedes Bild. Messen Sie noch einmal ab der Bildmitte.',
  'no spot': 'Geben Sie in Millimetern an, wie weit neben seiner Quelle der Lichtpunkt ankommt, oder 0, wenn er sie trifft.',
  'no sides': 'Geben Sie die Längen aller vier Seiten im Livebild an, jede größer als null.',
  'no rectangle': 'Geben Sie Breite und Höhe des Rechtecks in Millimetern an.',
  'rectangle of nothing': 'Geben Sie Breite und Höhe des Rechtecks in Millimetern an, beide größer als null.',
  'tilt without a rig': 'Geben Sie am Messplatz die größte Blende an und was sonst markiert ist. Daraus folgt die Neigung.',
  'target too large': 'Die Tafel würde größer als eine Wand. Stellen Sie sie näher oder geben Sie ein kleineres AF-Messfeld an.',
  'no drawn length': 'Die gezeichnete Länge der Skala fehlt.',
  'no printed length': 'Geben Sie die Länge der gedruckten Skala in Millimetern an, zum Beispiel 100.',
  'no ramp line': 'Geben Sie die Zahl neben der schärfsten Linie an, mit ihrem Vorzeichen.',
  'no ramp length': 'Geben Sie die Länge der Rampe in Millimetern an.',
  'no set-back': 'Geben Sie in Millimetern an, wie weit das obere Ende der Rampe hinter dem unteren steht.',
  'set-back too large': 'Geben Sie an, wie weit das obere Ende der Rampe hinter dem unteren steht. Es ist mehr als 0 und weniger als die Länge der Rampe.',
  'lean too steep or flat': 'Neigen Sie die Rampe um 10° bis 80°. Gezeichnet ist sie für 45°.',
  'no share': 'Geben Sie den Anteil der Schärfentiefe vor dem Motiv an, von 0 bis 100\u00a0%.',
  'depth without end': 'Die Schärfentiefe reicht hier bis unendlich, es gibt also keinen Anteil davor. Öffnen Sie die Blende oder gehen Sie näher heran.',
  'share beyond the range': 'Der Korrektur\u00adbereich endet, bevor dieser Anteil erreicht ist. Wählen Sie einen Anteil näher an der Mitte.',
  'share without a rig': 'Sie wollten einen Anteil der Schärfentiefe vor dem Motiv. Geben Sie am Messplatz die größte Blende an, um den Wert dafür zu sehen.',
  'no stored correction': 'Geben Sie die jetzt gespeicherte Korrektur an, zum Beispiel \u22123.',
  'no such correction': 'Geben Sie die Korrektur als ganze Zahl an, zum Beispiel \u22123.',
  'no temperature': 'Geben Sie die Temperatur in Grad Celsius an, von \u221250 bis 60.',
  'does not fit': 'Das passt nicht. Prüfen Sie Ihre Angabe.',
};

export function benchFault(fault: BenchFault): string {
  switch (fault.is) {
    case 'distance unread':
      return fault.unit === 'm' ? 'Geben Sie die Entfernung in Metern an, zum Beispiel 1,75.' : 'Geben Sie die Entfernung in Fuß an, zum Beispiel 5,74.';
    case 'distance out of range':
      return fault.unit === 'm' ? 'Geben Sie die Entfernung in Metern an, von 0,05 bis 500.' : 'Geben Sie die Entfernung in Fuß an, von 0,17 bis 1640.';
    case 'two lengths':
      return `„${fault.text}“ kann zwei Längen bedeuten. Schreiben Sie ${write.choice([write.typedLength(fault.one), write.typedLength(fault.other)])}.`;
    case 'two numbers':
      return `„${fault.text}“ kann zwei Zahlen bedeuten. Schreiben Sie ${write.choice([write.typed(fault.one), write.typed(fault.other)])}.`;
    case 'focal length in another unit':
      return `Geben Sie die Brennweite in Millimetern an. ${write.typedLength(fault.typed)} sind ${write.number(fault.meant, 1)}.`;
    case 'focal length in metres':
      return `${write.number(fault.typed, 3)} sieht nach Metern aus. Geben Sie die Brennweite in Millimetern an, hier ${write.number(fault.meant)}.`;
    case 'nearer than its closest focus':
      return `${write.distance(fault.wanted, fault.unit)} ist näher, als dieses Objektiv scharfstellen kann. Stellen Sie die Tafel mindestens ${write.distance(fault.closest, fault.unit)} entfernt auf, gemessen ab der Sensor\u00admarke.`;
    case 'no focus so near':
      return `Ein einfaches Objektiv mit ${write.number(fault.focalLength)}\u00a0mm kann ${write.distance(fault.distance, 'm')} ab ${FROM[fault.from]} nicht scharfstellen. Messen Sie die Entfernung noch einmal oder messen Sie den Abbildungs\u00admaßstab an der Skala der Tafel.`;
    case 'tilt too large':
      return `Das wäre eine Neigung von mehr als ${write.number(fault.most)}°. Messen Sie die Seiten noch einmal und prüfen Sie Größe und Entfernung der Tafel.`;
    case 'print misread':
      return `Messen Sie die Skala noch einmal, in Millimetern, zwischen den Außenkanten ihrer Endmarken. Es sollten etwa ${write.number(fault.drawn)} sein.`;
    default:
      return PLAIN[fault.is];
  }
}
