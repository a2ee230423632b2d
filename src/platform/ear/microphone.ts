// The microphone: asked for, watched, and given back. A side panel can never show the browser's question, so a refusal
// tells whether it was never asked or was blocked.
import { failed, got, type Result } from '../../result.ts';
import type { Deaf } from '../../voice/deaf.ts';

export type NoMicrophone = Extract<Deaf, 'no microphone' | 'not asked' | 'blocked' | 'in use'>;

/** `plain`: as it comes, for comparing and measuring. `treated`: as recognisers of speech are used to. */
export type Treatment = 'plain' | 'treated';

export async function openMicrophone(treatment: Treatment = 'treated'): Promise<Result<MediaStreamTrack, NoMicrophone>> {
  try {
    const stream = await navigator.mediaDevices.getUserMedia({ audio: TREATED[treatment] });
    const [track] = stream.getAudioTracks();
    return track ? got(track) : failed('no microphone');
  } catch (error) {
    return failed(await reasonOf(error instanceof DOMException ? error.name : ''));
  }
}

/** The names are those of the standard: https://www.w3.org/TR/mediacapture-streams/#dom-mediadevices-getusermedia */
async function reasonOf(name: string): Promise<NoMicrophone> {
  if (name === 'NotReadableError' || name === 'AbortError') return 'in use';
  if (name !== 'NotAllowedError' && name !== 'SecurityError') return 'no microphone';
  return (await microphonePermission())?.state === 'denied' ? 'blocked' : 'not asked';
}

const TREATED: Record<Treatment, MediaTrackConstraints> = {
  plain: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
  treated: { echoCancellation: true, noiseSuppression: true },
};

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
