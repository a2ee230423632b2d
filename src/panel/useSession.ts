// How a component reaches the session, the way through the panel, and what was typed on the start screen
// and at the bench.
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { BenchStore } from './bench/typed.ts';
import type { Way } from './route.ts';
import type { Session } from './session/session.ts';
import type { DraftStore } from './start/draft.ts';

export interface Surroundings {
  readonly session: Session;
  readonly way: Way;
  readonly start: DraftStore;
  readonly bench: BenchStore;
}

export const Around = createContext<Surroundings | null>(null);

export function useSurroundings(): Surroundings {
  const around = useContext(Around);
  if (around === null) throw new Error('A screen was drawn outside the panel.');
  return around;
}

export const useSession = (): Session => useSurroundings().session;
