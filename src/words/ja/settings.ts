// Japanese: the settings.
import type { Settings, Theme } from '../../settings.ts';
import type { Pace } from '../../sweep/manner.ts';
import { line } from '../line.ts';
import type { Age, SettingsWords } from '../settingsWords.ts';
import { LISTENING_MEANS } from './listening.ts';
import { write } from './write.ts';

const PACED: Readonly<Record<Pace['set'], string>> = { own: '自分のペース', counted: '自動の合図' };
const LISTENS: Readonly<Record<Settings['voice']['listen'], string>> = {
  off: 'オフ',
  own: '登録した言葉',
  here: 'ブラウザー（このコンピューター上）',
  browser: 'ブラウザーの音声認識',
};
const LOOKS: Readonly<Record<Theme, string>> = { system: 'システムに合わせる', light: '明るい', dark: '暗い', dim: '減光', red: '赤' };

const age = ({ in: unit, count }: Age): string => `${write.number(count)}${unit === 'years' ? '年' : 'か月'}`;

const UNITS = { m: 'メートル', ft: 'フィート' } as const;

export const words: SettingsWords = {
  title: '設定',
  find: {
    label: '設定を検索',
    found: (count) => (count === 0 ? '合う設定がありません。別の言葉で試してください。' : `${write.number(count)}件`),
  },
  pages: { working: '測定', sound: '音', voice: '音声操作', look: '表示', language: '言語', logbook: '記録帳' },
  states: {
    working: (care, { holdTime, pace }) => line([care, write.unit(holdTime, 'second'), PACED[pace.set]]),
    sound: (speaks, tones) => line([speaks ? '値を読み上げる' : '読み上げなし', tones ? '合図音あり' : '合図音なし']),
    voice: (listen) => LISTENS[listen],
    look: (theme, far) => line([LOOKS[theme], far && '大画面表示']),
    language: (screens, voice) => line([screens, voice !== null && `音声：${voice}`]),
    logbook: (after, carried) => line([after !== null && `${age(after)}で要再測定`, carried && 'コンピューター間で共有']),
  },
  working: {
    holdTime: (time) => `半押し時間：${write.unit(time, 'second')}`,
    holdTimeNote: '5秒が一般的です。',
    pace: 'ペース',
    paces: {
      own: { label: '自分のペース', note: 'ボタンか言葉で半押しを始めます。' },
      counted: { label: '自動の合図', note: '値を合わせる時間のあと、3つの合図音に続いて半押しが始まります。' },
    },
    toDial: (time) => `値を合わせる時間：${write.unit(time, 'second')}`,
    seconds: (time) => write.unit(time, 'second'),
  },
  shortcut: {
    title: 'パネルを開くショートカットキー',
    change: 'ショートカットキーを変更',
    where: 'ブラウザーのアドオン管理画面で、歯車のアイコンから変更します。',
  },
  sound: {
    speak: '値を読み上げる',
    tones: { label: '合図音', note: '半押しの開始と終了、判定を受け付けたときと受け付けないときに鳴ります。' },
    rate: '読み上げの速さ',
    rates: { slow: '遅い', own: '標準', brisk: 'やや速い', fast: '速い' },
    voice: '読み上げの声',
    anyVoice: 'コンピューターに任せる',
  },
  look: {
    theme: '配色',
    themes: {
      system: { label: 'システムに合わせる' },
      light: { label: '明るい' },
      dark: { label: '暗い' },
      dim: { label: '減光', note: '暗いスタジオ向け。まぶしいものを表示しません。' },
      red: { label: '赤', note: '赤だけを使い、暗さに慣れた目を保ちます。' },
    },
    far: { label: '大画面表示', note: '測定をパネルいっぱいに表示し、三脚の位置から読めるようにします。言葉、キー、値を押すことでも切り替わります。' },
  },
  language: {
    screens: '画面の言語',
    browser: (language) => `ブラウザーと同じ：${language}`,
    voice: '読み上げと聞き取り',
    asScreens: '画面の言語と同じ',
    note: '登録した言葉は、言語ごとに別です。',
    distances: '距離の単位',
    units: UNITS,
    asCountry: (unit) => `お住まいの国の標準：${UNITS[unit]}`,
  },
  again: {
    title: '要再測定',
    after: '測定の有効期間',
    age,
  },
  backup: {
    title: 'バックアップ',
    remind: { label: 'バックアップを促す', note: '新しい記録が5件になったとき、または30日たったときに表示します。Sweepbookを削除すると、記録帳も消えます。' },
  },
  computers: {
    title: 'ほかのコンピューター',
    carry: {
      label: '最新の値を共有する',
      note:
        'ブラウザーのアカウントを通じて共有します。このコンピューターから出るのは、組み合わせごとの最新の値と日付、ボディとレンズの名前、' +
        '焦点距離、距離だけです。測定の記録、メモ、製造番号は出ません。使うコンピューターすべてでオンにしてください。' +
        'オフにすると、このコンピューターの値をアカウントから取り除きます。',
    },
  },
  listening: {
    title: '音声操作',
    by: '言葉の聞き取り',
    recognisers: {
      off: { label: 'なし', note: 'キー、ペダル、ポインターですべて操作できます。' },
      own: { label: '登録した言葉で', note: '音声はこのコンピューターから出ません。言葉は聞き取りテストで登録します。' },
      here: { label: 'ブラウザーで、このコンピューター上のみ', note: 'ブラウザーの準備ができている場合だけ使えます。何もダウンロードしません。' },
      browser: { label: 'ブラウザー内蔵の音声認識で', note: LISTENING_MEANS },
    },
    noRecogniser: 'このブラウザーには音声認識がありません。',
    open: '聞き取るとき',
    openings: {
      always: { label: '測定中いつも' },
      pressed: {
        label: 'スイッチを押したとき',
        note: '騒がしい部屋向け。スイッチを押してから、または押しながら話します。この設定では、スイッチにほかの働きはありません。',
      },
    },
    learn: {
      label: '正しかった言葉から学習する',
      note: '受け付けて取り消されなかった言葉を、次の測定から認識に役立てます。学習した内容は聞き取りテストで消せます。',
    },
    check: '聞き取りテスト：マイク、騒音、言葉の登録',
    kept: '測定中に聞き取った言葉は、半押しの記録とともにこのブラウザーとバックアップに残ります。音声は残りません。',
    erase: '聞き取った言葉を消去',
    erased: '聞き取った言葉を消去しました。半押しと判定はすべて残っています。',
  },
};
