// French: photographs of the printed target.
import type { EdgeFault } from '../../photographs/edge.ts';
import type { FindFault } from '../../photographs/findFault.ts';
import { focusErrorOf, type StepSize } from '../../photographs/focusError.ts';
import type { FocusUntold, FocusReading } from '../../photographs/focusReading.ts';
import type { Motion, MotionWay } from '../../photographs/motion.ts';
import type { EdgeReading } from '../../photographs/reading.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import type { MarkName } from '../../optics/print/marks.ts';
import { line } from '../line.ts';
import type { PhotographsWords } from '../photographsWords.ts';
import { BY_STEP, lengthAtTarget, sideOfTarget } from './focusFell.ts';
import { capital } from '../run.ts';
import { write } from './write.ts';

const CROPS = { one: ' et # petit extrait', other: ' et # petits extraits' };

const MARK: Readonly<Record<MarkName, string>> = {
  'upper left': 'en haut à gauche',
  'upper right': 'en haut à droite',
  'lower left': 'en bas à gauche',
  'lower right': 'en bas à droite',
};

const EDGE_FAULT: Readonly<Record<EdgeFault['is'], string>> = {
  'edge outside': 'trop près du bord de l’image',
  'edge too short': 'trop court',
  'edge not slanted': 'pas incliné comme à l’impression',
  'no edge': 'aucun bord vu',
  'edge not straight': 'pas droit',
  'edge clipped': 'trop clair ou trop sombre',
  'two edges': 'quelque chose d’autre est à côté',
  'edge too blurred': 'trop flou',
  'edge too sharp': 'plus net que les pixels ne peuvent le montrer',
};

function notFound(fault: FindFault): string {
  switch (fault.is) {
    case 'no print':
      return 'Aucune mire n’a été trouvée. Prenez une image qui montre toute la mire.';
    case 'half a print': {
      const missing = write.list(fault.missing.map((name) => MARK[name]));
      return `Une partie seulement de la mire a été trouvée ; il manque ${write.count(fault.missing.length, { one: 'son repère', other: 'ses repères' })} ${missing}. Cadrez toute la mire.`;
    }
    case 'two prints':
      return 'Deux mires ont été trouvées. Laissez-en une hors de l’image.';
    case 'print too small':
      return 'La mire est trop petite dans cette image. Rapprochez-vous, ou imprimez-en une plus grande.';
    case 'print too tilted':
      return `La mire est tournée de ${write.degrees(fault.tilt, 0)}. Placez-la parallèle au capteur.`;
    case 'older print':
      return 'Cette mire date d’avant les repères qui servent à la trouver : elle ne peut pas être mesurée. Imprimez-en une nouvelle.';
    case 'marks unread':
      return 'Les repères de la mire ne peuvent pas être lus. Éclairez-la régulièrement, dégagez la vue, faites le point près d’elle, et coupez l’accentuation dans l’appareil.';
    case 'picture blown':
      return 'Cette image est surexposée. Exposez moins.';
    case 'picture black':
      return 'Cette image est noire. Exposez plus.';
  }
}

const moved = (way: MotionWay): string =>
  `Cette image est plus floue ${way === 'sideways' ? 'en largeur qu’en hauteur' : 'en hauteur qu’en largeur'} : l’appareil a bougé. Prenez un trépied, et une télécommande ou le retardateur.`;

const UNKNOWN = 'on ne sait donc pas où est tombé le point';

const noRamp = (why: FindFault): string =>
  why.is === 'half a print'
    ? `Une partie seulement de la rampe a été trouvée : ${UNKNOWN}. Cadrez toute la rampe.`
    : `Aucune rampe n’a été trouvée : ${UNKNOWN}. Placez la rampe sous la mire, et cadrez-la en entier.`;

const LACKING = { focalLength: 'la focale', aperture: 'l’ouverture', sensor: 'la taille du capteur' };

function noFocus(fault: FocusUntold): string {
  switch (fault.is) {
    case 'no target':
      return 'Sans la mire, on ne sait pas où est tombé le point.';
    case 'no ramp':
      return noRamp(fault.why);
    case 'camera unknown':
      return `Pour dire où est tombé le point, il manque ${write.list(fault.lacking.map((each) => LACKING[each]))}. Complétez le boîtier et l’objectif dans le matériel, et importez l’image telle que l’appareil l’a écrite.`;
    case 'not the whole picture':
      return 'Cette image n’a pas les proportions du capteur : elle a été recadrée, ou c’est une copie d’écran. Importez l’image entière, telle que l’appareil l’a prise.';
    case 'cropped':
      return `Cette image a été recadrée après la prise de vue : ${UNKNOWN}. Importez l’image telle que l’appareil l’a prise.`;
    case 'too few pixels':
      return 'Cette image est trop petite pour montrer où est tombé le point. Importez l’image telle que l’appareil l’a prise.';
    case 'ramp unread':
      switch (fault.why.is) {
        case 'ramp hidden':
          return `Trop peu de la rampe est lisible : ${UNKNOWN}. Dégagez la vue, et éclairez-la régulièrement.`;
        case 'ramp blown out':
          return `La rampe est surexposée : ${UNKNOWN}. Exposez moins.`;
        case 'focus off the ramp':
          return `Le point est tombé au-delà de l’extrémité ${fault.why.lies === 'behind' ? 'éloignée' : 'proche'} de la rampe. Faites le point plus près de la mire, ou imprimez une rampe plus longue.`;
        case 'ramp too flat':
          return `Toute la rampe est à peu près aussi nette : ${UNKNOWN}. Ouvrez le diaphragme, ou imprimez une rampe plus longue.`;
        case 'camera moved':
          return moved(fault.why.blurs === 'upright' ? 'sideways' : 'up and down');
      }
  }
}

const reached = ({ low, high }: FocusReading['ramp']['interval']): string =>
  low < 0 && high > 0
    ? `${lengthAtTarget(low)} devant et ${lengthAtTarget(high)} derrière`
    : `${lengthAtTarget(Math.min(Math.abs(low), Math.abs(high)))} et ${lengthAtTarget(Math.max(Math.abs(low), Math.abs(high)))} ${low < 0 ? 'devant' : 'derrière'}`;

const HEADLINE: Readonly<Record<FocusReading['is'], string>> = {
  sharp: 'Assez net.',
  'not sharp': 'Pas assez net.',
  'not sure': 'Trop juste pour dire si c’est assez net.',
};

/** What is in focus is not sharp where the camera moved, which is told beside it. */
const focusSentences = ({ is, ramp }: FocusReading, motion: Motion = { is: 'alike' }): readonly string[] => [
  is === 'sharp' && motion.is === 'moved' ? 'Le point est bon.' : HEADLINE[is],
  ramp.lies === 'on the target'
    ? 'Autant qu’on puisse le dire, le point est tombé sur la mire.'
    : `Le point est tombé à ${lengthAtTarget(ramp.error)} ${sideOfTarget(ramp.error)}.`,
  `Sûr à ${write.percent(0.95)} : entre ${reached(ramp.interval)}.`,
];

function focusFigures(focus: FocusReading, measured: WithInterval | null): readonly string[] {
  const { ramp, depth, share } = focus;
  return [
    `Écart de mise au point ${write.signed(ramp.error, 1)} mm, ${write.percent(0.95)} entre ${write.signed(ramp.interval.low, 1)} et ${write.signed(ramp.interval.high, 1)} mm ; moins est devant.`,
    `Profondeur de champ : ${lengthAtTarget(depth.front)} devant, ${depth.behind === 'infinite' ? 'jusqu’à l’infini' : lengthAtTarget(depth.behind)} derrière. L’écart fait ${write.percent(share)} de la profondeur de son côté.`,
    `Flou le plus faible : ${write.number(ramp.leastBlur, 2)} pixels. Il croît ${write.number(ramp.growth, 2)} fois aussi vite qu’attendu de cet objectif.`,
    ...undone(focus, measured),
  ];
}

/** How many steps undo a focus error that is told, by what a bracket measured a step to be worth, or else by an estimate. */
function undone({ ramp, depth, step }: FocusReading, measured: WithInterval | null): readonly string[] {
  if (ramp.lies === 'on the target') return [];
  const size: StepSize = measured === null ? { from: 'estimate', step } : { from: 'bracket', step: measured };
  const { toAdd } = focusErrorOf({ value: ramp.error, ...ramp.interval }, depth, size);
  return toAdd === null ? [] : [`Environ ${write.signed(toAdd.value, 1)} pas de correction l’annuleraient, ${BY_STEP[size.from]}.`];
}

const AT: Readonly<Record<EdgeReading['edge']['at'], string>> = { middle: 'milieu', corner: 'coin' };
const RUNS: Readonly<Record<EdgeReading['edge']['runs'], string>> = { upright: 'vertical', level: 'horizontal' };
const edgeName = ({ edge }: EdgeReading): string => `${capital(AT[edge.at])}, bord ${RUNS[edge.runs]}`;

export const words: PhotographsWords = {
  title: 'Contrôle par photos',
  choose: 'Images',
  drop: 'Choisissez-les, déposez-les ici, ou collez-les.',
  stays: 'Elles sont lues sur cet ordinateur, ne sont envoyées nulle part et ne sont pas gardées.',
  practise: 'Essayer avec des images simulées',
  printed: {
    label: 'Échelle imprimée mesurée, mm',
    hint: 'Dessinée pour 100. Si elle mesure autre chose, indiquez-le avant d’importer des images.',
    fault: 'Indiquez la longueur de l’échelle imprimée en millimètres, de 50 à 200, par exemple 94.',
  },
  pictures: 'Images importées',
  more: (count) => `Montrer la suite (${write.number(count)} en tout)`,
  progress: (read, all) => `${write.count(read, { one: '# image lue', other: '# images lues' })} sur ${write.number(all)}.`,
  stage: {
    waiting: 'En attente',
    opening: 'Ouverture du fichier',
    decoding: 'Décodage de l’image',
    measuring: 'Mesure',
    'let go': 'Non lue. Importez-la de nouveau pour la lire.',
  },
  stop: 'Arrêter',
  clear: 'Retirer toutes les images',
  fault: {
    'file unread': 'Ce fichier ne peut pas être lu. Vérifiez qu’il existe toujours, puis importez-le de nouveau.',
    'no picture': 'Le navigateur ne trouve pas d’image dans ce fichier. Importez un JPEG, PNG, WebP ou AVIF, à la taille de la prise de vue.',
    'no picture inside': 'Le navigateur ne trouve pas d’image dans ce fichier brut. Importez un JPEG de la même vue.',
    'only a small picture inside': 'Ce fichier brut ne contient qu’un petit aperçu. Importez un JPEG de la même vue en pleine définition.',
    'too large': 'Cette image est trop grande pour être lue ici. Importez-en une de 110 mégapixels au plus.',
    'too small': 'Cette image est trop petite pour être mesurée. Importez l’image telle que l’appareil l’a prise.',
    stopped: 'La lecture de cette image a échoué. Importez-la de nouveau, ou prenez-en une autre.',
  },
  found: (ramp) => (ramp ? 'L’image, avec le contour de la mire et de la rampe.' : 'L’image, avec le contour de la mire.'),
  target: ({ tilt, resized }) => {
    const stands =
      tilt < 3
        ? 'La mire est trouvée, et parallèle au capteur.'
        : `La mire est trouvée, mais tournée d’environ ${write.degrees(tilt, 0)}. Placez-la parallèle au capteur.`;
    return resized === null
      ? stands
      : `${stands} Ce fichier a été réduit ou agrandi à ${write.percent(resized)} de la prise de vue, ce qui change sa netteté. Importez l’image telle que l’appareil l’a prise.`;
  },
  notFound,
  focus: focusSentences,
  noFocus,
  moved,
  sharpened: 'Cette image a été accentuée : sa MTF50 flatte l’objectif. Coupez l’accentuation dans l’appareil.',
  unslanted: (roll) =>
    `La mire est tournée de ${write.degrees(Math.abs(roll), 0)} ${roll < 0 ? 'dans le sens inverse des aiguilles d’une montre' : 'dans le sens des aiguilles d’une montre'} : ses bords suivent les pixels et ne peuvent pas être mesurés. Redressez-la.`,
  unstated:
    'Les données de l’appareil manquent dans ce fichier : un recadrage passerait inaperçu. Si l’image a été recadrée, importez-la telle que l’appareil l’a prise.',
  crops: `Bords à ${write.percent(1)}`,
  crop: edgeName,
  chart: {
    title: 'Netteté le long de la rampe',
    said: (focus) => focusSentences(focus).join(' '),
    target: 'mire',
    depth: (depth) => write.unit(depth, 'millimeter'),
  },
  figures: {
    title: 'Chiffres',
    edge: (reading) =>
      reading.measure.ok
        ? `${edgeName(reading)} : MTF50 ${write.number(reading.measure.value.mtf50, 3)} cycle par pixel, ${write.percent(0.95)} entre ${write.number(reading.measure.value.interval.low, 3)} et ${write.number(reading.measure.value.interval.high, 3)}.`
        : `${edgeName(reading)} : ${EDGE_FAULT[reading.measure.fault.is]}.`,
    target: ({ scale, roll, tilt }) =>
      `${write.number(scale, 2)} pixels par millimètre, roulis ${write.degrees(Math.round(roll * 10) / 10, 1)}, inclinaison ${write.degrees(tilt, 1)}.`,
    focus: focusFigures,
  },
  keep: {
    label: 'Garder dans le carnet',
    done: 'Gardé dans le carnet',
    what: (crops) => `Garde les chiffres${crops === 0 ? '' : write.count(crops, CROPS)}, pas les images.`,
    kept: 'C’est dans l’historique de cette configuration.',
    erase: 'L’effacer',
    noSituation: 'Pour garder cela, ouvrez le carnet, choisissez la configuration, et importez les images depuis là.',
    noValue: 'Pour garder cela, indiquez ci-dessus la valeur à contrôler.',
    another: 'Cette image a été prise avec un autre boîtier, un autre objectif ou une autre focale que cette configuration : elle ne peut pas être gardée ici.',
  },
  camera: ({ width, height }, camera) =>
    line([
      `${write.number(width)} × ${write.number(height)} pixels`,
      camera !== null && camera.focalLength !== null && write.millimetres(camera.focalLength),
      camera !== null && camera.aperture !== null && `f/${write.number(camera.aperture, 1)}`,
      camera !== null && camera.distance !== null && write.distance(camera.distance),
      camera !== null && camera.taken !== null && write.dayAndTime(camera.taken),
    ]),
};
