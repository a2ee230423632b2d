// Spanish: what tells that the focus may have moved; the odds stand with what to check.
import type { Drift } from '../../sweep/end/drift.ts';
import type { Rival } from '../../sweep/end/story.ts';
import { write } from './write.ts';

const DOUBTED: Readonly<Record<Rival | 'none', string>> = {
  none: 'Es probable que el enfoque se haya movido.',
  drifting: 'El enfoque se ha movido, o la banda se desplaza al calentarse la cámara y el objetivo: estas pruebas no distinguen entre lo uno y lo otro.',
  play: 'El enfoque se ha movido, o influye el lado por el que se llega a cada valor: estas pruebas no distinguen entre lo uno y lo otro.',
};

/** `rival`: the other of two stories that the holds cannot tell apart. */
export const drifted = ({ afterHold }: Pick<Drift, 'afterHold'>, rival?: Rival): string => {
  const first = write.count(afterHold, { one: 'la primera', other: 'las # primeras' });
  return `Las últimas respuestas no concuerdan con ${first}. ${DOUBTED[rival ?? 'none']}`;
};
