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
