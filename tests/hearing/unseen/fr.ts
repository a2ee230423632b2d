// French transcripts by someone who had seen the taught words and nothing else of how French is heard. By the sounds of the language, from
// memory: what ends a word is mostly silent, so forms of one word sound alike (annuler, annulé, annulez); "au" and "o", "é", "ai" and "et",
// "in", "ain", "ein" and "un" are one sound each; nasal vowels are taken for one another; the mute e falls; words run together and are
// parted elsewhere ("et teint", "on semble"); a weak first syllable is lost; "six" and "dix" lose their end.
import { parts, said, type Unseen } from './transcript.ts';

export const FRENCH_UNSEEN: Unseen = {
  lenses: [
    ['Corvid 85', 85],
    ['Orrin 35', 35],
    ['Corvid 135', 135],
    ['Orrin 50', 50],
    ['Corvid 24-70', 70],
  ],
  told: [
    ...said(
      'judging',
      'solid',
      "Fixe. / C'est fixe. / fixes / fixé / fix / Oui, fixe. / fixe fixe / fixent / Euh, fixe. / Bien fixe. / Elle est fixe. / Phix / ixe",
    ),
    ...said(
      'judging',
      'delayed',
      "Tardif. / C'est tardif. / tardifs / tard dif / tardive / tare dif / Euh, tardif. / ardif / tardif tardif / Un peu tardif. / tardi / Tar dif",
    ),
    ...said(
      'holding',
      'flicker',
      'Clignote. / Ça clignote. / clignotes / clignotent / clignoter / Clignotant. / cligne note / lignote / clignote clignote / Il clignote.',
    ),
    ...said('holding', 'flicker', 'Ah, ça clignote. / clinote / Clignot'),
    ...said(
      'judging',
      'nothing',
      "Éteint. / C'est éteint. / éteins / éteinte / et teint / étain / étains / Euh, éteint. / Tout éteint. / éteint éteint / teint / et teins",
    ),
    ...said('judging', 'left', 'Gauche. / À gauche. / Flèche gauche. / gauches / La gauche. / gauche gauche / Flèche à gauche. / goche / coche / Gauche, oui.'),
    ...said(
      'judging',
      'right',
      'Droite. / À droite. / Flèche droite. / droites / La droite. / droite droite / Flèche à droite. / roite / doite / drouate / Droite, oui.',
    ),
    ...said(
      'judging',
      'balanced',
      'Ensemble. / Les deux ensemble. / en semble / ensembles / on semble / Euh, ensemble. / ensemble ensemble / semble / Ensemble, oui. / ensem / Elles sont ensemble.',
    ),
    ...said(
      'judging',
      'lopsided',
      "Bancal. / C'est bancal. / bancale / bancales / banc cal / Bankal / Euh, bancal. / bancal bancal / ban cale / Un peu bancal. / bon cal / pancal",
    ),
    ...said('judging', ['flicker', 'left'], 'Clignote à gauche. / clignote gauche / clignote, flèche gauche'),
    ...said('judging', ['delayed', 'right'], 'Tardif à droite. / tardif droite / droite, tardif'),
    ...said('judging', ['solid', 'balanced'], 'Fixe, ensemble. / fixe et ensemble / fixe en semble'),
    ...said(
      'dialling',
      'holding',
      "Mi-course. / mi course / À mi-course. / mie course / mis course / Mi-course, oui. / Je suis à mi-course. / mi cours / Voilà, mi-course. / m'y course",
    ),
    ...said('dialling', 'holding', 'Mi-courses / micro course'),
    ...said('dialling', 'undo', 'Annuler. / annulé / annulez / annule / Annulée. / Annule ça. / à nuler / Non, annuler. / nuler / Il faut annuler.'),
    ...said('judging', 'undo', "annuler, s'il te plaît / Anuler / Oups, annuler. / en nuler"),
    ...said(
      'judging',
      'repeat',
      'Répète. / répètes / Répétez. / Répéter. / Tu peux répéter ? / répète répète / épète / ré pète / Répète-moi ça. / et pète / Répète, merci.',
    ),
    ...said(
      'dialling',
      'pause',
      "Pause. / pose / Une pause. / Fais une pause. / pauses / Pause, s'il te plaît. / poses / bause / pause pause / Mettre en pause. / Paul se / Euh, pause.",
    ),
    ...said(
      'paused',
      'resume',
      'Reprends. / reprend / On reprend. / Je reprends. / Reprenez. / reprendre / Allez, reprends. / re prends / reprends reprends / Reprenons. / reprant / repends',
    ),
    ...said(
      'dialling',
      'skip',
      "Ignore. / ignores / Ignorer. / Ignorez. / Ignore-le. / y nore / Ignore celui-là. / inore / Ignore, s'il te plaît. / ignore ignore / nignore / Ignoré",
    ),
    ...said(
      'offered',
      'accept',
      "Accepte. / J'accepte. / Accepter. / accepté / acceptes / Oui, accepte. / à secte / axepte / Acceptez. / cepte / accepte accepte / Accepte, merci. / excepte",
    ),
    ...said(
      'offered',
      'go on',
      'Continue. / Continuer. / On continue. / continues / Continuez. / continu / Oui, continue. / contenu / Allez, continue. / tinue / con tinue / Je continue.',
    ),
    ...said(
      'checking',
      'same',
      "Identique. / C'est identique. / identiques / À l'identique. / y dentique / dentique / Oui, identique. / Toujours identique. / identic / il dentique",
    ),
    ...said(
      'checking',
      'shifted',
      "Décalé. / C'est décalé. / décaler / décalée / Ça s'est décalé. / dé calé / des calés / Oui, décalé. / écalé / déballé / décalez / décalés",
    ),
    ...said('offered', 'shifted', 'Décalé. / Ça a décalé. / Euh, décalé.'),
    ...said(
      'dialling',
      'finish',
      'Termine. / Terminer. / terminé / On termine. / Je termine. / termines / terre mine / Termine, merci. / ermine / Allez, termine. / Terminons.',
    ),
    ...said(
      'holding',
      'help',
      "Aide-moi. / aide moi / Aidez-moi. / aide-moi, s'il te plaît / et de moi / Aidemoi / Euh, aide-moi. / ède moi / Tu peux m'aider ? / aide-moi aide-moi",
    ),
    ...said(
      'finished',
      'entered',
      "Saisi. / C'est saisi. / saisie / saisit / saisis / Voilà, saisi. / J'ai saisi. / Valeur saisie. / aisi / saisi saisi / sésie / Saisi, oui.",
    ),
    ...said('finished', 'next', "Suivant. / Au suivant. / suivante / suivants / Objectif suivant. / suis vent / Suivant, s'il te plaît. / uivant"),
    ...said('set-up', 'next', 'Suivant. / Étape suivante. / Euh, suivant. / suivent'),
    ...said(
      'set-up',
      'back',
      "Précédent. / précédant / précédente / Étape précédente. / Précédent, s'il te plaît. / près cédant / pré cédant / récédent / Euh, précédent. / Le précédent.",
    ),
    ...said(
      'dialling',
      'far view',
      "Vue de loin. / vu de loin / vue 2 loin / vues de loin / La vue de loin. / Vue de loin, s'il te plaît. / vue de l'oin / vue deux loin / ue de loin / bu de loin",
    ),
    ...said('dialling', 6, 'Plus six. / +6 / plus 6 / Valeur plus six. / Sur plus six. / plus si / plusse six / plu six / Euh, plus six.'),
    ...said(
      'dialling',
      -12,
      "Moins douze. / −12 / -12 / moins 12 / Valeur moins douze. / mois douze / Moi 12 / Moins un deux. / Moins douze, s'il te plaît. / moins dousse",
    ),
    ...said('dialling', -7, 'moins sept / moins cette / Moins set. / À moins sept.'),
    ...said('dialling', 10, 'Plus dix. / plus dis / +10 / Valeur plus 10'),
    ...said('offered', -17, 'moins dix-sept / moins 10 7 / -17 / moins dix sept'),
    ...said('dialling', 5, 'plus cinq / plus 5, merci / plus saint / plus sinq'),
    ...said('offered', 0, 'Valeur zéro. / Valeur 0 / valeur zéros'),
    ...said('dialling', -3, 'Valeur à moins trois. / va leur moins trois / moins troie / Négatif trois. / Mets moins trois.'),
    ...said('dialling', -20, 'Moins vingt. / moins vin / -20 / moins vingts'),
    ...said('dialling', -1, 'moins un / Moins 1. / moins une'),
    ...said('dialling', 8, 'Positif huit. / plus huit / Bah, plus huit. / plus 8 oui'),
    ...said(
      'dialling',
      { sought: 'Corvid 85' },
      'Recherche 85. / Recherche quatre-vingt-cinq. / Recherche le Corvid 85. / re cherche 85 / la recherche 85 / Recherche Corvide 85 / Recherche Covid 85',
    ),
    ...said(
      'offered',
      { sought: 'Orrin 35' },
      "Recherche Orrin 35. / Recherche trente-cinq millimètres. / Recherche le 35, s'il te plaît. / Recherche Aurin 35 / Euh, recherche 35 / echerche 35",
    ),
    ...said(
      'finished',
      { sought: 'Corvid 135' },
      'Recherche 135. / Recherche cent trente-cinq. / Rechercher le 135 mm / Recherche le Corvid cent trente-cinq.',
    ),
    ...said('dialling', { sought: 'Orrin 50' }, "Recherche le 50. / S'il te plaît, recherche 50 millimètres. / Recherche le Orrin cinquante. / rocherche 50"),
    ...said('finished', { sought: 'Corvid 24-70' }, 'Recherche 24-70. / Recherche vingt-quatre soixante-dix. / Recherche le 24 70'),
    ...said('finished', { nextLens: 'Orrin 35' }, 'Objectif suivant Orrin 35 / Prochain objectif, Orrin trente-cinq'),
  ],
  room: parts([
    "Il est quelle heure ? / Tu as vu le bouchon ? / Éteins la lumière, s'il te plaît. / J'arrive. / Voilà / Exactement / Non, ça ne va pas. / Je te rappelle plus tard.",
    'On continue demain matin. / Tournez à droite au prochain carrefour. / La valise est à gauche de la porte. / Ça m’est égal. / Tu me tiens le trépied ? / La batterie est vide.',
    "Bonjour / Allô ? / À demain / Et là elle m'a dit qu'elle venait pas. / Un instant / Temps couvert cet après-midi avec cinq degrés. / Moins cinq degrés cette nuit en montagne.",
    "Il est midi, le journal. / Trois kilomètres de bouchon sur l'autoroute. / L'atelier, bonjour, que puis-je faire pour vous ? / Votre appareil sera prêt dans deux semaines.",
    'On ferme à dix-huit heures. / Merci de votre appel. / Un café ? / Avec du lait, merci. / Où est le tournevis ? / Pose ça sur la table. / Attention à la vitre !',
    "La pile coûte douze euros. / Quarante-huit / Il fait beau. / Je passe à la banque à midi. / Il a perdu ses clés. / Dis-lui d'attendre. / Je ne sais pas. / Bon",
    "Retourne l'appareil. / Cet objectif est à un client. / Cette fenêtre est très claire. / Ferme la porte. / Qui a appelé ? / Super / Peut-être / Plus tard",
    "Mets-toi là. / La facture est déjà payée. / On se voit mercredi. / Je crois que l'imprimante est bloquée. / Ah d'accord / Merci beaucoup / Tant mieux",
    "Le week-end a été long. / Trois bières et une eau / Il nous reste du papier ? / La vis est desserrée. / Ils ont mis le rendez-vous à vendredi. / C'est pas vrai",
    'Je viens à vélo. / Les enfants sont en vacances. / Et maintenant, la musique des années quatre-vingt. / Ça sonne bien. / On y va ensemble ce soir au cinéma.',
  ]),
};
