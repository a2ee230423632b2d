// French: pictures in a series.
import type { CheckSeries } from '../../photographs/series/checkSeries.ts';
import type { BracketTold } from '../../photographs/series/bracketSeries.ts';
import { focusErrorOf, type StepSize } from '../../photographs/focusError.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { isOnScale, nearestWithin, writeSteps, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { line } from '../line.ts';
import type { SeriesWords } from '../seriesWords.ts';
import { BY_STEP, correctionBetween, focusFell, lengthAtTarget, lengthWithin, marginOf, sideOfTarget } from './focusFell.ts';
import { within } from './subject.ts';
import { write } from './write.ts';

const SHOTS = { one: '# vue', other: '# vues' };
const MORE_SHOTS = { one: '# vue de plus', other: '# vues de plus' };

const inMillimetres = ({ low, high }: WithInterval): string => `${write.percent(0.95)} entre ${write.signed(low, 1)} et ${write.signed(high, 1)} mm`;

function checkTold(series: CheckSeries, value: Steps | null, scale: Scale, step: WithInterval | null): readonly string[] {
  const { check } = series;
  const { verdict, bias } = check;
  switch (verdict.is) {
    case 'confirmed':
      return [
        `Confirmé : ${value === null ? 'la valeur est juste' : `${writeSteps(value)} est juste`}.`,
        `Le point tombe ${focusFell(bias)}, bien dans la profondeur de champ.`,
        ...waysTold(series),
      ];
    case 'shifted':
      return [
        `Décalé : à ${value === null ? 'cette valeur' : writeSteps(value)}, le point tombe ${focusFell(bias)}.`,
        ...undone(series, value, scale, step),
        ...waysTold(series),
      ];
    case 'not enough':
      return [
        `Pas assez pour juger : prenez ${write.count(verdict.more, MORE_SHOTS)}.`,
        ...(Number.isFinite(marginOf(bias)) ? [`Jusqu’ici, le point tombe ${focusFell(bias)}.`] : []),
        ...waysTold(series),
      ];
  }
}

/** About how many steps undo the shift, by what a bracket measured a step to be worth, or else by an estimate. */
function undone({ check: { bias }, depth, step: estimate }: CheckSeries, value: Steps | null, scale: Scale, step: WithInterval | null): readonly string[] {
  const size: StepSize = step === null ? { from: 'estimate', step: estimate } : { from: 'bracket', step };
  const { toAdd } = focusErrorOf(bias, depth, size);
  const whole = toAdd === null ? 0 : Math.round(toAdd.value / scale.step) * scale.step;
  if (whole === 0) return [];
  const about = `Environ ${write.signed(whole)} pas ${Math.abs(whole) === 1 ? 'l’annulerait' : 'l’annuleraient'}, ${BY_STEP[size.from]}`;
  if (value === null) return [`${about}.`];
  return isOnScale(scale, value + whole) ? [`${about} : essayez ${writeSteps(value + whole)}, et contrôlez de nouveau.`] : [`${about}, mais c’est hors plage.`];
}

/** Told where the way that focus was thrown off surely makes a difference. */
function waysTold({ check: { nearLessFar } }: CheckSeries): readonly string[] {
  if (nearLessFar === null || (nearLessFar.low <= 0 && nearLessFar.high >= 0)) return [];
  const farther = nearLessFar.value > 0 ? 'plus loin' : 'plus près';
  return [`Le sens d’où vient le point compte : venant de près, il tombe ${lengthWithin(nearLessFar)} ${farther} que venant de loin.`];
}

function bracketTold({ measure, joined, band }: BracketTold, scale: Scale): readonly string[] {
  const { centre, step } = measure;
  const worth = `Un pas déplace le point de ${lengthWithin(step)} à la mire.`;
  const head = `Les images placent le centre à ${correctionBetween(centre)}.`;
  if (joined === null || band === null) return [head, ...toEnter(centre.value, scale), worth];
  const apart = `${write.signed(joined.difference.value, 1)} ± ${write.number(marginOf(joined.difference), 1)} pas`;
  if (joined.is === 'differ')
    return [
      head,
      `Cela diffère du centre de la bande, ${write.signed(band.value, 1)}, de ${apart}. Vérifiez la mise en place, puis mesurez de nouveau les deux.`,
      worth,
    ];
  return [
    head,
    `Cela concorde avec le centre de la bande, ${write.signed(band.value, 1)} ; l’écart est de ${apart}. Ensemble, ils donnent ${correctionBetween(joined.joint)}.`,
    ...toEnter(joined.joint.value, scale),
    worth,
  ];
}

function toEnter(centre: number, scale: Scale): readonly string[] {
  const value = nearestWithin(scale, centre);
  return value === null ? ['C’est hors plage.'] : [`Valeur à saisir : ${writeSteps(value)}.`];
}

const LIVE_VIEW = 'Faites le point en visée écran au grossissement maximal, et prenez une image.';

const edge = (upright: boolean): string => (upright ? 'bord vertical' : 'bord horizontal');

export const words: SeriesWords = {
  use: {
    title: 'À quoi servent les images',
    options: {
      one: { label: 'Une image à la fois', note: 'Est-elle nette, et où est tombé le point ?' },
      check: { label: 'Contrôler la valeur saisie', note: 'Plusieurs vues à une valeur : est-elle juste ?' },
      bracket: { label: 'Une fourchette de corrections', note: 'Des vues à plusieurs valeurs : où est le centre, et que vaut un pas ?' },
    },
  },
  setUp: {
    title: 'Préparer les prises de vue',
    steps: [
      'Placez l’appareil sur un trépied. Prenez une télécommande ou le retardateur.',
      'Choisissez la pleine ouverture et la sensibilité de base. Exposez pour que le papier soit clair, mais non surexposé.',
      'Coupez l’accentuation et la réduction du bruit, ou mettez-les au neutre.',
      'Enregistrez en pleine définition et en qualité maximale.',
      'Transférez les images par câble ou lecteur de carte, sans bouger l’appareil.',
    ],
  },
  result: 'Ce que montrent les images ensemble',
  wait: 'Le résultat vient quand toutes les images sont lues.',
  out: {
    'another body': 'Prise avec un autre boîtier. Elle reste hors de cette série.',
    'another lens': 'Prise avec un autre objectif. Elle reste hors de cette série.',
    'another focal length': 'Prise à une autre focale. Elle reste hors de cette série.',
    'another aperture': 'Prise à une autre ouverture. Elle reste hors de cette série.',
    'the same shot': 'La même vue est déjà ici. Elle compte une fois : cette image reste hors de la série.',
    'another distance': 'Prise d’une autre distance, ou recadrée. Elle reste hors de cette série.',
  },
  shown: 'Ce que montre cette image',
  each: {
    title: 'Chaque image',
    state: (count, out) =>
      line([
        write.count(count, { one: '# image', other: '# images' }),
        out > 0 && write.count(out, { one: '# hors de la série', other: '# hors de la série' }),
      ]),
  },
  value: {
    label: 'Valeur à contrôler',
    hint: {
      one: 'Celle qui est réglée sur le boîtier.',
      check: 'Celle qui est réglée sur le boîtier.',
      bracket: 'Les valeurs de la fourchette sont autour d’elle.',
    },
    offTheScale: (scale) => `Indiquez une correction ${within(scale)}.`,
  },
  beside: {
    title: `Bords à ${write.percent(1)} : visée écran, puis cette image`,
    reference: (upright) => `Visée écran, ${edge(upright)}`,
    shot: (upright) => `Cette image, ${edge(upright)}`,
  },
  noReference: 'Aucune image n’a été mise au point en visée écran : une rampe un peu de travers passerait pour un décalage. Prenez aussi cette image.',
  figures: 'Chiffres de la série',
  check: {
    order: {
      title: 'L’ordre des vues',
      steps: [
        LIVE_VIEW,
        'Tournez la bague franchement vers le plus près, faites le point avec l’autofocus au viseur, et prenez une image.',
        'Tournez la bague franchement vers l’infini, faites le point avec l’autofocus, et prenez une image.',
        'Continuez de près et de loin, tour à tour, jusqu’à six images avec l’autofocus.',
      ],
    },
    part: { title: 'Point fait', options: { 'live view': 'En visée écran', near: 'Venant de près', far: 'Venant de loin', 'left out': 'À écarter' } },
    none: 'Aucune image prise avec l’autofocus n’est encore utilisable.',
    told: checkTold,
    figures: ({ check, shots, reference, depth }) => [
      `${write.count(shots, SHOTS)} avec l’autofocus. Moyenne ${write.signed(check.bias.value, 1)} mm${Number.isFinite(check.bias.high) ? `, ${inMillimetres(check.bias)}` : ''} ; moins est devant.`,
      `Répétabilité : ${lengthAtTarget(check.repeatability)}, en écart type.`,
      ...(check.nearLessFar === null ? [] : [`Près moins loin : ${write.signed(check.nearLessFar.value, 1)} mm, ${inMillimetres(check.nearLessFar)}.`]),
      ...(reference === null ? [] : [`Visée écran : ${write.signed(reference.value, 1)} mm, ${inMillimetres(reference)}. Elle est retranchée de la moyenne.`]),
      `Profondeur de champ : ${lengthAtTarget(depth.front)} devant, ${depth.behind === 'infinite' ? 'jusqu’à l’infini' : lengthAtTarget(depth.behind)} derrière. La valeur est confirmée si l’écart n’en prend sûrement pas plus de la moitié.`,
    ],
  },
  bracket: {
    order: {
      title: 'L’ordre des vues',
      reference: LIVE_VIEW,
      shots: 'Prenez ensuite une image avec l’autofocus à chacune de ces valeurs, dans cet ordre. Déréglez le point avant chacune.',
      list: 'Valeurs dans l’ordre',
    },
    part: {
      title: 'Prise à',
      option: (part) => (part === 'live view' ? 'Visée écran' : part === 'left out' ? 'À écarter' : writeSteps(part)),
    },
    none: 'Aucune image prise à une valeur n’est encore utilisable.',
    fault: {
      'too few shots': 'Il y a trop peu de vues pour juger : prenez-en quatre au moins, à deux valeurs ou plus.',
      'no slope':
        'Les valeurs ont moins déplacé le point que ne se dispersent les vues : le centre n’est pas connu. Prenez des valeurs plus écartées, ou plus de vues.',
      'runs backwards': 'Le point s’est rapproché quand la valeur montait : le centre n’est pas connu. Vérifiez quelle image a été prise à quelle valeur.',
    },
    told: bracketTold,
    apart: (names) =>
      `${write.list(names)} ${names.length === 1 ? 'est loin de la droite, et ne compte guère' : 'sont loin de la droite, et ne comptent guère'}.`,
    figures: ({ shots, reference }, { measure: { step, scatter, atZero } }) => [
      `${write.count(shots.length, SHOTS)} avec l’autofocus.`,
      `Un pas : ${write.number(step.value, 2)} mm, ${write.percent(0.95)} entre ${write.number(step.low, 2)} et ${write.number(step.high, 2)} mm.`,
      `À la valeur 0, le point tombe à ${lengthAtTarget(atZero)} ${sideOfTarget(atZero)}. Une vue s’écarte de ${lengthAtTarget(scatter)} de la droite, en écart type.`,
      ...(reference === null
        ? []
        : [`Visée écran : ${write.signed(reference.value, 1)} mm, ${inMillimetres(reference)}. Le centre est là où la droite la rencontre.`]),
    ],
    chart: {
      title: 'Où est tombé le point à chaque valeur',
      said: ({ measure: { centre, step } }) =>
        `La droite monte de ${write.number(step.value, 1)} mm par pas, et rencontre la mire à ${write.signed(centre.value, 1)}.`,
      behind: 'derrière',
      inFront: 'devant',
    },
  },
};
