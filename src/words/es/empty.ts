// Spanish: screens without content.
import type { EmptyWords } from '../emptyWords.ts';

const STATIONS = 'Dibujo: tres sitios para el trípode, en fila. El primero está hecho, el segundo es el siguiente.';

export const words: EmptyWords = {
  logbook: {
    sentence: 'Cuando termine un barrido, su objetivo aparecerá aquí con el valor que hay que introducir, la banda y el centro.',
    drawn: 'Dibujo: dos objetivos, cada uno con su valor y su banda en el rango de corrección.',
    begin: 'Empezar con un objetivo',
  },
  plan: {
    sentence: 'El plan sale de su equipo: qué medir, en el orden que menos mueve el trípode.',
    drawn: STATIONS,
    begin: 'Ir al equipo',
  },
  planned: {
    sentence: 'Elija qué medir, y el plan lo pone en el orden que menos mueve el trípode y menos cambia el equipo.',
    drawn: STATIONS,
  },
  kit: {
    sentence: 'Aquí estarán sus cuerpos y objetivos, para guardar cada valor con lo que le corresponde.',
    drawn: 'Dibujo: un cuerpo de cámara y un objetivo que encaja en él.',
    begin: 'Añadir un cuerpo',
  },
  photographs: {
    sentence: 'Fotografíe la diana impresa con enfoque automático a la abertura máxima, sin realzar la nitidez, y añada aquí las fotos.',
    drawn: 'Dibujo: una foto de la diana y la rampa, con una línea donde quedó el enfoque.',
  },
  files: {
    sentence: 'Guarde aquí el equipo y el cuaderno en un archivo, y recupérelos de uno.',
    drawn: 'Dibujo: un archivo y el cuaderno, con una flecha en cada sentido.',
  },
};
