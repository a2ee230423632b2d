// What a general recogniser may write for what is said to the panel in French, and what else is said near it: homophones, other forms of
// a verb, plural and feminine, courtesy, thinking, a sound lost or taken for its neighbour. Written by hand; no recording behind it.
import type { Word } from '../../../../src/sweep/inputs.ts';

const of = (word: Word, heard: string) => heard.split('|').map((one) => ({ word, heard: one.trim() }));

export const WANT: readonly { readonly word: Word; readonly heard: string }[] = [
  ...of(
    'solid',
    'Fixe.|fixes|fixé|fixée|ficks|fix|euh fixe|fixe merci|oui fixe|bien fixe|c’est fixe|elle est fixe|la lumière est fixe|fixe fixe|alors fixe|le voyant est fixe|voilà fixe|fiks|fixe hein|fix s’il te plaît|phix',
  ),
  ...of(
    'delayed',
    'Tardif.|tardive|tardifs|euh tardif|c’était tardif|c’est tardif|tardif merci|en retard|retard|tard dif|tarif|tardi|tardiff|oui tardif|bon tardif|un peu tardif|c’est en retard|tarte dif|arrive tard|tardif là',
  ),
  ...of(
    'flicker',
    'Clignote.|clignotte|clignotent|clignoter|ça clignote|euh clignote|ça clignotait|clignotant|clignotants|clignotez|la lumière clignote|clignote merci|clic note|cligne note|il clignote|clignote encore|clignot|kleenote|oui ça clignote|cligno te',
  ),
  ...of(
    'nothing',
    'Éteint.|éteints|éteinte|est teint|et teint|éteins|étain|c’est éteint|euh éteint|il est éteint|rien|rien du tout|pas de lumière|aucune lumière|tout noir|éteint merci|éteint s’il vous plaît|reste éteint|y a rien|étaint',
  ),
  ...of('left', 'Gauche.|gauches|à gauche|flèche gauche|la flèche gauche|euh gauche|gauche merci|gôche|flèche de gauche|la gauche|oui gauche|celle de gauche'),
  ...of(
    'right',
    'Droite.|droites|à droite|flèche droite|la flèche droite|euh droite|droite merci|droit|drouate|flèche de droite|la droite|celle de droite|adroite',
  ),
  ...of(
    'balanced',
    'Ensemble.|ensembles|les deux ensemble|en semble|euh ensemble|ensemble merci|les deux égales|les deux pareilles|an semble|en sembles|ensemble hein',
  ),
  ...of('lopsided', 'Bancal.|bancale|bancales|bancals|bankal|banc cal|euh bancal|bancal merci|inégal|inégales|les deux inégales|de travers|un égal|banquale'),
  ...of(
    'holding',
    'Mi-course.|mi course|à mi-course|mi-courses|mikourse|mie course|euh mi-course|mi-course merci|mis course|mi cours|mi-course voilà|allez mi-course|j’appuie|bon mi-course|mi-coursse',
  ),
  ...of(
    'undo',
    'Annuler.|annule|annulé|annulez|annulée|annule ça|annule le dernier|annulé merci|euh annule|tu peux annuler|annuler s’il te plaît|anulé|a nulle|il faut annuler|pourrais-tu annuler|annulation|à nuler|annules|annulait|attends annule',
  ),
  ...of(
    'repeat',
    'Répète.|répètes|répéter|répétez|répète s’il te plaît|peux-tu répéter|tu peux répéter|répète ça|euh répète|répétait|redis|re pète|répète merci|vous pouvez répéter s’il vous plaît|répéte|encore une fois',
  ),
  ...of('pause', 'Pause.|pose|pauses|poses|en pause|une pause|euh pause|pause merci|mets en pause|fais une pause|poz|pause s’il te plaît|pausse|allez pause'),
  ...of(
    'resume',
    'Reprends.|reprend|reprendre|reprenez|on reprend|je reprends|euh reprends|reprends merci|re prends|repren|reprise|allez on reprend|reprend là|repend',
  ),
  ...of(
    'skip',
    'Ignore.|ignorer|ignorez|ignoré|ignores|ignorent|ignore ça|euh ignore|saute|sauter|sautez|ignore celle-ci|ignore merci|inniore|ignore s’il te plaît|ignorait|tu peux ignorer',
  ),
  ...of(
    'accept',
    'Accepte.|accepter|acceptez|accepté|acceptes|acceptent|j’accepte|euh accepte|accepte merci|oui accepte|valider|validez|valide|je valide|acceptée|axepte|excepte|à sept te|acepte|on accepte',
  ),
  ...of(
    'go on',
    'Continue.|continuer|continuez|continué|continues|continu|continus|on continue|je continue|euh continue|continue merci|allez continue|continuent|contenue|oui continue|continue s’il te plaît|poursuis',
  ),
  ...of(
    'same',
    'Identique.|identiques|c’est identique|euh identique|identique merci|pareil|toujours pareil|la même chose|toujours identique|idantique|identic|y dentique|oui identique|il est identique',
  ),
  ...of(
    'shifted',
    'Décalé.|décalée|décaler|décalés|décalez|c’est décalé|il s’est décalé|ça s’est décalé|euh décalé|des calés|décalé merci|dékalé|décalais|de caler|oui décalé|décalage',
  ),
  ...of(
    'finish',
    'Termine.|terminer|terminé|terminez|terminée|termines|terminent|on termine|je termine|euh termine|termine merci|terre mine|ter mine|tu peux terminer|terminait|finir|termine ici',
  ),
  ...of(
    'help',
    'Aide-moi.|aide moi|aidez-moi|aide|à l’aide|aidez moi|euh aide-moi|aide-moi s’il te plaît|et de moi|aides-moi|hède moi|peux-tu aider moi|de l’aide|èdmoi',
  ),
  ...of(
    'entered',
    'Saisi.|saisie|saisis|saisit|c’est saisi|euh saisi|saisi merci|valeur saisie|voilà saisi|c’est zi|sésie|saisies|oui saisi|sézi|enregistré|c’est inscrit',
  ),
  ...of(
    'next',
    'Suivant.|suivante|suivants|au suivant|euh suivant|suivant merci|le suivant|étape suivante|suivent|objectif suivant|suivant s’il te plaît|su ivan|sui vent|la suivante|oui suivant|allez suivant',
  ),
  ...of(
    'back',
    'Précédent.|précédente|précédents|étape précédente|euh précédent|précédent merci|retour|en arrière|le précédent|précédant|prècédent|présédent|reviens',
  ),
  ...of(
    'far view',
    'Vue de loin.|vu de loin|vues de loin|vue deux loin|euh vue de loin|vue de loin merci|plein écran|vu de loing|vue éloignée|la vue de loin|vue de loin s’il te plaît|vude loin|vus de loin',
  ),
];

const set = (value: number, heard: string) => heard.split('|').map((one) => ({ value, heard: one.trim() }));

export const VALUES: readonly { readonly value: number; readonly heard: string }[] = [
  ...set(1, 'valeur plus un|plus 1|+1|valeur plus hun|plus un s’il te plaît|valeur plus 1er|plus une|je mets plus un'),
  ...set(-1, 'valeur moins un|moins 1 merci|-1|valeur -1|euh moins un|mettez moins un|moins un s il vous plaît'),
  ...set(2, 'valeur plus deux|plus d’eux|plus 2e|valeurs plus 2|mets plus deux'),
  ...set(-2, 'moins deux|valeur moins d’eux|valeur moins 2 voilà|mets à moins deux'),
  ...set(3, 'plus trois|valeur plus troie|plus trois merci|valeur +3|plus toi'),
  ...set(-3, 'valeur moins trois|moins 3|moins trois hein|valeur moins troi'),
  ...set(4, 'plus quatre|valeur plus cadre|plus 4|valeur plus quatres|plus quat'),
  ...set(-4, 'moins quatre|valeur moins katre|moins 4 s’il te plaît|main quatre'),
  ...set(5, 'plus cinq|valeur plus saint|plus sain|valeur plus sinq|plus 5'),
  ...set(-5, 'moins cinq|valeur moins sein|moins 5|valeur moin cinq|la valeur moins cinq'),
  ...set(6, 'valeur plus six|plus si|plus scie|+ 6|valeur plus sis|règle sur plus six'),
  ...set(-6, 'moins six|valeur moins ci|valeur −6|moins 6 merci'),
  ...set(7, 'plus sept|valeur plus cet|plus cette|valeur plus set|pluce 7|mets la valeur plus 7'),
  ...set(-7, 'valeur moins sept|moins cet|moins sète|moins 7'),
  ...set(8, 'plus huit|valeur plus uit|plus 8|valeur plus huite|plus huit voilà'),
  ...set(-8, 'moins huit|valeur moins 8|moins huis|valeurs moins huit'),
  ...set(9, 'plus neuf|valeur plus neufs|plus oeuf|plus 9|plus neuve'),
  ...set(-9, 'moins neuf|valeur moins 9|moins noeuf|mois neuf'),
  ...set(10, 'plus dix|valeur plus dis|plus 10|valeur plus diss|plus dix merci'),
  ...set(-10, 'moins dix|valeur moins dis|moins 10|moins disse'),
  ...set(11, 'plus onze|valeur plus onzes|plus 11|plus honze'),
  ...set(-12, 'moins douze|valeur moins 12|moins douce|moins un deux'),
  ...set(13, 'plus treize|valeur plus 13|plus treizes|plus trèze'),
  ...set(-14, 'moins quatorze|valeur moins 14|moins katorze'),
  ...set(15, 'plus quinze|valeur plus 15|plus kinze'),
  ...set(-16, 'moins seize|valeur moins 16|moins sèze|moins seizes'),
  ...set(17, 'plus dix-sept|plus dix sept|valeur plus 17|plus disset|plus dis sept'),
  ...set(-18, 'moins dix-huit|moins dix huit|valeur moins 18|moins dizuit'),
  ...set(19, 'plus dix-neuf|plus 19|valeur plus diz neuf'),
  ...set(-20, 'moins vingt|valeur moins vin|moins 20|moins vain'),
  ...set(20, 'plus vingt|valeur plus vint|+20|plus vingts'),
  ...set(0, 'valeur zéro|valeur zero|valeur 0|valeur à zéro|mets zéro s’il te plaît'),
];

/** People who talk to each other, of which two in a hundred may be acted on: some of it is a taught word and nothing else. */
export const TALK_LIKE_WORDS: readonly string[] = (
  'T’as pensé à prendre le chargeur ?|Je crois qu’il est resté dans la voiture.|Le client veut les images pour jeudi.|' +
  'On commence par le grand-angle ou par le télé ?|Attends, je change de pied.|Il faut resserrer la vis du plateau.|C’est un peu flou quand même.|' +
  'La mire n’est pas droite.|Elle est un peu penchée à gauche, non ?|Descends encore un petit peu.|Stop, c’est bon comme ça.|' +
  'Je vois rien du tout dans le viseur.|Tu me passes la lampe de poche ?|Il reste combien de temps ?|Encore dix minutes.|Moins fort, s’il te plaît.|' +
  'Plus fort.|Pas si vite.|C’est à peu près ça.|On dirait que ça marche.|Il y a du vent dehors.|Ferme les rideaux, il y a trop de lumière.|' +
  'Tu peux monter le chauffage ?|Le chien aboie encore.|Les enfants sont rentrés de l’école.|Qu’est-ce qu’on mange à midi ?|Des pâtes, comme d’habitude.|' +
  'Je prends une douche et j’arrive.|Tu as fermé la porte à clé ?|Ma mère a appelé ce matin.|Elle passe nous voir dimanche.|' +
  'C’est son anniversaire, elle a soixante-dix ans.|On lui offre quoi ?|Je sais pas, un livre peut-être.|Vingt euros chacun, ça va ?|' +
  'Allô ? Oui, c’est moi.|Je te rappelle plus tard.|Non, je suis en plein travail.|Dans une heure, d’accord.|À tout à l’heure.|Bisous.|Quelle journée.|' +
  'J’ai mal au dos.|Assieds-toi deux minutes.|Tiens, regarde l’écran.|C’est quoi ce message ?|Il demande une mise à jour.|Clique sur plus tard.|' +
  'La souris ne répond plus.|Débranche et rebranche.|Ah, ça repart.|Tant mieux.|C’est toujours pareil avec ces machines.|On en rachètera une autre.|' +
  'Ça coûte les yeux de la tête.|Le magasin ferme à sept heures.|Vas-y sans moi.|Je te rejoins là-bas.|N’oublie pas le pain.|Et du lait.|' +
  'Une bouteille ou deux ?|Deux, ça suffit.|Ok, j’y vais.|Fais attention en traversant.|Le bus est passé trop tôt.|J’ai attendu une demi-heure.|' +
  'Il y avait un accident sur la rocade.|Personne de blessé, heureusement.|Tu connais la suite.|La suite au prochain épisode.|Continuez sans moi.|' +
  'Elle continue ses études.|Le film se termine mal.|Il a répété trois fois la même question.|J’ai décalé mon rendez-vous.|On a décalé la table.|' +
  'Il a saisi l’occasion.|Les deux sont d’accord.|Tous ensemble.|Ils vivent ensemble depuis dix ans.|Ce meuble est bancal.|La chaise est bancale.|' +
  'C’est ma valeur préférée.|Il a fixé une étagère.|Prix fixe à midi.|Le feu clignote orange.|Mets ton clignotant.|La guirlande clignote.|' +
  'C’est éteint en bas ?|Tu as éteint le four ?|Oui, je l’ai éteint.|Aide-moi à plier le drap.|Tu m’aides ?|Je t’aide tout de suite.|Suivez le guide.|' +
  'Au suivant, s’il vous plaît.|Le précédent locataire fumait.|Un retour gagnant.|Le retour du printemps.|Elle est partie en pause déjeuner.|' +
  'Pause café ?|On fait une pause ?|J’annule tout.|Il a encore annulé.|Passe une bonne soirée.|Merci, toi aussi.|Vous pareillement.|' +
  'C’est identique au mien.|La vue est belle d’ici.|Il vient de loin.|On va reprendre l’apéro.|Reprends-toi.|J’ignore pourquoi.|Accepte mes excuses.|' +
  'C’est accepté partout.|Moins une.|Il était moins une.|Plus un mot.|Plus rien.|Ni plus ni moins.|Plus qu’une.|Moins que rien.|Zéro pointé.|' +
  'Valeur sûre.|Quatre à quatre.'
).split('|');

const asks = (query: string, heard: string) => heard.split('|').map((one) => ({ query, heard: one.trim() }));

/** What is looked for, as the logbook reads it. */
export const LOOKUP: readonly { readonly query: string; readonly heard: string }[] = [
  ...asks(
    '85',
    'cherche un 85|trouve-moi un quatre-vingt-cinq|recherche 85|recherche le 85|cherche le 85|euh recherche 85 s’il te plaît|recherche quatre-vingt-cinq|recherches 85|rechercher 85|trouve le 85|montre-moi le 85|tu peux chercher le 85|c’est quoi la valeur du 85|recherche octante-cinq|re cherche 85|recherché 85|quelle est la valeur du 85|recherche 85 mm',
  ),
  ...asks('50', 'recherche 50|recherche cinquante merci|cherche le cinquante|quelle valeur pour le 50|recherche cinq zéro|affiche le 50'),
  ...asks('135', 'recherche 135|recherche cent trente-cinq|recherche un trois cinq|cherche le 135 millimètres|recherche le cent trente cinq'),
  ...asks('105', 'recherche 105|cherche le cent cinq|recherche un zéro cinq'),
  ...asks('24 70', 'recherche 24-70|recherche le vingt-quatre soixante-dix|cherche le 24 70 s’il vous plaît|recherche vingt-quatre septante'),
  ...asks('70 200', 'recherche 70-200|recherche le soixante-dix deux cents|montre le 70-200'),
  ...asks('35', 'recherche trente-cinq|trouve le 35|cherche 35|donne-moi le 35'),
  ...asks('200', 'recherche deux cents|recherche 200 mm|cherche le deux cent'),
  ...asks('300', 'recherche trois cents|combien pour le 300'),
];

export const NO_LOOKUP: readonly string[] = (
  'cherche pas|je cherche mes clés|montre un peu|montre-moi la photo et le cadre|donne-moi un stylo|regarde un peu par là|trouve une chaise et une table|combien ça coûte|c’est quoi ce bruit|quel est ton nom|' +
  'affiche la photo|quelle heure est-il|regarde la lune et les étoiles|vérifie la porte|trouve-moi un chiffon|c’était quoi le nom du café|cherche encore|montre'
).split('|');
