// Spanish: how carefully and in which order. The figures are those of simulated sweeps on a range of 41 corrections.
import type { MannerWords } from '../mannerWords.ts';

export const words: MannerWords = {
  care: 'Tipo de barrido',
  cares: {
    quick: { label: 'Rápido', note: 'Termina cuando el centro se conoce con un paso de margen. Unas 9 pruebas, un minuto y medio.' },
    standard: { label: 'Normal', note: 'Se ven además los dos extremos de la banda. Unas 10 pruebas, menos de dos minutos.' },
    thorough: { label: 'Minucioso', note: 'Los valores de los dos extremos se repiten hasta que son seguros. Unas 13 pruebas, dos minutos.' },
  },
  order: 'Modo de trabajo',
  orders: {
    fewest: { label: 'Menos pruebas', note: 'Cada valor es el que más aclara en menos tiempo.' },
    outward: { label: 'Paso a paso', note: 'Un valor tras otro, hacia fuera, para ver cómo cambia la luz. Requiere más pruebas.' },
  },
};
