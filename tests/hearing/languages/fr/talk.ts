// People who talk to each other, or to themselves, in French: none of it is meant for the panel.
export const TALK: readonly string[] = (
  'Bonjour, ça va ?|Oui, très bien, et toi ?|Tu veux un café ?|Je reviens dans cinq minutes.|Il fait noir ici.|Tu peux éteindre la lumière ?|Éteins la lumière s’il te plaît.|Allume la lumière.|' +
  'Où est le trépied ?|Passe-moi le tournevis.|C’est pas grave.|De rien.|Ça fait rien.|Il n’y a rien à faire.|On y va ensemble demain.|Tout droit puis à gauche.|Tournez à droite au feu.|Le train est en retard d’une heure.|' +
  'On verra plus tard.|Plus tard.|Plus ou moins.|Au moins deux fois.|Il fait moins dix dehors.|Deux plus deux font quatre.|J’en veux plus.|Moi non plus.|Il en reste plus.|De plus en plus.|Plus vite.|Encore un peu.|' +
  'C’est pareil pour moi.|Moi aussi.|Même pas.|Quand même.|Tout de même.|C’est la même chose chez nous.|Attends une seconde.|Un instant.|Deux secondes.|D’accord.|Voilà.|Merci beaucoup.|Merci.|S’il te plaît.|Bon.|Alors.|' +
  'Qu’est-ce que tu fais ce soir ?|Le chat est sur la table.|Il faut acheter des piles.|La batterie est presque vide.|La carte mémoire est pleine.|Ferme la porte.|Ouvre la fenêtre.|Regarde ça.|Tu as vu le match ?|' +
  'C’était vraiment bien hier soir.|Je suis fatigué.|Il est quelle heure ?|Il est trois heures moins le quart.|Elle arrive à huit heures.|On mange à quelle heure ?|J’ai faim.|Le téléphone sonne.|Tu peux répondre ?|' +
  'Laisse tomber.|Pas de problème.|Ça marche.|Ça passe.|C’est bon.|Parfait.|Super.|Génial.|C’est nul.|C’est banal.|N’importe quoi.|Je ne sais pas.|Je sais pas trop.|Peut-être.|Bien sûr.|Pas du tout.|Pas encore.|Bientôt.|' +
  'Je vais faire les courses.|La course à pied me fatigue.|J’ai une prise de vue demain.|Quelle belle photo.|La mise au point est fine.|Le flash ne part pas.|L’objectif est sale.|Tu as un chiffon ?|Il y a de la poussière.|' +
  'Mets-toi là.|Recule un peu.|Avance.|Ne bouge pas.|Souris.|Arrête de bouger.|Arrête.|Encore.|Maintenant.|Ici.|Là-bas.|À côté.|En face.|Dessus.|Dessous.|Six.|Trois.|Sept.|Vingt-cinq.|Deux.|Huit.|Seize.|Cent.|' +
  'Un, deux, trois.|Quatre-vingts euros.|J’ai trois enfants.|Elle a vingt ans.|Mon adresse a changé.|Il a choisi le rouge.|J’ai compris.|Tu comprends ?|Je comprends pas.|C’est compris.|On recommence.|' +
  'La suite demain.|La semaine suivante on part.|Le mois précédent était calme.|Il est de retour lundi.|J’ai fini de manger.|C’est fini ?|Tu as terminé ton travail ?|Le travail est terminé depuis hier.|' +
  'J’accepte ton invitation.|Il a accepté le poste.|Tu m’aides à porter ça ?|Aide-le avec la table.|Il m’a aidé hier.|Elle ignore tout de cette histoire.|Je l’ignorais complètement.|On a annulé le voyage.|Le vol est annulé.|' +
  'La réunion est décalée à demain.|Il répète toujours la même chose.|On répète la pièce ce soir.|Continue comme ça et tu verras.|Continuez jusqu’au rond-point.|Reprends un peu de gâteau.|Je reprends le boulot lundi.|' +
  'Fixe la planche au mur.|Le prix est fixe.|Un rendez-vous fixe.|La banque est fermée.|Le carnaval commence.|Le voisin du dessus fait du bruit.|Vu de dehors c’est joli.|Viens voir de plus près.|De loin on ne voit rien.|' +
  'Prends la première à gauche.|Il est gaucher.|Les droits de l’homme.|C’est pas droit.|Elle a raison.|Il a tort.|Je pose ça où ?|La cause est entendue.|Autre chose ?|Quelque chose.|Des roses.|La valeur du terrain.|Ça vaut combien ?|' +
  'Combien ça coûte ?|Quel temps fait-il ?|Cherche pas.|Je cherche mes clés.|Montre un peu.|Donne-moi ça.|Regarde le ciel.|Trouve-moi une chaise.|Euh.|Hum.|Ah bon ?|Oh là là.|Eh ben dis donc.|Hein ?|Quoi ?|Comment ?|Pardon.|Chut.'
).split('|');
