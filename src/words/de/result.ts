// German: what came out of a sweep and what to do about it.
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { line } from '../line.ts';
import type { ResultWords } from '../resultWords.ts';
import { factRevealed } from './revealed.ts';
import { write } from './write.ts';

const HOLDS = { one: '# Probe', other: '# Proben' };

const visible = (end: Steps | null): string => (end === null ? 'bei keinem Wert stabil' : `stabil von ${writeSteps(end)} bis zur Grenze`);

function service({ chosen, centre, inside }: CarriedOutcome): string {
  const past = `Die Mitte liegt etwa bei ${write.signed(centre, 1)}, jenseits von ${writeSteps(chosen)}, der letzten Korrektur dieses Gehäuses.`;
  return inside ? `${past} Dort ist das Licht noch stabil.` : `${past} Das Licht ist bei keiner Korrektur stabil.`;
}

const FOCUS = 'Stellen Sie im Livebild neu scharf, vergrößert und bei größter Blende, dann schalten Sie das Objektiv auf manuell, ohne den Ring zu berühren.';
const OTHER = 'Prüfen Sie, ob im Gehäuse noch eine andere Korrektur aktiv ist, etwa eine für alle Objektive.';
const SERVICE = 'Kommt wieder dasselbe heraus, muss die Kombination zum Service des Herstellers.';

export const words: ResultWords = {
  region: 'Ergebnis',
  placed: (found, within) => `absichtlich versetzt von ${writeSteps(found)}, zu ${write.chance(within)} sicher auf eine Stufe genau`,
  between: (value, other) =>
    `Die Mitte liegt zwischen ${writeSteps(value)} und ${writeSteps(other)}, und die Proben bevorzugen keinen von beiden. ${writeSteps(value)} liegt näher an null.`,
  headline: {
    'past the limit': 'Jenseits der Grenze',
    'beyond the scale': 'Außerhalb',
    nothing: 'Kein stabiles Licht',
    'no hold': 'Keine Probe gemacht',
    service: 'Für die Werkstatt',
  },
  noHold: 'Ohne Probe gibt es keinen Wert zum Einstellen.',
  service,
  facts: {
    centre: 'Mitte',
    place: (at) => write.signed(at, 1),
    band: 'Band',
    range: (low, high) => (low === high ? writeSteps(low) : `${writeSteps(low)} bis ${writeSteps(high)}`),
    endsNotSeen: 'nicht beide Enden sind auf beiden Seiten erprobt',
    seenInFocus: 'Scharfgestellt gesehen',
    visible,
    halfWidth: 'Halbe Breite',
    width: (half, from, to) => `${write.number(half, 1)}, zwischen ${write.number(from, 1)} und ${write.number(to, 1)}`,
    figures: 'Zahlen',
    interval: '95-%-Intervall',
    within: (from, to) => `${write.signed(from, 1)} bis ${write.signed(to, 1)}`,
  },
  drawing: {
    said: (outcome, { min, max }) =>
      `Die Korrekturen von ${writeSteps(min)} bis ${writeSteps(max)}: ${visible(outcome.visible)}, die Mitte etwa bei ${write.signed(outcome.centre, 1)}.`,
    held: 'stabil',
    beyond: 'jenseits der Grenze',
    lies: 'hier liegt das Band',
    centre: `Mitte, ${write.percent(0.95)}`,
  },
  holds: {
    aside: 'Die Proben mit absichtlich verstelltem Fokus:',
    made: (count, time) => line([write.count(count, HOLDS), write.duration(time)]),
    spent: (count) =>
      write.count(count, {
        one: '# Probe vor dem Verschieben des Fokus zählt nicht.',
        other: '# Proben vor dem Verschieben des Fokus zählen nicht.',
      }),
  },
  next: {
    title: 'Wie es weitergeht',
    enter: (value) =>
      `Stellen Sie ${writeSteps(value)} in der Kamera für dieses Objektiv fest ein und prüfen Sie, ob seine Korrektur eingeschaltet ist. Dann bestätigen Sie es.`,
    enterMeanwhile: (value) => `Bis zur Werkstatt stellen Sie ${writeSteps(value)} in der Kamera für dieses Objektiv fest ein. Dann bestätigen Sie es.`,
    marked: (value) => `${writeSteps(value)} ist als in der Kamera eingestellt vermerkt.`,
    check:
      'Prüfen Sie den Wert mit Aufnahmen: Stellen Sie sechsmal durch den Sucher scharf, verstellen Sie den Fokus vor jeder Aufnahme abwechselnd nach nah und nach fern und vergleichen Sie mit einer, die im Livebild scharfgestellt wurde.',
    photographs: 'Mit Aufnahmen prüfen',
    focusAgain: 'Stellen Sie im Livebild wieder genau scharf. Der Ring ist noch verstellt.',
    service:
      'Zeigen Sie die Werkstattseite einem vom Hersteller zugelassenen Service. Öffnen Sie weder Objektiv noch Gehäuse: Eingriffe von Hand können mehr schaden als nützen.',
    mark: 'Ist eingestellt',
    lens: 'Nächstes Objektiv',
    plan: 'Weiter im Plan',
    otherwise: 'Anderer Wert, Tag oder Notiz',
    allTheSame: 'Haben Sie trotzdem einen Wert eingestellt?',
    takeMarkBack: 'Vermerk zurücknehmen',
    backToSweep: 'Zurück zum Durchlauf',
    presses: 'Der Taster jetzt',
  },
  width: {
    workshop: 'Werkstattseite',
    title: 'Mitte über die Breite finden',
    why: 'Das Band ist immer gleich breit, wo immer der Fokus liegt. Wird der Fokus ein wenig verstellt, fällt das ganze Band in den Bereich, und seine Breite zeigt, wo die Mitte liegt.',
    practice: 'Die Übungskamera dreht ihren Ring selbst und zeigt danach ihr wahres Band.',
    steps: [
      'Lassen Sie Kamera, Objektiv und Tafel, wie sie sind.',
      'Drehen Sie im Livebild den Fokusring ein wenig, bis es gerade unscharf ist. Die Seitenleiste sagt, wenn es die falsche Richtung war.',
      'Machen Sie den Durchlauf wie zuvor und berühren Sie den Ring dabei nicht.',
      'Danach stellen Sie wieder genau scharf.',
    ],
    measure: 'Breite messen',
  },
  // Common practice, no source.
  checks: {
    title: 'Was zu prüfen ist',
    of: {
      'past the limit': [FOCUS, OTHER, SERVICE],
      'beyond the scale': [FOCUS, OTHER, SERVICE],
      nothing: [
        FOCUS,
        'Stellen Sie die Tafel parallel zum Sensor auf, gleichmäßig beleuchtet und kontrastreicher als ihre Umgebung.',
        'Prüfen Sie, ob das aktive Messfeld auf der Tafel liegt und das Objektiv lichtstark genug für den Autofokus im Sucher ist.',
        'Fokussiert das Gehäuse mit einer Taste auf der Rückseite, schaltet sie das Fokuslicht ein, nicht der Auslöser.',
        'Prüfen Sie, ob Sie das Fokuslicht beobachtet haben und nicht die Anzeige der Belichtungsspeicherung.',
      ],
    },
  },
  practice: { title: 'Die Übungskamera', revealed: factRevealed, pictures: 'Mit Übungsbildern prüfen' },
};
