// French: what to check for each trouble, the likeliest first. Common practice, no source.
import type { TroubleWords } from '../troubleWords.ts';

export const CHECKS: TroubleWords['checks'] = {
  'flickers everywhere': [
    'Éclairez davantage la mire, de façon régulière et sans reflets.',
    'Prenez une mire plus contrastée, plus grande que le collimateur actif.',
    'Beaucoup de lampes sur secteur scintillent. Prenez une lampe sans scintillement, ou la lumière du jour.',
    'Vérifiez que ni l’appareil ni la mire ne bougent : rotule et jambes bloquées, pas de courant d’air, pas de main sur l’objectif.',
    'Sur trépied, coupez le stabilisateur.',
    'Vérifiez que l’objectif, avec son multiplicateur, est assez lumineux pour l’autofocus du viseur.',
  ],
  'never lights': [
    'Vérifiez que le collimateur actif est sur la mire, et qu’aucun autre n’est actif.',
    'Vérifiez que l’appui à mi-course allume le témoin. Sur un boîtier réglé pour faire le point au bouton arrière, c’est ce bouton qui l’allume.',
    'Avec certains objectifs et boîtiers, le témoin reste éteint en mise au point manuelle. Consultez le mode d’emploi.',
    'Refaites la mise au point en visée écran. Très loin du point net, le témoin ne s’allume à aucune valeur.',
    'Vérifiez que la mire n’est pas en deçà de la distance minimale de mise au point.',
    'La bonne valeur est peut-être hors de la plage de corrections. Si tout le reste est en ordre, confiez le couple au service après-vente de la marque.',
  ],
  'lights everywhere': [
    'Vérifiez que l’objectif reste en mise au point manuelle. S’il fait le point à chaque appui, le témoin est fixe à toutes les valeurs.',
    'Choisissez l’autofocus ponctuel, pas continu, et observez le témoin lui-même, pas le bip.',
    'Vérifiez que la correction est activée pour cet objectif, et que le boîtier garde chaque valeur réglée.',
    'Vérifiez que seul le collimateur placé sur la mire est actif.',
    'La profondeur de champ est peut-être trop grande pour la plage de corrections. Rapprochez-vous, allongez la focale et ouvrez au maximum.',
  ],
  'hole in the band': [
    'Essayez de nouveau les valeurs du trou. Un choc ou un clignement d’œil gâche un essai.',
    'Vérifiez que rien n’a de jeu : monture, multiplicateur, rotule, mire.',
    'Vérifiez qu’un seul bord se trouve sous le collimateur actif. L’appareil peut confondre deux bords, ou les éléments d’un motif répété.',
    'Vérifiez que l’éclairage de la mire est constant.',
    'Si le trou persiste, refaites un balayage avant de vous fier au centre.',
  ],
  'arrows contradict the lights': [
    'Dans le matériel, changez le sens de la flèche droite de ce boîtier. Il varie selon les marques.',
    'Vérifiez que les flèches observées sont bien celles du témoin, et lisez-les quand l’appareil est immobile.',
    'Vérifiez que vous avez changé la valeur, et non tourné la bague de mise au point.',
    'Vérifiez que le collimateur actif est toujours resté le même.',
    'Si cela continue, indiquez dans le matériel que ce boîtier n’a pas de flèches. Le témoin seul suffit.',
  ],
  'focus moved': [
    'Passez l’objectif en mise au point manuelle, et ne laissez ni main ni câble toucher la bague. Un ruban adhésif la retient.',
    'Vérifiez que la rotule, le trépied et la mire sont bien bloqués.',
    'Vérifiez que l’objectif et le multiplicateur sont bien serrés sur la monture.',
    'Laissez l’appareil et l’objectif prendre la température de la pièce avant la mise au point.',
  ],
  'verdicts misjudged': [
    'Reposez vos yeux une minute, puis essayez de nouveau les valeurs douteuses.',
    'Calez votre menton ou l’appareil, afin que l’œil reste derrière l’oculaire.',
    'Baissez la lumière de la pièce, et protégez l’oculaire de la lumière latérale.',
  ],
  'band drifts': [
    'Attendez dix minutes, appareil allumé, que boîtier et objectif soient chauds, puis refaites un balayage.',
    'Tenez l’appareil, le trépied et la mire à l’écart des radiateurs, du soleil et des courants d’air.',
    'Ne saisissez le centre que si c’est indispensable. Il continuera de se déplacer.',
  ],
  play: [
    'Abordez chaque valeur du même côté, quitte à la dépasser pour y revenir.',
    'Abordez aussi de ce côté la valeur que vous saisissez.',
    'Vérifiez que la monture et le multiplicateur sont bien serrés.',
  ],
  'sweeps differ': [
    'Comparez les notes : une autre distance, une autre mire ou une autre lumière donne une autre valeur.',
    'Vérifiez que la mise au point en visée écran était aussi rigoureuse les deux fois, sans main sur la bague.',
    'Comparez les températures, et cherchez un choc, un nouveau micro\u00adlogiciel ou une révision entre les deux.',
    'Mesurez encore une fois, en voyant les deux extrémités, et fiez-vous aux balayages qui concordent.',
  ],
};
