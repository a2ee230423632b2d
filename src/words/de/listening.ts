// German: what listening by the browser's recogniser means, shown before the first yes and where the microphone is asked for.
export const LISTENING_MEANS =
  'Um Wörter zu verstehen, hört die Sprach\u00aderkennung des Browsers über das Mikrofon mit, solange ein Durchlauf läuft und sein Ergebnis zu sehen ist. ' +
  'Deren Hersteller lässt den Ton womöglich an einen seiner Server senden. Sweepbook selbst speichert und sendet keinen Ton. ' +
  'Tasten, Pedal und Maus können alles, was Wörter können.';
