// The microphone: asked for, watched, and given back. A side panel can never show the browser's question, so a refusal
// tells whether it was never asked or was blocked.
import { failed, type Failed } from '../../result.ts';

/** `permission`: the browser does not let this page have it. `none`: there is none, or another program holds it. */
export type NoMicrophone = Failed & { readonly why: 'permission' | 'none' };

const NOT_ASKED =
  'The browser has not allowed the microphone yet, and this panel cannot ask for it. Open the microphone page and allow it there.';
const BLOCKED = 'The microphone is blocked for Sweepbook. The microphone page shows how to allow it again.';
const NONE = 'No microphone answers. Connect one, or close the program that holds it; listening then begins by itself.';

export async function openMicrophone(): Promise<{ readonly ok: true; readonly track: MediaStreamTrack } | NoMicrophone> {
  try {
    const stream = await navigator.mediaDevices.getUserMedia({ audio: { echoCancellation: true, noiseSuppression: true } });
    const [track] = stream.getAudioTracks();
    return track ? { ok: true, track } : { ...failed(NONE), why: 'none' };
  } catch (error) {
    const refused = error instanceof DOMException && (error.name === 'NotAllowedError' || error.name === 'SecurityError');
    if (!refused) return { ...failed(NONE), why: 'none' };
    const permission = await microphonePermission();
    return { ...failed(permission?.state === 'denied' ? BLOCKED : NOT_ASKED), why: 'permission' };
  }
}

/** The browser's record of what was allowed, or null where it keeps none that a page may read. */
export async function microphonePermission(): Promise<PermissionStatus | null> {
  try {
    return await navigator.permissions.query({ name: 'microphone' });
  } catch {
    return null;
  }
}

/** Resolves when the permission, or the microphones there are, have changed. */
export async function microphoneChanged(stop: AbortSignal): Promise<void> {
  const permission = await microphonePermission();
  await new Promise<void>((changed) => {
    const once = { once: true, signal: stop };
    permission?.addEventListener('change', () => changed(), once);
    navigator.mediaDevices.addEventListener('devicechange', () => changed(), once);
    stop.addEventListener('abort', () => changed(), { once: true });
    if (stop.aborted) changed();
  });
}
