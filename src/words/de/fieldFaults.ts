// German: what does not fit a field of the kit, in a form or in a file.
import type { FieldFault } from '../../kit/fault.ts';
import { byUnit } from '../countryInUse.ts';

export const FIELD_FAULT: Readonly<Record<FieldFault, string>> = {
  'no name': 'Geben Sie einen Namen an, an dem Sie es wiedererkennen.',
  'name too long': 'Der Name hat höchstens 60 Zeichen.',
  'engraving empty': 'Lassen Sie es leer oder schreiben Sie es von Kamera oder Objektiv ab.',
  'engraving too long': 'Höchstens 60 Zeichen.',
  'note too long': 'Höchstens 2000 Zeichen.',
  'no focal length': 'Geben Sie die Brennweite in Millimetern an, von 4 bis 2000.',
  get 'no distance'() {
    return byUnit({ m: 'Geben Sie die Entfernung in Metern an, von 0,05 bis 500.', ft: 'Geben Sie die Entfernung in Fuß an, von 0,17 bis 1640.' });
  },
  'no sensor size': 'Geben Sie Breite und Höhe des Sensors in Millimetern an.',
  'sensor too small': 'Ein Sensor ist mindestens 4\u00a0mm breit und hoch.',
  'sensor too large': 'Ein Sensor ist höchstens 70\u00a0mm breit und hoch.',
  'remembers no number': 'Geben Sie als ganze Zahl an, wie viele Objektive es sich merkt.',
  'remembers too few': 'Mindestens 1 Objektiv.',
  'remembers too many': 'Höchstens 1000 Objektive.',
  'no aperture': 'Geben Sie die Blende als Blendenzahl an, zum Beispiel 1,8.',
  'aperture too wide': 'Die Blendenzahl ist mindestens 0,5.',
  'aperture too narrow': 'Die Blendenzahl der größten Blende ist höchstens 64.',
  'focal lengths turned round': 'Geben Sie zuerst die kürzere Brennweite an.',
  'no factor': 'Geben Sie den Faktor an, zum Beispiel 1,4.',
  'factor too small': 'Der Faktor ist mindestens 0,5.',
  'factor too large': 'Der Faktor ist höchstens 4.',
  'no lowest correction': 'Geben Sie die kleinste Korrektur als ganze Zahl an, zum Beispiel \u221220.',
  'no highest correction': 'Geben Sie die größte Korrektur als ganze Zahl an, zum Beispiel 20.',
  'no step': 'Geben Sie als ganze Zahl ab 1 an, um wie viel ein Klick die Korrektur ändert.',
  'scale too short': 'Der Bereich braucht mindestens drei Korrekturen.',
  'step does not divide': 'Die Stufe muss im Bereich aufgehen.',
  'arrows not chosen': 'Wählen Sie, was dieses Gehäuse neben dem Fokuslicht zeigt.',
  'does not fit': 'Das passt nicht. Prüfen Sie Ihre Angabe.',
};
