// Japanese: signs, and what stands around a command or a value.
import type { SaysNothing } from '../heardLanguage.ts';

const inOne = (rows: readonly string[]): readonly string[] => rows.flatMap((row) => row.split(' '));

/** Words for the sign of a correction. */
export const SIGNS = { plus: ['プラス'], minus: ['マイナス'] } as const;
/** Between a sign and its number. */
export const TOWARDS = 'の|がわに?|そくに?|ほうこうに?';

/** What people say to whoever they tell something, and while they think, before it or after it; of a verb what makes it polite. */
const COURTESIES = inOne([
  'お願いします お願い お願いできますか を で',
  'ください てください にしてください にして にします にする にした にしました いいです いい',
  'ありがとう ありがとうございます どうも すみません すいません 頼む 頼みます',
  'はい うん ええ よし そう そうだね そうですね じゃあ じゃ では それでは それじゃ では次 まあ さて ok オーケー オーケイ オッケー オッケイ 了解 せーの',
  'えい ああ えっと えーと ええと えー えっ あの あのう その あー あっ うーん うーんと んん んんと あれ ほら おっ',
  'ね よ な さ わ ねえ よね かな かも と思う と思います と言った って言った とりあえず 一旦 ごめん 全然 全く たぶん やっぱり やっぱ 今のは 今回は さっきのは',
  'です ですね ですよ だ だね だよ だな っと ステップ',
]);

export const AROUND = {
  courtesies: COURTESIES,
  // Particles.
  articles: ['が', 'は', 'を', 'に', 'も', 'の', 'と'],
  // What makes a statement of a noun, and what points to the light.
  frames: inOne([
    'でした だった になった になりました みたい みたいです っぽい これ これは これで それ ランプ ランプは ランプが ピント ピントは ピントが カメラに がある があります あり 気味 完了 両方 両方とも の方 のほう だけ',
    'した して する します しました しよう しましょう ましょう たい たいです ちゃった てきた してる してた している していた しています していました してます できた できました た てる てた てます ている ていた ています ていました ます ました います いました いる いた',
  ]),
  // When, where and how much.
  places: ['今', '今は', 'ここ', 'ここで', 'ここは', 'また', '今度', '今度は', 'もう', '少し', 'もう少し', 'ちょっと', 'もうちょっと'],
  // "Left hand", "on the right", "come back", "next time", "same here".
  everyday: ['left', 'right', 'back', 'next', 'same'],
} as const satisfies SaysNothing;

/** What may stand before a value, and what may stand behind it. */
export const SETTING: readonly string[] = ['セット', 'セットして', 'セットは', '設定', '設定は', '値', '値は', '値を', '補正値', '補正値は', '補正', '次は'];
export const SETTING_BEHIND: readonly string[] = ['に', 'へ', 'で'].flatMap((particle) => [
  ...['セット', '設定', '変更'].flatMap((verb) => ['', 'して', 'します', 'する', 'した', 'してください'].map((ending) => particle + verb + ending)),
  ...['て', 'る', 'ます', 'た', 'てください'].map((ending) => `${particle}合わせ${ending}`),
]);
