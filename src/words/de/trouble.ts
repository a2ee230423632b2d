// German: what may be wrong beside the correction.
import { writeSteps } from '../../sweep/scale.ts';
import type { ArrowsContradict, Trouble } from '../../sweep/trouble/trouble.ts';
import type { Named, TroubleWords } from '../troubleWords.ts';
import { CHECKS } from './checks.ts';
import { drifted } from './drift.ts';
import { write } from './write.ts';

const NAMES: Readonly<Record<Named['trouble'], string>> = {
  'flickers everywhere': 'Flackert überall',
  'never lights': 'Überall dunkel',
  'lights everywhere': 'Überall stabil',
  'hole in the band': 'Lücke im Band',
  'arrows contradict the lights': 'Pfeile gegen das Licht',
  'focus moved': 'Fokus verschoben',
  'verdicts misjudged': 'Antworten, die nicht passen',
  'band drifts': 'Das Band driftet',
  play: 'Die Einstellrichtung zählt',
  'sweeps differ': 'Abweichende Durchläufe',
};

function seen(found: Trouble): string {
  switch (found.trouble) {
    case 'flickers everywhere':
      return 'Das Licht hält bei keinem Wert, meist flackert es.';
    case 'never lights':
      return 'Das Licht bleibt bei jedem Wert dunkel.';
    case 'lights everywhere':
      return 'Das Licht ist bei jedem Wert stabil, von einer Grenze bis zur anderen.';
    case 'hole in the band':
      return found.from === found.to
        ? `Bei ${writeSteps(found.from)} hält das Licht nicht, auf beiden Seiten davon ist es stabil. Trauen Sie der Mitte nicht.`
        : `Von ${writeSteps(found.from)} bis ${writeSteps(found.to)} hält das Licht nicht, auf beiden Seiten davon ist es stabil. Trauen Sie der Mitte nicht.`;
    case 'arrows contradict the lights':
      return ARROWS[found.how];
    case 'verdicts misjudged':
      return found.values.length === 1
        ? `Die Antwort bei ${writeSteps(found.values[0] ?? 0)} passt nicht zu den anderen. Sie zählt nicht.`
        : `Die Antworten bei ${write.list(found.values.map(writeSteps))} passen nicht zu den anderen. Sie zählen nicht.`;
    case 'band drifts':
      return `Das Band wandert um etwa ${inSteps(Math.abs(found.rate))} in der Minute. Die Mitte ist dort, wo es jetzt liegt.`;
    case 'play':
      return `Aufwärts eingestellt liegt das Band um etwa ${inSteps(2 * found.size)} anders als abwärts. Die Mitte liegt dazwischen.`;
    case 'focus moved':
      return found.seen ? 'Im Livebild hatte sich der Fokus verschoben.' : drifted(found);
  }
}

const ARROWS: Readonly<Record<ArrowsContradict['how'], string>> = {
  'turned round': 'Die Pfeile weisen andersherum, als die Ausrüstung es für dieses Gehäuse angibt.',
  'turned midway': 'Die Pfeile wiesen zuerst in die eine, dann in die andere Richtung.',
  'by chance': 'Die Pfeile weisen mal höher, mal tiefer, was auch immer das Licht tut.',
};

function evidence(found: Named): string {
  switch (found.trouble) {
    case 'flickers everywhere':
    case 'never lights':
    case 'lights everywhere': {
      const alike =
        found.alike === found.of
          ? `Alle ${write.number(found.of)} Werte sahen gleich aus.`
          : `${write.number(found.alike)} von ${write.number(found.of)} Werten sahen gleich aus.`;
      return `${alike} Gegen irgendein Band steht es ${odds(found)}.`;
    }
    case 'hole in the band':
      return `Gegen ein Band ohne Lücke steht es ${odds(found)}.`;
    case 'arrows contradict the lights':
      return `Gegen Pfeile, die weisen wie angegeben, steht es ${odds(found)}.`;
    case 'verdicts misjudged':
      return `Für Fehlantworten steht es ${odds(found)}.`;
    case 'band drifts':
      return `Gegen ein Band, das bleibt, steht es ${odds(found)}.`;
    case 'play':
      return `Gegen ein Band, das in beiden Einstellrichtungen gleich liegt, steht es ${odds(found)}.`;
    case 'focus moved':
      return `Für einen verschobenen Fokus steht es ${odds(found)}, am ehesten nach Probe ${write.number(found.afterHold)}.`;
    case 'sweeps differ':
      return `Sie liegen ${inSteps(found.apart)} auseinander. Zufall erklärt mit ${write.percent(0.95)} Sicherheit bis zu ${inSteps(found.allowed)}. Für eine Abweichung steht es ${odds(found)}.`;
  }
}

/** Odds beyond this say no more to a person. */
const MOST = 1000;
const odds = ({ bayesFactor }: { readonly bayesFactor: number }): string =>
  bayesFactor > MOST ? `mehr als ${write.number(MOST)} zu 1` : `${write.number(bayesFactor)} zu 1`;

const inSteps = (count: number): string => write.count(count, { one: '# Stufe', other: '# Stufen' }, 1);

export const words: TroubleWords = {
  name: (found) => (found.trouble === 'focus moved' && !found.seen ? 'Fokus verschoben?' : NAMES[found.trouble]),
  seen,
  evidence,
  checks: CHECKS,
  toCheck: {
    open: 'Was zu prüfen ist',
    title: 'Was zu prüfen ist, das Wahr\u00adschein\u00adlichste zuerst',
    figures: 'Zahlen',
    manual: 'Wo das Handbuch Ihres Kameraherstellers davon abweicht, gilt das Handbuch.',
  },
};
