// How alike two sounds of speech are, from where and how the mouth makes them (the articulatory features of any
// phonetics primer, such as Ladefoged, A Course in Phonetics). Weights are for a microphone across a room, where
// stressed vowels and hissing sounds carry and weak stops do not; they are from measurement, no source.

/** Height from low 0 to high 1, backness from front 0 to back 1, rounding; then where a glide ends. */
type Vowel = readonly [height: number, back: number, round: number, toHeight: number, toBack: number];
const VOWELS: Readonly<Record<string, Vowel>> = {
  i: [1, 0, 0, 1, 0],
  y: [0.8, 0.15, 0, 0.8, 0.15],
  e: [0.65, 0.05, 0, 1, 0],
  x: [0.5, 0.1, 0, 0.5, 0.1],
  a: [0.2, 0.1, 0, 0.2, 0.1],
  o: [0, 0.7, 0, 0, 0.7],
  c: [0.3, 0.95, 1, 0.3, 0.95],
  u: [0.4, 0.5, 0, 0.4, 0.5],
  w: [0.6, 0.9, 1, 0.9, 1],
  q: [0.8, 0.8, 0.7, 0.8, 0.8],
  v: [1, 0.85, 1, 1, 0.85],
  r: [0.5, 0.5, 0.3, 0.5, 0.5],
  z: [0.05, 0.5, 0, 1, 0],
  k: [0.05, 0.5, 0, 0.9, 1],
  j: [0.4, 0.95, 1, 1, 0],
};

/**
 * Stressed vowels that listeners take for each other, the commoner the cheaper (Peterson and Barney 1952, table III; the order
 * from memory), whatever the mouth does: many speakers make no difference between the first two at all.
 */
const TAKEN_FOR: Readonly<Record<string, number>> = { oc: 0.25, yx: 0.35, xa: 0.35, iy: 0.35, vq: 0.3, uq: 0.4, uo: 0.45 };
/** The corners of the vowels, which listeners hardly ever take for another (the same table). */
const CORNERS = 'ivr';
const CORNER = 0.8;

type Articulation = 'stop' | 'affricate' | 'fricative' | 'nasal' | 'liquid' | 'glide';
/** Place from the lips 0 to the throat 1. */
type Consonant = readonly [manner: Articulation, place: number, voiced: boolean, hissing?: true];
const CONSONANTS: Readonly<Record<string, Consonant>> = {
  p: ['stop', 0, false],
  b: ['stop', 0, true],
  t: ['stop', 0.4, false],
  d: ['stop', 0.4, true],
  '1': ['stop', 0.8, false],
  g: ['stop', 0.8, true],
  '2': ['affricate', 0.5, false],
  '3': ['affricate', 0.5, true],
  f: ['fricative', 0.1, false],
  '9': ['fricative', 0.1, true],
  '4': ['fricative', 0.25, false],
  '5': ['fricative', 0.25, true],
  s: ['fricative', 0.4, false, true],
  '0': ['fricative', 0.4, true, true],
  '7': ['fricative', 0.55, false, true],
  '6': ['fricative', 0.55, true, true],
  h: ['fricative', 1, false],
  m: ['nasal', 0, true],
  n: ['nasal', 0.4, true],
  '8': ['nasal', 0.8, true],
  l: ['liquid', 0.4, true],
  '@': ['liquid', 0.5, true],
  '#': ['glide', 0.1, true],
  $: ['glide', 0.6, true],
};

const MANNERS: Readonly<Record<string, number>> = {
  'affricate stop': 0.35,
  'affricate fricative': 0.3,
  'fricative stop': 0.55,
  'liquid nasal': 0.45,
  'glide nasal': 0.5,
  'glide liquid': 0.25,
  'nasal stop': 0.6,
  'fricative nasal': 0.75,
  'fricative liquid': 0.75,
  'fricative glide': 0.75,
  'liquid stop': 0.75,
  'glide stop': 0.75,
};
/** "Th" is often made, and heard, as a stop of the teeth or with the lip (Miller and Nicely 1955, tables II to V; order from memory). */
const DENTALS: Readonly<Record<string, number>> = { '4t': 0.3, '5d': 0.3, '4f': 0.25, '59': 0.25 };
/** Consonants that are nearly vowels. */
const HALF_VOWELS: Readonly<Record<string, number>> = {
  $i: 0.3,
  $y: 0.4,
  '#v': 0.3,
  '#q': 0.4,
  '@r': 0.25,
  lc: 0.6,
  lw: 0.6,
  lq: 0.6,
};
const WEAK_VOWELS = 'uyr';
const LOSSES: Readonly<Record<Articulation, number>> = {
  stop: 0.5,
  affricate: 0.65,
  fricative: 0.45,
  nasal: 0.55,
  liquid: 0.5,
  glide: 0.45,
};
const PLAIN: Readonly<Record<string, string>> = Object.fromEntries(Object.keys(VOWELS).map((vowel) => [vowel.toUpperCase(), vowel]));

/** The vowel without its stress; a consonant as it is. */
const plain = (phone: string): string => PLAIN[phone] ?? phone;

/** What it costs to take one sound for another: 0 the same, about 1 nothing alike. */
export function costOfSounds(one: string, other: string): number {
  const [a, b] = [plain(one), plain(other)];
  if (a === b) return 0;
  const [va, vb] = [VOWELS[a], VOWELS[b]];
  if (va && vb) return vowels(a, b, STRESSES[(one === a ? 0 : 1) + (other === b ? 0 : 1)] ?? 1);
  const [ca, cb] = [CONSONANTS[a], CONSONANTS[b]];
  if (ca && cb) return DENTALS[a + b] ?? DENTALS[b + a] ?? consonants(ca, cb);
  return HALF_VOWELS[a + b] ?? HALF_VOWELS[b + a] ?? 1.15;
}

/** Of neither, one of them, both: a small word beside another may have lost its stress. */
const STRESSES = [0.7, 0.95, 1.3];

function vowels(one: string, other: string, stress: number): number {
  const [a, b] = [VOWELS[one], VOWELS[other]];
  if (!a || !b) return 1.3;
  const start = Math.hypot(a[0] - b[0], a[1] - b[1], 0.4 * (a[2] - b[2]));
  const end = Math.hypot(a[3] - b[3], a[4] - b[4]);
  const coloured = one === 'r' || other === 'r';
  const made = Math.min(1.3, (0.65 * start + 0.35 * end) * stress + (coloured ? 0.15 : 0));
  if (stress < 1) return made;
  const heard = TAKEN_FOR[one + other] ?? TAKEN_FOR[other + one];
  if (heard !== undefined) return Math.min(made, heard);
  return CORNERS.includes(one) || CORNERS.includes(other) ? Math.max(made, CORNER) : made;
}

function consonants(a: Consonant, b: Consonant): number {
  const manner = a[0] === b[0] ? 0 : (MANNERS[[a[0], b[0]].toSorted().join(' ')] ?? 0.8);
  const apart = 0.9 * manner + 0.45 * Math.abs(a[1] - b[1]) + (a[2] === b[2] ? 0 : 0.2) + (a[3] === b[3] ? 0 : 0.25);
  return Math.max(0.25, Math.min(1, apart));
}

/** The sounds with a voice and an open mouth, whatever their stress. */
export const isVowel = (phone: string): boolean => plain(phone) in VOWELS;

/** How a consonant is made; null for a vowel. */
export const articulationOf = (phone: string): Articulation | null => CONSONANTS[phone]?.[0] ?? null;

/** What it costs to miss a sound by itself. */
export function loss(phone: string): number {
  const vowel = plain(phone);
  if (vowel in VOWELS) return vowel === phone ? (WEAK_VOWELS.includes(vowel) ? 0.55 : 0.75) : 1;
  if (phone === 'h') return 0.3;
  const consonant = CONSONANTS[phone];
  if (!consonant) return 0.5;
  return consonant[3] ? 0.7 : LOSSES[consonant[0]];
}
