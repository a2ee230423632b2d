// German: what is understood beside the taught words. "Weiter" is the next thing in every phase, and stands for what that is.
import type { Word } from '../../../sweep/inputs.ts';

/** What says that it is as it was. */
const STILL = ['noch', 'immer noch', 'noch immer'];

export const ALSO: Record<Word, readonly string[]> = {
  solid: ['steht ruhig', 'leuchtet ruhig', 'leuchtet stabil', 'sofort da'],
  delayed: ['zögern', 'gezögert', 'verzögert', 'verspätet', 'zu spät', 'kam spät', 'kam verspätet', 'kam verzögert', 'mit verzögerung'],
  flicker: ['flackern', 'geflackert', 'flimmert'],
  nothing: ['gar nichts', 'kein licht', 'bleibt dunkel', 'blieb dunkel'],
  left: ['linker pfeil', 'pfeil links', 'nach links'],
  right: ['rechter pfeil', 'pfeil rechts', 'nach rechts'],
  balanced: ['beide gleich', 'ausgeglichen', 'ausgewogen', 'in der mitte'],
  lopsided: ['schief', 'beide ungleich', 'ungleichmäßig', 'einseitig'],
  holding: ['halb gedrückt', 'ich halte', 'halte gedrückt', 'gedrückt halten', 'ich drücke'],
  undo: ['rückgängig machen', 'mach das rückgängig', 'zurücknehmen', 'nimm das zurück', 'widerrufen'],
  repeat: ['nochmal', 'noch mal', 'wiederholen', 'wiederhole', 'wiederhole das', 'sag das noch einmal', 'sag das nochmal'],
  pause: ['pausieren', 'pause machen', 'mach pause', 'eine pause'],
  resume: ['weiter', 'weitermachen', 'mach weiter', 'weiter gehts', 'es geht weiter', 'fortgesetzt'],
  skip: ['überspringen', 'überspringe das', 'das auslassen', 'auslassen das', 'ausgelassen', 'weglassen'],
  accept: ['übernehmen', 'angenommen', 'akzeptieren', 'akzeptiert', 'den wert annehmen', 'den wert übernehmen'],
  'go on': ['weitermessen', 'weitersuchen', 'weitermachen', 'mach weiter'],
  set: [],
  same: [
    ...STILL.flatMap((still) => [`${still} dasselbe`, `${still} das gleiche`, `${still} unverändert`]),
    'das gleiche',
    'unverändert',
    'immer noch gleich',
    'gleich geblieben',
    'wie vorher',
    'wie zuvor',
    'nicht verschoben',
  ],
  shifted: ['hat sich verschoben', 'verstellt', 'verrutscht'],
  finish: ['schluss machen', 'jetzt beenden', 'hier beenden', 'messung beenden', 'beendet'],
  help: ['hilf mir', 'bitte hilfe'],
  entered: ['eingetragen', 'eingegeben', 'ist eingestellt', 'wert eingestellt', 'als eingestellt markieren'],
  next: ['nächster', 'nächste', 'nächster schritt', 'nächstes objektiv', 'das nächste', 'weiter'],
  back: ['schritt zurück', 'einen schritt zurück', 'geh zurück', 'zurückgehen'],
  'far view': ['fernansicht'],
};
