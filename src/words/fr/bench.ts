// French: the bench.
import type { BenchWords } from '../benchWords.ts';
import { line } from '../line.ts';
import { benchFault } from './benchFaults.ts';
import { CHOICES, BENCH_FIELD, HINT } from './benchFields.ts';
import { bySides, focus, lightFound, stands, STEP_FROM, tilted } from './benchFindings.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';

const mm = (length: number, digits: number): string => write.unit(length, 'millimeter', digits);

export const words: BenchWords = {
  title: 'Le banc',
  focalLength: 'Focale, mm',
  missing: {
    'no focal length': 'Indiquez la focale en millimètres, par exemple 85.',
    untold: 'Indiquez d’abord la focale de ce balayage. Appuyez sur « Focale » au-dessus de sa valeur.',
  },
  rig: ({ lens, body, focalLength }) => line([lens, body, write.millimetres(focalLength)]),
  fault: benchFault,
  field: BENCH_FIELD,
  hint: HINT,
  empty: (length) => `Si vide, ${write.number(length)}.`,
  measured: { m: 'Distance mesurée, m', ft: 'Distance mesurée, pieds' },
  choices: CHOICES,
  sensor: ({ width, height }) => `${write.number(width, 2)} × ${write.number(height, 2)} mm`,
  distance: {
    title: 'Distance',
    figures: ({ usual, shortest, yours, unit }) => [
      { name: 'Usage général', value: `${write.distance(usual, unit)}, 50 fois la focale` },
      { name: 'Petite pièce', value: `dès ${write.distance(shortest, unit)}, 25 fois la focale` },
      { name: 'La vôtre', value: write.distance(yours, unit) },
    ],
    stands,
    use: (length, unit) => `Prendre ${write.distance(length, unit)} pour le balayage`,
    useUsual: 'Prendre 50 fois la focale',
  },
  depth: {
    title: 'Objectif et profondeur de champ',
    finer: 'Détails : multiplicateur, pixels, zone AF, flou, pas',
    wanted: 'Indiquez l’ouverture maximale pour voir la profondeur de champ, la lumière, l’inclinaison et la mire.',
    figures: ({ magnification, measured, total, front, behind, near, far, focus: atSensor, quarterWave, hyperfocal, blur, airy, unit }) => [
      { name: 'Grandissement', value: `1 : ${write.number(1 / magnification, 1)}`, note: measured ? 'mesuré' : 'lentille mince' },
      { name: 'Profondeur de champ', value: nearTarget(total, unit) },
      { name: 'devant', value: nearTarget(front, unit) },
      { name: 'derrière', value: nearTarget(behind, unit) },
      {
        name: 'Net',
        value: far === 'infinite' ? `${write.distance(near, unit)} à l’infini` : write.distances(near, far, unit).join(' à '),
        note: 'depuis le plan focal',
      },
      { name: 'Profondeur de foyer', value: mm(atSensor, 3), note: `un quart d’onde d’erreur vaut ${mm(quarterWave, 3)}` },
      { name: 'Hyperfocale', value: nearTarget(hyperfocal, unit) },
      { name: 'Flou admis', value: mm(blur, 3), note: `la tache d’Airy en fait ${write.percent(airy)}` },
    ],
    step: (step, share, unit, by) =>
      `Un pas déplace le point d’environ ${nearTarget(step, unit)} à la mire, soit ${write.percent(share)} de la profondeur derrière elle. ${STEP_FROM[by]}`,
    worthMeasured: 'Tel que mesuré par une fourchette de photos.',
    converted: (aperture, lensSteps, bodySteps) =>
      `Avec le multiplicateur, l’ouverture est f/${write.number(aperture, 1)}. Un écart de l’objectif compte pour ${write.number(lensSteps, 2)} fois autant de pas, ` +
      `un écart du boîtier pour ${write.number(bodySteps, 2)} fois autant. Mesurez donc l’objectif avec multiplicateur à part.`,
  },
  target: {
    title: 'Mire',
    wanted: 'La mire est dessinée dès que vous indiquez l’ouverture maximale.',
    size: (bar, field, sheets) =>
      `Barres de ${mm(bar, 2)} dans un champ de ${mm(field, 0)}, sur ${write.count(sheets, { one: 'une feuille', other: '# feuilles' })}.`,
    open: 'Ouvrir la page à imprimer',
    print: ({ factor, trueSize }) =>
      trueSize
        ? 'L’impression est à la bonne taille.'
        : `L’impression est sortie à ${write.percent(factor, 1)}. Imprimez-la de nouveau à ${write.percent(1)}, sans ajustement à la page. Ou gardez-la : les tailles sont calculées avec ${write.percent(factor, 1)}.`,
  },
  light: { title: 'Lumière', finer: 'Lampes et seuils', verdict: lightFound },
  square: {
    title: 'Parallélisme',
    byEye: 'Ici, il suffit d’aligner la mire à vue d’œil.',
    allowed: (tilt, width, nearer) =>
      `La mire doit être parallèle au capteur à ${write.degrees(tilt, 1)} près. Sur ses ${write.millimetres(width)}, un bord peut être plus proche que l’autre de ${mm(nearer, nearer < 10 ? 1 : 0)}.`,
    miss: {
      mirror: (pixels) => `Dans le miroir, l’objectif peut se voir à ${write.count(pixels, { one: '# pixel', other: '# pixels' })} du milieu.`,
      spot: (off) => `Une tache lumineuse renvoyée peut revenir à ${write.millimetres(off)} de sa source.`,
    },
    tilted,
    bySides,
  },
  place: {
    title: 'Rampe, et répartition voulue',
    finer: 'Détails : rampe inclinée d’un autre angle',
    onTarget: 'Le point est sur la mire.',
    focus,
    wanted: 'Le décalage est calculé dès que vous indiquez l’ouverture maximale.',
    share: (now) =>
      `Avec le point sur le sujet, ${write.percent(now)} de la profondeur est devant. La valeur trouvée par le balayage sera décalée, et le résultat le dira.`,
  },
  walk: {
    title: 'Mise en place',
    what: 'Une étape à la fois, dite et montrée. Ce que vous cochez et relevez est gardé avec le balayage.',
    kit: 'Votre matériel',
    traits: {
      bodyStabiliser: 'Stabilisateur dans le boîtier',
      lensStabiliser: 'Stabilisateur dans l’objectif',
      liveView: 'Visée écran',
      rearButton: 'Mise au point au bouton arrière',
      manualAtBody: 'Mode manuel réglé sur le boîtier',
      zoom: 'Zoom',
      heavy: 'Objectif à collier de trépied',
    },
    notYet: 'Pour commencer, indiquez l’ouverture maximale ci-dessus et corrigez ce qui est signalé.',
    begin: 'Commencer la mise en place',
  },
};
