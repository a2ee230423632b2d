// English: how letters sound, for words that the list does not hold. Only likeness is asked of it.
import type { Pronunciation } from '../pronunciation.ts';

export const LETTERS: Pronunciation['letters'] = [
  ['ge$', '3'], ['ce$', 's'], ['^kn', 'n'], ['^wr', '@'], ['^gn', 'n'], ['^ps', 's'], ['^a$', 'u'], ['^re', '@i'],
  ['^de', 'dy'], ['^un', 'un'], ['^be', 'by'], ['^e', 'x'], ['ation', 'e7un'], ['tion', '7un'], ['sion', '6un'],
  ['cious', '7us'], ['tious', '7us'], ['ture', '2r'], ['ought', 'ct'], ['aught', 'ct'], ['ight', 'zt'], ['igh', 'z'],
  ['eigh', 'e'], ['ould', 'qd'], ['tch', '2'], ['dge', '3'], ['sch', 's1'], ['ous$', 'us'], ['able$', 'ubul'],
  ['ible$', 'ubul'], ['le$', 'ul'], ['ey$', 'i'], ['ies$', 'i0'], ['ing$', 'y8'], ['ings$', 'y80'], ['age$', 'y3'],
  ['ness$', 'nus'], ['less$', 'lus'], ['ful$', 'ful'], ['al$', 'ul'], ['ted$', 'tud'], ['ded$', 'dud'],
  ['ped$', 'pt'], ['ked$', '1t'], ['ssed$', 'st'], ['ed$', 'd'], ['er$', 'r'], ['ers$', 'r0'], ['or$', 'r'],
  ['ar$', 'r'], ['ent$', 'unt'], ['ence$', 'uns'], ['ance$', 'uns'], ['ant$', 'unt'], ['en$', 'un'], ['on$', 'un'],
  ['y$', 'i'], ['ave$', 'e9'], ['ade$', 'ed'], ['ake$', 'e1'], ['ale$', 'el'], ['ame$', 'em'], ['ane$', 'en'],
  ['ape$', 'ep'], ['ase$', 'es'], ['ate$', 'et'], ['ace$', 'es'], ['aze$', 'e0'], ['are$', 'x@'], ['ite$', 'zt'],
  ['ide$', 'zd'], ['ike$', 'z1'], ['ile$', 'zl'], ['ime$', 'zm'], ['ine$', 'zn'], ['ipe$', 'zp'], ['ire$', 'zr'],
  ['ise$', 'z0'], ['ize$', 'z0'], ['ice$', 'zs'], ['ive$', 'y9'], ['ose$', 'w0'], ['one$', 'wn'], ['ope$', 'wp'],
  ['ode$', 'wd'], ['oke$', 'w1'], ['ole$', 'wl'], ['ome$', 'wm'], ['ore$', 'c@'], ['ote$', 'wt'], ['ove$', 'w9'],
  ['une$', 'vn'], ['use$', 'v0'], ['ute$', 'vt'], ['ude$', 'vd'], ['ume$', 'vm'], ['ure$', '$q@'], ['ete$', 'it'],
  ['ene$', 'in'], ['ere$', 'y@'], ['ese$', 'i0'], ['uce$', 'vs'], ['all', 'cl'], ['alk', 'c1'], ['war', '#c@'],
  ['wor', '#r'], ['ear', 'y@'], ['eer', 'y@'], ['air', 'x@'], ['oor', 'c@'], ['our', 'c@'], ['ee', 'i'], ['ea', 'i'],
  ['oo', 'v'], ['ou', 'k'], ['ow', 'w'], ['ai', 'e'], ['ay', 'e'], ['oy', 'j'], ['oi', 'j'], ['oa', 'w'], ['au', 'c'],
  ['aw', 'c'], ['ew', 'v'], ['ie', 'i'], ['ei', 'e'], ['ue$', 'v'], ['ui', 'v'], ['er', 'r'], ['ir', 'r'],
  ['ur', 'r'], ['ar', 'o@'], ['or', 'c@'], ['sh', '7'], ['ch', '2'], ['th', '4'], ['ph', 'f'], ['ck', '1'],
  ['ng', '8'], ['nk', '81'], ['qu', '1#'], ['wh', '#'], ['gh', ''], ['ce', 'sx'], ['ci', 'sy'], ['cy', 'si'],
  ['ge', '3x'], ['gi', '3y'], ['x', '1s'], ['mb$', 'm'], ['bs$', 'b0'], ['ds$', 'd0'], ['gs$', 'g0'], ['ls$', 'l0'],
  ['ms$', 'm0'], ['ns$', 'n0'], ['rs$', '@0'], ['es$', '0'], ['e$', ''], ['o$', 'w'], ['i$', 'i'], ['a$', 'u'],
  ['a', 'a'], ['e', 'x'], ['i', 'y'], ['o', 'o'], ['u', 'u'], ['^y', '$'], ['y', 'y'], ['b', 'b'], ['c', '1'],
  ['d', 'd'], ['f', 'f'], ['g', 'g'], ['h', 'h'], ['j', '3'], ['k', '1'], ['l', 'l'], ['m', 'm'], ['n', 'n'],
  ['p', 'p'], ['q', '1'], ['r', '@'], ['s', 's'], ['t', 't'], ['v', '9'], ['w', '#'], ['z', '0'],
];

export const ENDINGS: Pronunciation['endings'] = [
  ['ks', '1s'], ['s', '0'], ['ing', 'y8'], ['ed', 'd'], ['er', 'r'], ['ers', 'r0'], ['ly', 'li'], ['in', 'yn'],
];

/** Every consonant. */
export const DOUBLED = 'bcdfghjklmnpqrstvwxyz';
