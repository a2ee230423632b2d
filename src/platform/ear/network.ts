// Whether the network is there, as the browser knows it. It may be wrong about "online", so only its changes are acted on.

/** Aborts when the browser tells this of the network. */
export function networkGoes(way: 'online' | 'offline', stop: AbortSignal): AbortSignal {
  const gone = new AbortController();
  addEventListener(way, () => gone.abort(), { once: true, signal: stop });
  return gone.signal;
}

export const isOffline = (): boolean => !navigator.onLine;
