// Japanese: what asks the logbook, and what names the next lens. The verb may stand last: "85ミリを調べて".
import type { Naming, SpokenQuestion } from '../heardLanguage.ts';

export const QUESTION = {
  openings: ['検索', '記録帳'],
  everyday: ['検索して', '記録帳で', '調べて', '探して', '見せて', '教えて', '確認', '確認して', '何だっけ', 'いくつだっけ'],
  closings: [
    'を検索 を検索して で検索 で検索して 検索 検索して を調べて 調べて を探して 探して を見せて 見せて を教えて 教えて を確認',
    'の値は の値 の補正値は の補正値 はいくつ はいくつだっけ いくつだっけ いくつだった はいくつだった は何だっけ 何だっけ はどうだった',
  ].flatMap((row) => row.split(' ')),
  fillers: '検索 調べ 調べて 探して 見せて 教えて 値 補正値 補正 ミリ の を は で に と が から へ も か いくつ 何'.split(' '),
} as const satisfies SpokenQuestion;

export const NAMING: Naming = {
  openings: ['次のレンズ', '次レンズ'],
  noNames: 'は へ に へ進む に進む を で です だ お願いします をお願いします お願い ください 何 どれ どうする にする に行く へ行く'.split(' '),
  between: '[\\s、,・:]*(?:は(?![\\s、。]*$))?[\\s、,・:]*',
};
