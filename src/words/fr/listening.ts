// French: what listening by the browser's recogniser means, shown before the first yes and where the microphone is asked for.
export const LISTENING_MEANS =
  'Pour comprendre les mots, la reconnais\u00adsance vocale du navigateur écoute par le micro pendant un balayage et tant que son résultat est affiché. ' +
  'Il se peut que son éditeur envoie le son à l’un de ses serveurs. Sweepbook lui-même ne garde aucun son et n’en envoie aucun. ' +
  'Les touches, la pédale et le pointeur font tout ce que font les mots.';
