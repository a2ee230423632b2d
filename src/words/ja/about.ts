// Japanese: what Sweepbook is, and what is new in it.
import type { AboutWords } from '../aboutWords.ts';

export const words: AboutWords = {
  title: 'Sweepbookについて',
  version: (version) => `バージョン${version}`,
  updated: (version) => `Sweepbookが${version}になりました：新しい点`,
  news: {
    title: '新しい点',
    of: [
      {
        version: '0.1.0',
        lines: [
          '最初のバージョンです。声、キー、スイッチ1つで測定し、すべてのレンズを記録帳に残します。',
          '写真で値を検証できます。練習用カメラで、合焦ランプの見え方を練習できます。',
        ],
      },
    ],
  },
  privacy: {
    title: 'プライバシー',
    sentences: [
      '入力した内容と測定した値は、このコンピューターのこのブラウザーの中だけに残ります。',
      'Sweepbookが自分から何かを送ることはなく、閲覧中のページを読むこともありません。',
      '外に出るのは、オンにした場合の2つだけです。ブラウザーのアカウントを通る最新の値と、ブラウザーの音声認識が提供元に送ることのある声です。',
    ],
  },
  licences: { title: 'ライセンス', about: 'Sweepbookには、ほかの人が作った部品が入っています。そのライセンスも付属しています。', open: 'ライセンスを読む' },
  fault: {
    title: '不具合の報告',
    about: '報告には、設定、バージョン、言語、保存されている件数が入ります。機材の名前、製造番号、メモは入りません。',
    give: '何も送信されません。ファイルは、助けてくれる人に渡してください。',
    save: '報告を保存',
  },
};
