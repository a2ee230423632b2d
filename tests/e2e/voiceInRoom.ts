// A person with a voice of their own, 1–3 m from the microphone in a room with a fan: teaches words there, and says them
// again from other places of such rooms.
import { join } from 'node:path';
import { chanceFrom, type Chance } from '../bench/hearing/chance.ts';
import { scaled, speechLevel } from '../bench/hearing/loudness.ts';
import { pink } from '../bench/hearing/noises.ts';
import { heardIn, rooms, type Room } from '../bench/hearing/room.ts';
import { recording } from '../bench/hearing/stream.ts';
import { TakeRecording } from '../../src/voice/ownWords/recordTake.ts';
import { takeOf, type Take } from '../../src/voice/ownWords/take.ts';
import { startSoundServer, type SoundServer } from './soundServer.ts';
import { rate, saidAlone, writeWave } from './spoken.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

/** How loud speech arrives, as a root mean square of full scale, and how far the noise lies under it. */
const SPEECH = 0.03;
const TEACHING_DECIBELS = 30;
const DECIBELS = 20;
const NOISE_SECONDS = 240;

/** Said with the tempo and pitch of the same person on another day. */
const MANNERS = [
  { pace: 130, pitch: 46 },
  { pace: 136, pitch: 50 },
  { pace: 142, pitch: 54 },
  { pace: 148, pitch: 48 },
  { pace: 154, pitch: 52 },
] as const;

/** What is taught of a word that is read so, by this voice in the first of these rooms. */
export function takesOf(word: string, read: string, voice: string, seed: number): Take[] {
  const [place] = rooms(4, seed, rate, [0.25, 0.5]);
  if (!place) throw new Error('There is no room.');
  return takesIn(place, chanceFrom(seed), word, read, voice);
}

function takesIn(room: Room, chance: Chance, word: string, read: string, voice: string): Take[] {
  return MANNERS.map((manner) => {
    const samples = saidAlone({ say: read, voice, ...manner });
    const said = recording([{ samples, label: word, room, pause: 1 }], rate, TEACHING_DECIBELS, chance);
    const take = new TakeRecording(rate).push(said.samples);
    if (!take?.stretch) throw new Error(`“${word}” was not heard.`);
    return takeOf(word, take.stretch);
  });
}

export class VoiceInRoom {
  private readonly places: readonly Room[];
  private readonly chance;
  private said = 0;
  private readonly voice: string;
  private readonly sound: SoundServer;
  private readonly folder: string;

  constructor(voice: string, sound: SoundServer, folder: string, seed: number) {
    this.voice = voice;
    this.sound = sound;
    this.folder = folder;
    this.chance = chanceFrom(seed);
    this.places = rooms(4, seed, rate, [0.25, 0.5]);
  }

  teach(word: string): Take[] {
    return takesIn(this.place(0), this.chance, word, word, this.voice);
  }

  /** The fan, until the room is closed. */
  fan(): void {
    const noise = pink(NOISE_SECONDS * rate, 5);
    const level = Math.sqrt(noise.reduce((sum, value) => sum + value * value, 0) / noise.length);
    const file = join(this.folder, 'fan.wav');
    writeWave(file, scaled(noise, (SPEECH * 10 ** (-DECIBELS / 20)) / level));
    void this.sound.play(file);
  }

  /** Says the word once, a little otherwise each time. */
  async say(word: string): Promise<void> {
    const samples = saidAlone({ say: word, voice: this.voice, pace: 132 + this.chance.whole(22), pitch: 46 + this.chance.whole(8) });
    const heard = heardIn(this.place(++this.said), samples);
    const file = join(this.folder, `${this.said}.wav`);
    writeWave(file, scaled(heard, SPEECH / speechLevel(heard, rate)));
    await this.sound.play(file);
  }

  private place(index: number): Room {
    const room = this.places[index % this.places.length];
    if (!room) throw new Error('There is no room.');
    return room;
  }
}

interface Entered {
  readonly person: VoiceInRoom;
  /** What the person is heard through. */
  readonly sound: SoundServer;
  /** Where what is said lies. */
  readonly folder: string;
}

/** A person before a microphone, who leaves when the test has finished. */
export async function enterRoom(voice: string, seed: number, onTestFinished: (leave: () => void) => void): Promise<Entered> {
  const folder = temporaryFolder();
  const sound = await startSoundServer();
  onTestFinished(() => {
    sound.close();
    removeFolder(folder);
  });
  return { person: new VoiceInRoom(voice, sound, folder, seed), sound, folder };
}
