// German: the cautions of the bench. Laser classes are those of IEC 60825-1.
import type { Caution, Harm } from '../../optics/setUp/caution.ts';
import { flicker } from '../../optics/lamps.ts';
import type { CautionsWords } from '../cautionsWords.ts';
import { write } from './write.ts';

const HARM: Readonly<Record<Harm, string>> = {
  manual:
    'Beachten Sie das Handbuch Ihrer Kamera und die Garantie\u00adbedingungen des Herstellers. Nichts hiervon verlangt, etwas zu öffnen oder innen zu verstellen.',
  'heavy lens': 'Befestigen Sie ein schweres Objektiv an seinem eigenen Stativfuß. Halten Sie es fest, während Sie eine Klemme lösen oder anziehen.',
  leads: 'Verlegen Sie Kabel an der Wand oder kleben Sie sie fest, damit niemand stolpert und den Aufbau umreißt.',
  tripod: 'Spreizen Sie die Stativbeine ganz. Hängen Sie unten ein Gewicht an, wenn es kippen könnte.',
  'hot lamps': 'Lampen werden heiß. Halten Sie sie von Papier, Stoff und Händen fern und lassen Sie sie abkühlen, bevor Sie sie bewegen.',
  mirror: 'Der Spiegel darf niemals Sonne oder Lampen ins Objektiv oder in ein Auge werfen. Suchen Sie die Spiegelung zuerst im Livebild oder von der Seite.',
  'edges of the mirror': 'Achten Sie auf die Kanten des Spiegels und befestigen Sie ihn so, dass er nicht fallen kann.',
  laser:
    'Benutzen Sie nur einen Laser der Klasse 1 oder 2 (IEC 60825-1). Blicken Sie nie in seinen Strahl oder dessen Spiegelung und schalten Sie ihn nie ein, wenn ein Auge am Sucher ist.',
  'laser on the sensor': 'Halten Sie den Laserstrahl und seine Spiegelung vom Objektiv fern. Er kann den Sensor beschädigen.',
};

export const words: CautionsWords = {
  title: 'Vorsicht',
  takeCare: 'Achtung.',
  caution,
};

function caution(one: Caution): string {
  switch (one.is) {
    case 'service':
      return 'Eine Korrektur behebt nur einen gleich\u00adbleibenden Fehler. Bei einem Fehler jenseits des Korrektur\u00adbereichs, einem beschädigten Objektiv oder ungleicher Schärfe hilft der Service des Herstellers.';
    case 'lamps on the mains': {
      const { hertz } = flicker(one.mains);
      return `Lampen an einem Stromnetz mit ${write.number(one.mains)}\u00a0Hz flimmern ${write.number(hertz)}\u2011mal in der Sekunde. Schwankt das Fokuslicht, nehmen Sie eine flimmerfreie Lampe und belichten Sie Aufnahmen mit 1/${hertz}\u00a0s oder länger.`;
    }
    case 'warm light':
      return 'Bei warmem Licht kann die Schärfe etwas näher oder ferner liegen als bei Tageslicht. Messen Sie bei dem Licht, bei dem Sie fotografieren.';
    default:
      return HARM[one.is];
  }
}
