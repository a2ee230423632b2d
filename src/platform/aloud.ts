// Everything that sounds, in one part: it is read when the panel stands.
export { createSounding } from './sounding.ts';
export { createSoundRoute } from './soundRoute.ts';
export { createSpeaking } from './speaking.ts';
