// Which small drawing goes with a step of the set-up walk: what the hand does there, and on which part of the rig.
import type { StepSaid } from './step.ts';

export type StepPicture =
  | 'lamp on the screen'
  | 'stored value'
  | 'level'
  | 'converter'
  | 'zoom ring'
  | 'target at lens height'
  | 'ruler on the print'
  | 'tape'
  | 'two lamps'
  | 'mirror'
  | 'four sides'
  | 'returning spot'
  | 'stabiliser off'
  | 'centre point'
  | 'open aperture'
  | 'rear button'
  | 'thermometer'
  | 'value set'
  | 'live-view magnifier'
  | 'three photographs'
  | 'scale in a photograph'
  | 'focus switch on the lens'
  | 'focus switch on the body'
  | 'viewfinder'
  | 'half-press';

export function pictureOf(said: StepSaid): StepPicture {
  switch (said.id) {
    case 'practice':
      return 'lamp on the screen';
    case 'old value':
      return 'stored value';
    case 'tripod':
      return 'level';
    case 'converter':
      return 'converter';
    case 'zoom':
      return 'zoom ring';
    case 'target':
      return 'target at lens height';
    case 'print':
      return 'ruler on the print';
    case 'distance':
      return 'tape';
    case 'light':
      return 'two lamps';
    case 'square':
      return ({ mirror: 'mirror', sides: 'four sides', spot: 'returning spot' } as const)[said.by];
    case 'stabiliser':
      return 'stabiliser off';
    case 'centre point':
      return 'centre point';
    case 'aperture':
      return 'open aperture';
    case 'focus button':
      return 'rear button';
    case 'temperature':
      return 'thermometer';
    case 'start value':
      return 'value set';
    case 'critical focus':
      return said.by === 'live view' ? 'live-view magnifier' : 'three photographs';
    case 'magnification':
      return 'scale in a photograph';
    case 'hold focus':
      return said.at === 'body' ? 'focus switch on the body' : 'focus switch on the lens';
    case 'viewfinder':
      return 'viewfinder';
  }
}

/** The button that the first hold is taken with. */
export const holdPicture = (walked: readonly { readonly said: StepSaid }[]): StepPicture =>
  walked.some(({ said }) => said.id === 'focus button') ? 'rear button' : 'half-press';
