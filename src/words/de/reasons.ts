// German: why a value is held next, as it follows the value. "+6: mitten zwischen +3 (stabil) und +9 (dunkel)".
import type { Landmark } from '../../sweep/next/reason.ts';
import type { Suggestion } from '../../sweep/next/suggestion.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { Light } from '../../sweep/verdict.ts';
import { LIGHT } from './verdict.ts';
import { write } from './write.ts';

export function reason({ value, reason: why }: Suggestion): string {
  switch (why.because) {
    case 'start':
      return 'die wahr\u00adschein\u00adlichste Mitte, für den Anfang';
    case 'remembered': {
      const when = write.monthAndYear(why.from.at);
      return why.from.of === 'situation'
        ? `dort lag die Mitte im ${when}`
        : `nahe der Mitte dieser Kombination im ${when}, bei anderer Brennweite oder Entfernung`;
    }
    case 'between': {
      const isHalfway = why.below.value + why.above.value === 2 * value;
      return `${isHalfway ? 'mitten zwischen' : 'zwischen'} ${landmark(why.below)} und ${landmark(why.above)}`;
    }
    case 'beyond':
      return why.side === 'above' ? `über ${landmark(why.of)}` : `unter ${landmark(why.of)}`;
    case 'surer':
      return `noch einmal, zur Sicherheit: ${before(why.of)}`;
    case 'again':
      return 'noch einmal, weil die letzte Antwort dort überraschend war';
    case 'end':
      return END[why.part][why.side];
    case 'unmoved':
      return 'um zu prüfen, ob sich der Fokus seit den ersten Proben verschoben hat';
    case 'proof':
      return 'der Wert zum Einstellen, der noch nicht erprobt ist';
    case 'doubted':
      return 'noch einmal, weil die Antwort dort nicht zu den anderen passt';
    case 'yours':
      return 'Ihre eigene Wahl';
  }
}

const END = {
  last: { low: 'der letzte Wert des Bandes, am unteren Ende', high: 'der letzte Wert des Bandes, am oberen Ende' },
  next: { low: 'der erste Wert unter dem Band', high: 'der erste Wert über dem Band' },
} as const;

/** The same as it is said before the first hold; null where there is nothing to add to the value. */
export function startAloud({ reason: why }: Suggestion): string | null {
  if (why.because !== 'remembered') return null;
  const when = write.month(why.from.at);
  return why.from.of === 'situation' ? `wie im ${when}` : `nahe dem Wert vom ${when}`;
}

const landmark = (held: Landmark): string => `${writeSteps(held.value)} (${isOneArrow(held) ? 'stabil mit einem Pfeil' : LIGHT[held.light]})`;

/** A steady light that an arrow told against is told with its arrow, or it would contradict how it counts. */
const isOneArrow = ({ light, counts }: Landmark): boolean => light === 'steady' && counts === 'out';

const WAS: Readonly<Record<Light, string>> = {
  steady: 'vorher war das Licht stabil',
  late: 'vorher kam das Licht verzögert',
  flicker: 'vorher flackerte das Licht',
  dark: 'vorher blieb das Licht dunkel',
  untold: 'vorher hielt es nicht',
};
const before = (held: Landmark): string => (isOneArrow(held) ? 'vorher war das Licht stabil, mit einem Pfeil' : WAS[held.light]);
