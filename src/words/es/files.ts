// Spanish: backups, tables, and the copies that the browser keeps.
import type { FilesWords } from '../filesWords.ts';
import { brings, item, setAside } from './restoring.ts';
import { columnSaid, lineFault } from './tableFaults.ts';
import { write } from './write.ts';

const UNCHANGED = 'Aún no se ha cambiado nada.';

export const words: FilesWords = {
  title: 'Copias y tablas',
  drop: 'Elíjala o suéltela aquí.',
  unread: 'No se puede leer este archivo. Compruebe que siga en su sitio y vuelva a elegirlo.',
  howFar: {
    writing: (share) => `Creando la copia: ${write.percent(share)}.`,
    reading: (share) => `Leyendo el archivo: ${write.percent(share)}.`,
    comparing: (share) => `Comparándola con lo que hay aquí: ${write.percent(share)}.`,
    bringing: (share) => `Recuperándola: ${write.percent(share)}.`,
  },
  backup: {
    title: 'Copia de seguridad',
    about: 'Contiene el equipo, el cuaderno y sus palabras propias. Los pequeños recortes guardados de las fotos no están en ella.',
    newest: (made) => (made === null ? 'Aún no se ha hecho ninguna copia de seguridad desde aquí.' : `La última copia de seguridad es del ${write.day(made)}.`),
    write: 'Hacer una copia',
    withoutWords: 'La copia de seguridad está hecha, pero sin sus palabras propias. Ahora no se pueden leer.',
  },
  reminder: {
    label: 'Copia de seguridad',
    unsaved: (count) =>
      write.count(count, { one: '# barrido no está en ninguna copia de seguridad.', other: '# barridos no están en ninguna copia de seguridad.' }),
    uninstall: 'Al desinstalar Sweepbook se borra el cuaderno.',
    notNow: 'Ahora no',
  },
  restore: {
    choose: 'Recuperar una copia',
    fault: {
      'too large': 'Este archivo es demasiado grande para ser una copia de seguridad. Elija uno creado por Sweepbook.',
      'no backup': 'Esto no es una copia de seguridad. Elija un archivo creado por Sweepbook.',
      damaged: 'Este archivo está incompleto o dañado. Elija otra copia de seguridad.',
      'no logbook': 'Este archivo no contiene ningún cuaderno. Elija uno creado por Sweepbook.',
      'no version': 'El cuaderno de este archivo no indica su versión. Elija un archivo creado por Sweepbook.',
      newer: 'Esta copia de seguridad es de un Sweepbook más nuevo. Actualice antes este.',
    },
    plan: (made, plan) => [`Hecha el ${write.day(made)}.`, ...brings(plan), UNCHANGED],
    taught: (count) =>
      `También contiene ${write.count(count, { one: '# palabra propia', other: '# palabras propias' })}. Si las une, una palabra que también esté enseñada aquí queda como está.`,
    conflict: 'Al unir, de los barridos en conflicto se conservan los dos. Del equipo en conflicto vale el cambio más reciente.',
    each: 'Uno por uno',
    item,
    more: (count) => write.count(count, { one: 'y # elemento más', other: 'y # elementos más' }),
    aside: setAside,
    join: 'Unir con lo que hay aquí',
    replace: 'Sustituir todo lo de aquí',
    leave: 'Dejar todo como está',
    done: 'Hecho. Abajo queda una copia de cómo estaba antes.',
    withoutWords: (why) => `El cuaderno está recuperado. ${why}`,
  },
  table: {
    title: 'Tabla',
    about: 'Cada medición, valor introducido y comprobación con fotos en una línea, para una hoja de cálculo. Las pruebas solo están en la copia de seguridad.',
    write: 'Exportar una tabla',
    choose: 'Importar una tabla',
    fault: (fault) => {
      switch (fault.is) {
        case 'open quote':
          return `Línea ${write.number(fault.line)}: hay unas comillas sin cerrar. Ciérrelas y vuelva a elegir el archivo.`;
        case 'stray quote':
          return `Línea ${write.number(fault.line)}: hay unas comillas en medio de un campo. Quítelas y vuelva a elegir el archivo.`;
        case 'empty':
          return 'Esta tabla está vacía. Necesita una línea de encabezados y una línea por cada valor.';
        case 'too many lines':
          return `Esta tabla tiene más de ${write.number(fault.most)} líneas. Divídala en otras más pequeñas.`;
      }
    },
    meanings: 'Qué significa cada encabezado',
    passedOver: 'sin usar',
    column: (number) => `Columna ${write.number(number)}`,
    meaning: ({ key, heading }) => columnSaid(key, heading),
    missing: (meanings) => `Elija qué encabezados significan esto: ${write.list(meanings)}.`,
    plan: ({ added, same, withoutValue, faults, newKit }) => [
      `${write.list([
        write.count(added, { one: '# línea nueva', other: '# líneas nuevas' }),
        `${write.number(same)} ya aquí`,
        `${write.number(withoutValue)} sin valor`,
        `${write.number(faults.length)} con algún fallo`,
      ])}.`,
      ...(newKit.length === 0 ? [] : [`Nuevo en el equipo: ${write.list(newKit)}.`]),
      UNCHANGED,
    ],
    line: lineFault,
    more: (count) => write.count(count, { one: 'y # línea más con fallos', other: 'y # líneas más con fallos' }),
    bring: 'Importar lo válido',
    done: 'La tabla está en el cuaderno.',
  },
  copies: {
    title: 'Copias en este navegador',
    none: 'Aún no hay ninguna.',
    unread: 'No se pueden leer las copias diarias. Los datos guardados no están afectados.',
    bringBack: (at) => `Recuperar la del ${write.dayAndSecond(at)}`,
    done: 'Todo está como entonces.',
  },
};
