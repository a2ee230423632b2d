// Spanish: what does not fit at the bench, and what to do about it.
import type { BenchFault, PlainFault } from '../../optics/fault.ts';
import { byUnit } from '../countryInUse.ts';
import { FROM } from './lengths.ts';
import { write } from './write.ts';

const PLAIN: Readonly<Record<PlainFault, string>> = {
  'no aperture': 'Indique la abertura como la muestra el objetivo o la cámara, por ejemplo 2,8. Está entre 0,7 y 128.',
  'no factor': 'Indique el factor grabado en el convertidor, de 1 a 3, por ejemplo 1,4.',
  'no focal length': 'Indique la distancia focal en milímetros, de 4 a 2000.',
  'focal length unread': 'Indique la distancia focal en milímetros, por ejemplo 85.',
  get 'no distance'() {
    return byUnit({ m: 'Indique la distancia en metros, de 0,05 a 500.', ft: 'Indique la distancia en pies, de 0,17 a 1640.' });
  },
  'no measured distance': 'Indique la distancia que ha medido.',
  'no reach': 'Indique en milímetros cuánto hay de la marca del plano focal al frente del objetivo, de 1 a 1000.',
  'no magnification': 'Indique la ampliación: tamaño en el sensor dividido por tamaño en la diana, de 0,0002 a 10. El tamaño natural es 1.',
  'no length on the target': 'Indique en milímetros la longitud sobre la diana, por ejemplo los 100\u00a0mm de su escala.',
  'no pixels': 'Cuente los píxeles que ocupa esa longitud en la foto a tamaño completo. Tienen que ser al menos 10.',
  'no pixels spanned': 'Indique cuántos píxeles de una foto a tamaño completo ocupa la escala.',
  'no pixel pitch': 'Indique la distancia entre píxeles en micrómetros, de 0,5 a 50.',
  'no width of a photograph': 'Indique la anchura en píxeles de una foto a tamaño completo, por ejemplo 6000.',
  'no sensor width': 'Indique la anchura del sensor en milímetros, de 4 a 100.',
  'no sensor height': 'Indique la altura del sensor en milímetros, de 3 a 100.',
  'no circle of confusion': 'Indique el círculo de confusión en milímetros, de 0,001 a 0,2. Lo habitual es 0,03.',
  'no area': 'Indique en milímetros el tamaño de la zona de AF sobre el sensor, de 0,2 a 30. Lo habitual es 2,5.',
  'no step worth': 'Indique cuánto vale un paso como parte de media profundidad de foco, de 0,01 a 1. Lo habitual es 0,125.',
  'no exposure': 'Indique el ISO, la abertura y la obturación que la cámara muestra para la diana.',
  'no iso speed': 'Indique el valor ISO como lo muestra la cámara, por ejemplo 400.',
  'no shutter': 'Indique la obturación como 1/125 para una fracción de segundo o como 2" para segundos enteros.',
  'no light value': 'Lea otra vez en la cámara el ISO, la abertura y la obturación. Ninguna sala tiene tanta ni tan poca luz.',
  'plenty below fine': 'Ponga «abundante» más alto que «suficiente».',
  'no angle': 'Indique el ángulo en grados, de \u221290 a 90.',
  'no reflection': 'Indique a cuántos píxeles del centro está el reflejo en una foto a tamaño completo.',
  'no offset on the sensor': 'Indique en milímetros la distancia al centro sobre el sensor.',
  'offset beyond the picture': 'Esa distancia es mayor que cualquier foto. Mídala otra vez desde el centro de la imagen.',
  'no spot': 'Indique en milímetros a qué distancia de su origen vuelve el punto de luz, o 0 si vuelve al origen.',
  'no sides': 'Indique las longitudes de los cuatro lados en la vista en vivo, todas mayores que cero.',
  'no rectangle': 'Indique la anchura y la altura del rectángulo en milímetros.',
  'rectangle of nothing': 'Indique la anchura y la altura del rectángulo en milímetros, ambas mayores que cero.',
  'tilt without a rig': 'Indique la abertura máxima y lo demás que esté señalado en el banco. De ahí sale la inclinación.',
  'target too large': 'La diana sería mayor que una pared. Acérquela o indique una zona de AF menor.',
  'no drawn length': 'Falta la longitud con que se dibujó la escala.',
  'no printed length': 'Indique en milímetros la longitud de la escala impresa, por ejemplo 100.',
  'no ramp line': 'Indique el número que está junto a la línea más nítida, con su signo.',
  'no ramp length': 'Indique la longitud de la rampa en milímetros.',
  'no set-back': 'Indique en milímetros cuánto más atrás está el extremo superior de la rampa que el inferior.',
  'set-back too large': 'Indique cuánto más atrás está el extremo superior de la rampa que el inferior. Es más que 0 y menos que la longitud de la rampa.',
  'lean too steep or flat': 'Incline la rampa entre 10° y 80°. Está dibujada para 45°.',
  'no share': 'Indique la parte de la profundidad de campo que queda delante del motivo, de 0 a 100.',
  'depth without end': 'Aquí la profundidad de campo no termina por detrás, así que no hay parte delantera. Abra el diafragma o acérquese.',
  'share beyond the range': 'El rango de corrección se acaba antes de llegar a esa parte. Elija una más cercana a la mitad.',
  'share without a rig': 'Ha pedido una parte de la profundidad por delante. Indique la abertura máxima en el banco para ver el valor que la da.',
  'no stored correction': 'Indique la corrección guardada ahora, por ejemplo \u22123.',
  'no such correction': 'Indique la corrección con un número entero, por ejemplo \u22123.',
  'no temperature': 'Indique la temperatura en grados Celsius, de \u221250 a 60.',
  'does not fit': 'No es válido. Revise lo que ha escrito.',
};

export function benchFault(fault: BenchFault): string {
  switch (fault.is) {
    case 'distance unread':
      return fault.unit === 'm' ? 'Indique la distancia en metros, por ejemplo 1,75.' : 'Indique la distancia en pies, por ejemplo 5,74.';
    case 'distance out of range':
      return fault.unit === 'm' ? 'Indique la distancia en metros, de 0,05 a 500.' : 'Indique la distancia en pies, de 0,17 a 1640.';
    case 'two lengths':
      return `«${fault.text}» puede ser dos longitudes. Escriba ${write.choice([write.typedLength(fault.one), write.typedLength(fault.other)])}.`;
    case 'two numbers':
      return `«${fault.text}» puede ser dos números. Escriba ${write.choice([write.typed(fault.one), write.typed(fault.other)])}.`;
    case 'focal length in another unit':
      return `Indique la distancia focal en milímetros. ${write.typedLength(fault.typed)} son ${write.number(fault.meant, 1)}.`;
    case 'focal length in metres':
      return `${write.number(fault.typed, 3)} parece estar en metros. Indique la distancia focal en milímetros, aquí ${write.number(fault.meant)}.`;
    case 'nearer than its closest focus':
      return `${write.distance(fault.wanted, fault.unit)} es menos de lo que este objetivo puede enfocar. Ponga la diana a ${write.distance(fault.closest, fault.unit)} o más, medidos desde la marca del plano focal.`;
    case 'no focus so near':
      return `Un objetivo simple de ${write.number(fault.focalLength)}\u00a0mm no puede enfocar a ${write.distance(fault.distance, 'm')} desde ${FROM[fault.from]}. Mida otra vez la distancia, o mida la ampliación en la escala de la diana.`;
    case 'tilt too large':
      return `Eso sería una inclinación de más de ${write.number(fault.most)}°. Mida otra vez los lados y revise el tamaño y la distancia de la diana.`;
    case 'print misread':
      return `Mida otra vez la escala, en milímetros, entre los bordes exteriores de sus marcas finales. Debería dar unos ${write.number(fault.drawn)}.`;
    default:
      return PLAIN[fault.is];
  }
}
