// Spanish: what Sweepbook is, and what is new in it.
import type { AboutWords } from '../aboutWords.ts';

export const words: AboutWords = {
  title: 'Acerca de Sweepbook',
  version: (version) => `Versión ${version}`,
  updated: (version) => `Sweepbook está ahora en la versión ${version}: novedades`,
  news: {
    title: 'Novedades',
    of: [
      {
        version: '0.1.0',
        lines: [
          'La primera versión: barridos con la voz, con teclas o con un pulsador, y un cuaderno de todos los objetivos.',
          'Las fotos comprueban un valor. Una cámara de práctica muestra lo que puede hacer la luz de enfoque.',
        ],
      },
    ],
  },
  privacy: {
    title: 'Privacidad',
    sentences: [
      'Lo que usted escribe y mide se queda en este navegador, en este dispositivo.',
      'Sweepbook no envía nada por su cuenta ni lee ninguna de las páginas que visita.',
      'Solo salen de él dos cosas, y solo si usted las activa: los últimos valores, por su cuenta del navegador, y su voz, donde el reconoci\u00admiento de voz del navegador la envía a su fabricante.',
    ],
  },
  licences: { title: 'Licencias', about: 'Sweepbook contiene partes hechas por otros. Sus licencias vienen incluidas.', open: 'Leer las licencias' },
  fault: {
    title: 'Informar de un fallo',
    about: 'El informe contiene los ajustes, las versiones, los idiomas y cuánto hay guardado. No contiene nombres del equipo, números de serie ni notas.',
    give: 'No se envía nada: entregue el archivo a quien le ayude.',
    save: 'Guardar un informe',
  },
};
