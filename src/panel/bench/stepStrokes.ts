// The small drawings of the walk as paths in a box of 96 by 64. `body` is what there is, `fine` what is written or lies on it, `way` a
// line of sight, `act` what the hand does, `full` what it touches or the eye looks for.
import type { StepPicture } from '../../optics/setUp/stepPicture.ts';

/** A path as a drawing has it, which begins where the pen is put down. */
type Path = `M${string}`;
export type StepStroke = readonly ['body' | 'fine' | 'way' | 'act' | 'full', Path];

const FRONT: Path = 'M14 20h16l6-10h24l6 10h16v38H14ZM34 38a14 14 0 1 0 28 0a14 14 0 1 0-28 0Z';
const BACK: Path = 'M14 18h18l6-8h20l6 8h18v40H14ZM24 26h38v26H24ZM42 12h12v6H42Z';
const SIDE: Path = 'M4 22h6l4-8h10l4 8v26H4ZM28 24h14v18H28Z';
const SCALE: Path = 'M28 44h30M28 40v8M35.5 42v4M43 40v8M50.5 42v4M58 40v8';
const disc = (x: number, y: number, radius: number): Path =>
  `M${x - radius} ${y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0-${2 * radius} 0Z`;

export const STEP_STROKES: Readonly<Record<StepPicture, readonly StepStroke[]>> = {
  'lamp on the screen': [
    ['body', 'M28 4h40v56H28Z'],
    ['full', disc(48, 20, 6)],
    ['fine', 'M35 36h26M35 44h26'],
  ],
  'stored value': [
    ['body', BACK],
    ['fine', SCALE],
    ['full', 'M35.5 39l-4-7h8Z'],
  ],
  level: [
    ['body', 'M34 16h22v13H34ZM56 18h10v9H56ZM48 29v6L30 61M48 35 66 61M48 35v26'],
    ['act', 'M32 4h32v8H32ZM42 4v8M54 4v8'],
    ['full', disc(48, 8, 2.6)],
  ],
  converter: [
    ['body', 'M2 20h6l4-8h10l4 8v30H2ZM64 22h28v26H64Z'],
    ['act', 'M40 25h10v20H40ZM62 35h-8m4-4-4 4 4 4M38 35h-8m4-4-4 4 4 4'],
  ],
  'zoom ring': [
    ['body', 'M8 20h20v28H8ZM52 20h34v28H52ZM60 20v7'],
    ['fine', 'M34 18v32M40 18v32M46 18v32'],
    ['act', 'M28 16h24v36H28ZM26 10c8-7 20-7 28 0m0-7v7h-7'],
  ],
  'target at lens height': [
    ['body', `${SIDE}M76 8h6v50h-6Z`],
    ['way', 'M42 33h34'],
    ['act', 'M70 33h18M79 24v18'],
  ],
  'ruler on the print': [
    ['body', 'M24 4h48v40H24Z'],
    ['fine', 'M30 36h36M30 32v8M66 32v8'],
    ['act', 'M18 46h60v14H18ZM30 46v7M36 46v4M42 46v4M48 46v7M54 46v4M60 46v4M66 46v7'],
  ],
  tape: [
    ['body', 'M4 14h6l4-7h8l4 7v20H4ZM26 16h12v14H26ZM88 4v40'],
    ['fine', 'M11 38v20M88 48v10'],
    ['act', 'M11 53h77m-6-4 6 4-6 4M17 49l-6 4 6 4'],
  ],
  'two lamps': [
    ['body', 'M4 22h10v20H4ZM14 26h12v12H14ZM84 16v32'],
    ['way', 'M26 32h58'],
    ['act', 'M44 5l10-1-4 12ZM44 59l10 1-4-12ZM56 14 76 27M56 50 76 37'],
  ],
  mirror: [
    ['body', `${SIDE}M84 6v54`],
    ['full', 'M78 25h5v16h-5Z'],
    ['act', 'M46 29h28m-5-4 5 4-5 4M74 38H46m5-4-5 4 5 4'],
  ],
  'four sides': [
    ['body', 'M30 16h36v32H30Z'],
    ['act', 'M20 16v32m-3-5 3 5 3-5M17 21l3-5 3 5M76 16v32m-3-5 3 5 3-5M73 21l3-5 3 5M30 7h36m-5-3 5 3-5 3M35 4l-5 3 5 3M30 57h36m-5-3 5 3-5 3M35 54l-5 3 5 3'],
  ],
  'returning spot': [
    ['body', `${SIDE}M84 6v54M79 25h5v16h-5Z`],
    ['full', disc(42, 50, 3)],
    ['act', 'M46 49 78 34M78 32 46 14m7 0-7 0 3 6'],
  ],
  'stabiliser off': [
    ['body', FRONT],
    ['fine', 'M8 26c-4 6-4 18 0 24M88 26c4 6 4 18 0 24'],
    ['act', 'M16 60 80 6'],
  ],
  'centre point': [
    ['body', 'M8 6h80v52H8Z'],
    ['fine', 'M22 28h8v8h-8ZM66 28h8v8h-8ZM44 12h8v8h-8ZM44 44h8v8h-8Z'],
    ['full', 'M43 27h10v10H43Z'],
  ],
  'open aperture': [
    ['body', disc(48, 32, 29)],
    ['fine', disc(48, 32, 25)],
    ['act', 'M52 28 62 18m-7 0h7v7M44 28 34 18m7 0h-7v7M52 36 62 46m-7 0h7v-7M44 36 34 46m7 0h-7v-7'],
  ],
  'rear button': [
    ['body', BACK],
    ['full', disc(71, 28, 4)],
    ['act', 'M94 28H80m5-5-5 5 5 5'],
  ],
  thermometer: [
    ['body', `M26 8a4 4 0 0 1 8 0v30a10 10 0 1 1-8 0Z${disc(68, 32, 18)}`],
    ['fine', 'M40 14h5M40 22h5M40 30h5'],
    ['full', disc(30, 46, 5.5)],
    ['act', 'M30 42V22M68 20v12l8 6'],
  ],
  'value set': [
    ['body', BACK],
    ['fine', SCALE],
    ['full', 'M43 39l-4-7h8Z'],
    ['act', 'M70 30v16m-4-4 4 4 4-4M66 34l4-4 4 4'],
  ],
  'live-view magnifier': [
    ['body', BACK],
    ['act', `${disc(42, 37, 9)}M49 44l9 9M37 37h10M42 32v10`],
  ],
  'three photographs': [
    ['body', 'M4 18h24v28H4ZM68 18h24v28H68Z'],
    ['fine', 'M12 24v16M16 24v16M20 24v16M76 24v16M80 24v16M84 24v16'],
    ['act', 'M35 12h26v40H35Z'],
    ['full', 'M46.5 20h3v24h-3Z'],
  ],
  'scale in a photograph': [
    ['body', 'M8 6h80v52H8Z'],
    ['fine', 'M24 34h48M30 31v6M36 31v6M42 31v6M48 31v6M54 31v6M60 31v6M66 31v6'],
    ['act', 'M24 26v16M72 26v16M24 50h48m-6-4 6 4-6 4M30 46l-6 4 6 4'],
  ],
  'focus switch on the lens': [
    ['body', 'M2 20h6l4-8h10l4 8v32H2ZM26 14h62v36H26ZM38 24h24v11H38Z'],
    ['fine', 'M74 14v36M80 14v36'],
    ['full', 'M50 26h10v7H50Z'],
    ['act', 'M38 42h22m-5-4 5 4-5 4'],
  ],
  'focus switch on the body': [
    ['body', `${FRONT}M66 30h10v22H66Z`],
    ['full', 'M68 42h6v8h-6Z'],
    ['act', 'M88 30v22m-4-5 4 5 4-5'],
  ],
  viewfinder: [
    ['body', 'M4 32c8-11 20-11 28 0c-8 11-20 11-28 0ZM42 8h50v48H42Z'],
    ['fine', 'M62 22h10v10H62ZM58 44l-6 4 6 4ZM76 44l6 4-6 4Z'],
    ['full', `${disc(18, 32, 4)}${disc(67, 48, 3.5)}`],
  ],
  'half-press': [
    ['body', FRONT],
    ['way', 'M12 24h22'],
    ['full', disc(73, 28, 3.5)],
    ['act', 'M23 2v14m-5-5 5 5 5-5M18 20h10'],
  ],
};
