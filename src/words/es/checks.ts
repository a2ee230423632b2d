// Spanish: what to check for each trouble, the likeliest first. Common practice, no source.
import type { TroubleWords } from '../troubleWords.ts';

export const CHECKS: TroubleWords['checks'] = {
  'flickers everywhere': [
    'Dé más luz a la diana, uniforme y sin reflejos.',
    'Use una diana con más contraste y mayor que el punto activo.',
    'Muchas lámparas parpadean con la red eléctrica. Use una de luz continua o la luz del día.',
    'Compruebe que no se muevan la cámara ni la diana: rótula y patas bloqueadas, sin corrientes de aire, sin manos en el objetivo.',
    'Sobre un trípode, desconecte el estabilizador.',
    'Compruebe que el objetivo, con su convertidor, sea lo bastante luminoso para enfocar por el visor.',
  ],
  'never lights': [
    'Compruebe que el punto activo esté sobre la diana y que no haya otro activo.',
    'Compruebe que la media pulsación encienda la luz de enfoque. Si el cuerpo enfoca con un botón trasero, es ese botón el que la enciende.',
    'Con algunos objetivos y cuerpos, la luz no se enciende en enfoque manual. Consulte el manual del fabricante.',
    'Vuelva a enfocar en la vista en vivo. Con mucho desenfoque no se enciende con ningún valor.',
    'Compruebe que la diana no esté más cerca de lo que el objetivo puede enfocar.',
    'Puede que el valor correcto quede fuera del rango de corrección. Si todo lo demás está bien, el conjunto necesita el servicio técnico del fabricante.',
  ],
  'lights everywhere': [
    'Compruebe que el objetivo siga en manual. Si enfoca en cada media pulsación, la luz está fija con todos los valores.',
    'Elija el enfoque sencillo, no el continuo, y mire la luz misma, sin guiarse por el pitido.',
    'Compruebe que las correcciones estén activadas para este objetivo y que el cuerpo conserve cada valor que se pone.',
    'Compruebe que solo esté activo el punto que cae sobre la diana.',
    'La profundidad de campo puede ser excesiva para el rango de corrección. Acérquese, alargue el zoom y use la abertura máxima.',
  ],
  'hole in the band': [
    'Vuelva a probar los valores del hueco. Un golpecito o un parpadeo estropean una prueba.',
    'Compruebe que nada tenga holgura: la montura, el convertidor, la rótula del trípode, la diana.',
    'Compruebe que bajo el punto activo haya un solo borde. La cámara puede confundirlo con otro borde o con un dibujo que se repite.',
    'Compruebe que la luz que llega a la diana sea constante.',
    'Si el hueco persiste, haga otro barrido antes de fiarse del centro.',
  ],
  'arrows contradict the lights': [
    'Cambie en el equipo hacia dónde manda la flecha derecha de este cuerpo. No es igual en todos los fabricantes.',
    'Compruebe que las flechas que mira sean las de la luz de enfoque y léalas con la cámara quieta.',
    'Compruebe que haya cambiado el valor y no el anillo de enfoque.',
    'Compruebe que el punto activo haya sido siempre el mismo.',
    'Si sigue ocurriendo, indique en el equipo que el cuerpo no tiene flechas. Basta con la luz.',
  ],
  'focus moved': [
    'Ponga el objetivo en manual y no deje que manos ni cables toquen el anillo. Un trozo de cinta lo sujeta.',
    'Compruebe que la rótula, las patas del trípode y la diana estén firmes.',
    'Compruebe que el objetivo y el convertidor estén bien sujetos en la montura.',
    'Deje que la cámara y el objetivo tomen la temperatura de la sala antes de enfocar.',
  ],
  'verdicts misjudged': [
    'Descanse la vista un minuto y vuelva a probar los valores dudosos.',
    'Apoye la barbilla o la cámara para que el ojo no se aparte del ocular.',
    'Baje la luz de la sala y proteja el ocular de la luz lateral.',
  ],
  'band drifts': [
    'Espere diez minutos con la cámara encendida, hasta que el cuerpo y el objetivo se calienten, y haga otro barrido.',
    'Aleje calefactores, sol y corrientes de aire de la cámara, el trípode y la diana.',
    'Introduzca el centro solo si no hay más remedio. Seguirá moviéndose.',
  ],
  play: [
    'Llegue a cada valor siempre por el mismo lado; si hace falta, páselo y retroceda.',
    'Llegue también por ese lado al valor que introduzca.',
    'Compruebe que la montura y el convertidor estén firmes.',
  ],
  'sweeps differ': [
    'Compare las notas: con otra distancia, otra diana u otra luz, el valor es otro.',
    'Compruebe que las dos veces se enfocara con la misma precisión en la vista en vivo y sin tocar después el anillo.',
    'Compare las temperaturas y piense si entretanto hubo un golpe, un firmware nuevo o una reparación.',
    'Mida una vez más, hasta ver los dos extremos, y quédese con los barridos que coinciden.',
  ],
};
