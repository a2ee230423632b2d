// What is true of the ear at this moment, out of everything that bears on it.
import type { Deaf } from '../../voice/deaf.ts';
import type { Settings } from '../../settings.ts';
import type { EarState, Role } from '../session/session.ts';

export type MarkState =
  | { readonly is: 'off' }
  /** On, and nothing known to be in its way; it listens as soon as a sweep runs. */
  | { readonly is: 'ready' }
  /** The person said yes, and something is still to be done for it. */
  | { readonly is: 'begun' }
  /** The browser asks the person. */
  | { readonly is: 'asking' }
  | { readonly is: 'opening' }
  | { readonly is: 'listening' }
  /** The panel's own voice or tones: deaf for as long. */
  | { readonly is: 'speaking' }
  | { readonly is: 'opens when pressed' }
  | { readonly is: 'deaf'; readonly why: Deaf };

export interface Known {
  readonly listen: Settings['voice']['listen'];
  readonly wish: Settings['voice']['wish'];
  readonly ear: EarState;
  readonly deaf: Deaf | null;
  /** What stands in the way of listening later; null when nothing is known to. */
  readonly inTheWay: Deaf | null;
  readonly role: Role;
  readonly sweeping: boolean;
}

export function markStateOf({ listen, wish, ear, deaf, inTheWay, role, sweeping }: Known): MarkState {
  if (listen === 'off') return wish === 'none' ? { is: 'off' } : settingUp(inTheWay);
  if (deaf) return { is: 'deaf', why: deaf };
  switch (ear) {
    case 'off':
      if (sweeping && role === 'follower') return { is: 'deaf', why: 'another window' };
      return inTheWay ? { is: 'deaf', why: inTheWay } : { is: 'ready' };
    case 'unavailable':
      return { is: 'deaf', why: 'not usable' };
    case 'needs permission':
      return { is: 'deaf', why: 'not asked' };
    case 'waiting':
    case 'starting':
      return inTheWay ? { is: 'deaf', why: inTheWay } : { is: 'opening' };
    // What is in the way is known before the panel has finished speaking.
    case 'deaf while speaking':
      return inTheWay ? { is: 'deaf', why: inTheWay } : { is: 'speaking' };
    case 'asking':
    case 'listening':
    case 'opens when pressed':
      return { is: ear };
  }
}

function settingUp(inTheWay: Deaf | null): MarkState {
  if (inTheWay === null) return { is: 'begun' };
  return inTheWay === 'not asked' ? { is: 'asking' } : { is: 'deaf', why: inTheWay };
}
