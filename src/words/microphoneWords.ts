// The page that asks for the microphone: what listening means, and how the permission stands.

/** Why there is no microphone, though it was asked for. */
export type MicrophoneMissing = 'no microphone' | 'in use' | 'not asked' | 'blocked';

export interface MicrophoneWords {
  readonly title: string;
  readonly means: string;
  readonly allow: string;
  readonly state: Readonly<Record<'prompt' | 'granted' | 'denied' | 'no microphone' | 'in use', string>>;
}
