// Japanese: one spelling for what sounds the same: hiragana for katakana, and a long vowel as hiragana writes it.

/** By the vowel in which they end. */
export const ROWS: Readonly<Record<string, string>> = {
  あ: 'あかさたなはまやらわがざだばぱゃぁゎ',
  い: 'いきしちにひみりぎじぢびぴぃ',
  う: 'うくすつぬふむゆるぐずづぶぷゅぅゔ',
  え: 'えけせてねへめれげぜでべぺぇ',
  お: 'おこそとのほもよろをごぞどぼぽょぉ',
};

const LONG: Readonly<Record<string, string>> = { あ: 'あ', い: 'い', う: 'う', え: 'い', お: 'う' };
const SMALL: Readonly<Record<string, string>> = { ぁ: 'あ', ぃ: 'い', ぅ: 'う', ぇ: 'え', ぉ: 'お' };
const SAME: Readonly<Record<string, string>> = { ゔ: 'ぶ', ぢ: 'じ', づ: 'ず' };
const KATAKANA = 0x60;

const vowelOf = (kana: string): string | undefined => Object.keys(ROWS).find((vowel) => ROWS[vowel]?.includes(kana));

/** Katakana, long marks and drawn-out vowels as hiragana; what only draws out the end is left out. */
export const inHiragana = (text: string): string =>
  text
    .replace(/[ァ-ヶ]/g, (kana) => String.fromCharCode(kana.charCodeAt(0) - KATAKANA))
    .replace(/([ぁ-ゖ])[ー〜~っぁぃぅぇぉ]+(?![ぁ-ゖ])/g, '$1')
    .replace(/[ゔぢづ]/g, (kana) => SAME[kana] ?? kana)
    .replace(/([ぁ-ゖ])[ー〜~]+/g, (_, kana: string) => kana + (kana === 'ん' ? kana : (LONG[vowelOf(kana) ?? ''] ?? '')))
    .replace(/([ぁ-ゖ])([ぁぃぅぇぉ])/g, (pair, kana: string, small: string) => (vowelOf(kana) === SMALL[small] ? kana + SMALL[small] : pair));
