// What a microphone hears beside words: the room's noise, and the sounds a camera and a laptop make.
import { chanceFrom } from './chance.ts';

/** Pink noise: white noise through Kellet's three-pole filter; a room with a fan is close to it. */
export function pink(length: number, seed: number): Float32Array {
  const chance = chanceFrom(seed);
  const out = new Float32Array(length);
  let a = 0;
  let b = 0;
  let c = 0;
  for (let i = 0; i < length; i++) {
    const white = chance.gaussian();
    a = 0.99765 * a + white * 0.099046;
    b = 0.963 * b + white * 0.2965164;
    c = 0.57 * c + white * 1.0526913;
    out[i] = a + b + c + white * 0.1848;
  }
  return out;
}

/** Mirror and shutter: two or three damped bursts. */
export function shutter(rate: number, seed: number): Float32Array {
  const chance = chanceFrom(seed);
  const out = new Float32Array(Math.floor(rate * 0.35));
  const bursts = 2 + chance.whole(2);
  let at = 0.01;
  for (let burst = 0; burst < bursts; burst++) {
    const low = chance.between(700, 3200);
    const high = chance.between(2500, 6000);
    const fall = chance.between(0.006, 0.026);
    const loud = chance.between(0.5, 1);
    const first = Math.floor(at * rate);
    for (let i = first; i < out.length; i++) {
      const t = (i - first) / rate;
      if (t > 8 * fall) break;
      const sound = 0.5 * chance.gaussian() + 0.4 * Math.sin(2 * Math.PI * low * t) + 0.3 * Math.sin(2 * Math.PI * high * t);
      out[i] = out[i]! + loud * Math.exp(-t / fall) * sound;
    }
    at += chance.between(0.03, 0.12);
  }
  return out;
}

/** A key struck and let go: two clicks, each a few milliseconds of noise and of the keyboard's ring. */
export function key(rate: number, seed: number): Float32Array {
  const chance = chanceFrom(seed);
  const out = new Float32Array(Math.floor(rate * 0.25));
  const ring = chance.between(1200, Math.min(5000, rate * 0.45));
  let at = 0.005;
  for (const loud of [1, chance.between(0.2, 0.7)]) {
    const fall = chance.between(0.002, 0.008);
    const first = Math.floor(at * rate);
    for (let i = first; i < out.length && i < first + 8 * fall * rate; i++) {
      const t = (i - first) / rate;
      out[i] = out[i]! + loud * Math.exp(-t / fall) * (chance.gaussian() + 0.6 * Math.sin(2 * Math.PI * ring * t));
    }
    at += chance.between(0.06, 0.14);
  }
  return out;
}

/**
 * A cough: a burst of breath, a fall, and mostly a voiced end (Korpáš, Sadloňová and Vrabec 1996: the three phases of a
 * cough's sound).
 */
export function cough(rate: number, seed: number): Float32Array {
  const chance = chanceFrom(seed);
  const [burst, fall] = [chance.between(0.03, 0.07), chance.between(0.06, 0.14)];
  const voiced = chance.next() < 0.7 ? chance.between(0.06, 0.14) : 0;
  const pitch = chance.between(140, 320);
  const [turn, width] = [(2 * Math.PI * chance.between(500, 1400)) / rate, Math.exp((-Math.PI * 500) / rate)];
  const out = new Float32Array(Math.floor(rate * (burst + fall + voiced + 0.02)));
  let [one, two] = [0, 0];
  for (let i = 0; i < out.length; i++) {
    const t = i / rate;
    const breath = t < burst ? Math.min(1, t / 0.008) : Math.exp((burst - t) / (fall / 2.5));
    const late = t - burst - 0.6 * fall;
    const voice = late > 0 && late < voiced + 0.4 * fall ? 0.35 * Math.sin((Math.PI * late) / (voiced + 0.4 * fall)) : 0;
    const buzz = voice * 6 * ((late * pitch) % 1 < 0.12 ? 1 : -0.136);
    const driven = breath * chance.gaussian() + buzz;
    [one, two] = [driven + 2 * width * Math.cos(turn) * one - width * width * two, one];
    out[i] = 0.15 * (one + 0.8 * driven);
  }
  return out;
}

/** One to three beeps of one pitch, as a focus confirmation makes. */
export function beeps(rate: number, seed: number): Float32Array {
  const chance = chanceFrom(seed);
  const count = 1 + chance.whole(3);
  const pitch = chance.between(1500, Math.min(4100, rate * 0.45));
  const on = chance.between(0.05, 0.13);
  const out = new Float32Array(Math.floor(rate * (count * (on + 0.07) + 0.05)));
  for (let beep = 0; beep < count; beep++) {
    for (let i = 0; i < on * rate; i++) {
      const at = Math.floor(beep * (on + 0.07) * rate) + i;
      out[at] = 0.7 * Math.sin((2 * Math.PI * pitch * i) / rate) * Math.min(1, i / 60, (on * rate - i) / 60);
    }
  }
  return out;
}

/** A lens drive: a short buzzing chirp. */
export function drive(rate: number, seed: number): Float32Array {
  const chance = chanceFrom(seed);
  const length = Math.floor(rate * chance.between(0.15, 0.5));
  const pitch = chance.between(250, 750);
  const out = new Float32Array(length);
  let phase = 0;
  for (let i = 0; i < length; i++) {
    phase += (2 * Math.PI * pitch * (1 + (0.4 * i) / length)) / rate;
    const sound = Math.sin(phase) + 0.5 * Math.sin(2 * phase) + 0.35 * Math.sin(3.01 * phase) + 0.25 * Math.sin(5.02 * phase);
    out[i] = 0.4 * (sound + 0.15 * chance.gaussian()) * Math.min(1, i / 200, (length - i) / 200);
  }
  return out;
}
