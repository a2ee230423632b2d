// What a general recogniser writes for the taught words of Spanish: said clearly and not, in other forms, with other words around them,
// without their first sound, cut in two, or as another word that sounds like it.
import type { Word } from '../../../../src/sweep/inputs.ts';

export const TRANSCRIPTS: Readonly<Partial<Record<Word, string>>> = {
  solid:
    'Firme. | firmes | firma | firmé | fir me | filme | irme | está firme | luz firme por favor | vale, firme | es firme, creo | luz fija | la luz fija | estable',
  delayed:
    'de mora | te mora | demoras | demoró | demoraba | ha demorado | emora | una demora | con demora, eh | hay demora | tarde | llega tarde | con retraso',
  flicker:
    'parpadeo | parpadeó | parpadeando | estaba parpadeando | parpadean | ha parpadeado | para dea | par padea | parva dea | arpadea | marpadea | un parpadeo | titila | parpadea parpadea',
  nothing: 'cien luz | sin lus | sí luz | en luz | sin la luz | sin cruz | fin luz | simluz | está sin luz | no hay luz | nada de luz | apagada | no enciende',
  left: 'hizquierda | izquierdas | izquierdo | quierda | la izquierda | flecha izquierda | es izquierda | izquierda, por favor | flecha a la izquierda',
  right: 'de hecha | derechas | derecho | erecha | la derecha | flecha derecha | es derecha | pues derecha | flecha a la derecha',
  balanced: 'pareja | parejos | para ejas | por rejas | orejas | arejas | son parejas | están parejas | las dos parejas | flechas iguales',
  lopsided: 'torcida | torcidos | tor sidas | todo sidas | orcidas | están torcidas | flechas torcidas | desiguales | son desiguales',
  holding: 'mantenga | mantén | más tengo | van tengo | man tengo | bantengo | antengo | manteniendo | mantener | mantenemos | lo mantengo | vale, mantengo',
  undo: 'deshaz | deshazlo | deshace | de hacer | des hacer | desaser | desacer | eshacer | deshacemos | deshaciendo | puedes deshacer eso | quiero deshacer | borra eso',
  repeat:
    'repites | repito | repita | re pite | epite | repetir | repítelo | repetimos | repitiendo | puedes repetir | me lo repites | repite, por favor | dilo otra vez',
  pause: 'pauso | pausas | causa | bausa | vausa | ausa | pausar | pausado | en pausa | la pausa | haz una pausa | pausa, gracias',
  resume: 're toma | retomo | retoman | retomar | retomamos | etoma | reanuda | continúa | continuar | sigue | seguimos | retoma, por favor',
  skip: 'o mite | omito | omita | omiten | emite | mite | omitir | omítelo | omítela | omitiendo | omite este | sáltalo',
  accept: 'acepta | aceptar | acepte | aceptó | excepto | asepto | a cepto | haz septo | cepto | lo acepto | acéptalo | acepto, gracias',
  'go on': 'prosigo | prosiga | pro sigue | persigue | rosigue | proseguir | prosiguiendo | sigue | seguimos | continúa | quiero seguir',
  same: 'intacta | intactos | en tacto | in tacto | impacto | contacto | ntacto | está intacto | sigue igual | está igual | no se ha movido | no se movió',
  shifted: 'movida | movidos | mo vido | mobido | bebido | movió | ovido | se ha movido | se me ha movido | está movido | se movió | desplazado',
  finish: 'terminar | termino | terminado | terminando | ter mina | de mina | determina | ermina | terminamos | termina ya | termina, por favor | finalizar',
  help: 'ayudas | ayudar | ayúdame | ayuden | a yuda | hay uda | la yuda | alluda | yuda | ayuda, por favor',
  entered: 'guardada | guardados | guardando | aguardado | guardao | cuadrado | uardado | está guardado | ya está guardado | lo he guardado | anotado',
  next: 'siguientes | el siguiente | la siguiente | si gente | iguiente | siguiente paso | siguiente objetivo | próximo | siguiente, por favor',
  back: 'a tras | tras | para atrás | hacia atrás | paso atrás | atrás, por favor | regresar',
  'far view': 'engrande | en grandes | agrande | verlo en grande | vista grande | vista lejana | en grande, por favor',
};
