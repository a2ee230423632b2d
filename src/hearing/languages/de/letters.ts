// German: how letters sound, for words that the list does not hold. Words come in without their dots, so "ü" is sounded as "u" and "ö"
// as "o" everywhere, which keeps words that rhyme together. Only likeness is asked of it.
import type { Pronunciation } from '../pronunciation.ts';

type Rules = Pronunciation['letters'];

/** Letters and their sounds, parted by commas. */
const rules = (list: string): Rules =>
  list
    .trim()
    .split(/,\s+|\n\s*/)
    .map((rule) => rule.split(' '))
    .map(([letters = '', sounds = '']) => [letters, sounds] as const);

/** Short before two consonants, and the same vowel long. "A" hardly changes. */
const SHORT: Rules = rules(`
  a a, e x, i y, o c, u q
`);

/** Consonants that shorten the vowel before them, with their sounds. */
const CLOSING: Rules = rules(`
  cks 1s, ck 1, tz ts, sch 7, pf pf, pp p, bb b, tt t, dd d, gg g, ff f, ss s, mm m, nn n, ll l, rr @, nks 81s
  nk 81, nx 81s, ngst 8st, ngs 8s, ng 8, nz nts, nd$ nt, nd nd, nt nt, ns ns, mp mp, mt mt, ls ls, ld$ lt, lt lt
  lz lts, lf lf, lb$ lp, lb lb, lk l1, lgt l1t, lg lg, rt @t, rk @1, rn @n, rm @m, rz @ts, rf @f, rch @7
  rg$ @1, st st, ft ft, kt 1t, x 1s
`);

/** Behind "a", "o" and "u" in the throat, else at the palate. */
const CH: Rules = rules(`
  auch kh, ach ah, och ch, uch vh, ech x7, ich y7, chen$ 7un, ^ch 1, ch 7
`);

/** Endings that are never stressed. */
const WEAK_ENDS: Rules = rules(`
  ieren$ i@un, iert$ i@t, ier$ i@, ie$ i, ee$ e, eien$ zun, erung$ u@q8, ern$ rn, ert$ rt, erte$ rtu, ers$ rs
  er$ r, eln$ uln, elt$ ult, el$ ul, end$ unt, en$ un, em$ um, est$ ust, es$ us, et$ ut, e$ u, ig$ y7
  igt$ y7t, ung$ q8
`);

/** Words whose only vowel is long, or is no vowel of theirs: the rules above are for ends. */
const WHOLE: Rules = rules(`
  ^der$ de@, ^wer$ 9e@, ^er$ e@, ^den$ den, ^wen$ 9en, ^dem$ dem, ^wem$ 9em, ^es$ xs, ^des$ dxs, ^je$ $e
  ^he$ he, ^her$ he@, ^schwer$ 79e@, ^ah$ o, ^ahm$ om, ^eh$ u, ^ehm$ um, ^oh$ r, ^ohm$ rm, ^hm um
`);

/** Beginnings that are never stressed, after those that only look like them. */
const STARTS: Rules = rules(`
  ^gehe$ geu, ^gehen$ geun, ^gehs ges, ^geht$ get, ^geh$ ge, ^geb$ gep, ^gebt$ gept, ^gebe$ gebu
  ^geben$ gebun, ^gegen gegun, ^geld gxlt, ^gelb gxlp, ^gern gx@n, ^gestern gxstrn, ^gei gz, ^gest gu7t
  ^gesp gu7p, ^ge gu, ^bei bz, ^bess bxs, ^beste$ bxstu, ^bester$ bxstr, ^besten$ bxstun, ^best$ bxst
  ^best bu7t, ^bett bxt, ^berg bx@1, ^bek bu1, ^be bu, ^verst fr7t, ^versp fr7p, ^ver fr, ^zer tsr, ^erst e@st
  ^er r, ^ent xnt, ^einst zn7t, ^einge zngu, ^ange angu, ^ausge ksgu, ^auss ks0, ^vorge fw@gu, ^anst an7t
  ^aufst kf7t
`);

/** Inside the numbers, which are written in one word. */
const NUMBERS: Rules = rules(`
  funf fqnf, fumf fqnf, fuenf fqnf, zwolf ts9clf, zwoelf ts9clf, acht aht, sechs 0x1s, siebz 0ipts, sieben 0ibun
  hundert hqndrt, tausend tk0unt, unde qndu, und qnt
`);

const CONSONANTS: Rules = rules(`
  tion tsywn, tsch 2, dsch 3, sch 7, ^st 7t, ^sp 7p, chst 7st, chs 1s, ck 1, ph f, qu 19, th t, tz ts, dt t
  ng 8, nk 81, ce tsx, ci tsi, ss s, st st, sp sp, sk s1, ts ts, s$ s, b$ p, bt pt, bs ps, d$ t, g$ 1, gt 1t
`);

const DIPHTHONGS: Rules = rules(`
  eih z, ei z, ai z, ey z, ay z, au k, eu j, ieh i, ie i, aa a, ee e, oo w, ou v, ue v, oe w, ae x, ah a, eh e
  ih i, oh w, uh v
`);

const LETTER: Rules = rules(`
  a a, e e, i i, o w, u v, y y, b b, c 1, d d, f f, g g, h h, j $, k 1, l l, m m, n n, p p, q 1, r @, s 0, ß s, t t, v f, w 9, x 1s, z ts
`);

const closed: Rules = SHORT.flatMap(([vowel, sound]) => CLOSING.map(([letters, sounds]) => [vowel + letters, sound + sounds] as const));

export const LETTERS: Rules = [...WHOLE, ...STARTS, ...NUMBERS, ...WEAK_ENDS, ...CH, ...DIPHTHONGS, ...closed, ...CONSONANTS, ...LETTER];

export const ENDINGS: Pronunciation['endings'] = [
  ['e', 'u'],
  ['en', 'un'],
  ['er', 'r'],
  ['es', 'us'],
  ['em', 'um'],
  ['s', 's'],
  // "Flackernd" of "flackert".
  ['nd', 'nt'],
];

/** Beginnings that leave the stress to the next syllable, where they are no part of the stem: "gesagt", not "gestern". */
export const WEAKLY =
  /^(?:ver|zer|ent|emp|er(?!st|n|d|b)|be(?=[adefghklmnqvwz]|s[aeiopu]|r[aeiou])|ge(?=[cdfkmpqtvwz]|s[aceipu]|s[pt][aeor]|h[ao]|[lnr][aeiou]|b[alru]|g[^e])(?!stern))(?!$)/;
