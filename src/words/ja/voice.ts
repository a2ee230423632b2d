// Japanese: what the microphone mark and the voice sheet say, and what is said of a deaf ear.
import { voiceNamed } from '../named.ts';
import { taught } from '../taught.ts';
import type { VoiceWords } from '../voiceWords.ts';
import { words as first } from './first.ts';

export const words: VoiceWords = {
  mark: {
    off: first.mark.word,
    ready: '音声オン',
    begun: '準備前',
    asking: '許可待ち',
    opening: '準備中',
    listening: '聞き取り中',
    speaking: '読み上げ中',
    'opens when pressed': '押して話す',
  },
  markDeaf: {
    'no microphone': 'マイクなし',
    'not asked': '未許可',
    blocked: 'マイク拒否',
    'in use': 'マイク使用中',
    muted: 'ミュート中',
    silent: 'マイク無音',
    'no service': '応答なし',
    'no network': '通信なし',
    'no recogniser': '言葉を登録',
    'not on this computer': '準備なし',
    'to be downloaded': '要取得',
    'being downloaded': '取得中',
    'not usable': '使用不可',
    'no language': '言語非対応',
    'no words': '言葉未登録',
    'words unreadable': '再登録',
    'no sound': '入力なし',
    'held back': 'キーを押す',
    'another window': '別ウィンドウ',
    unread: '開き直す',
  },
  markSilent: { mute: '読み上げ不可', off: '音オフ' },
  marked: (shown, press) => `${shown.join('、')}：${press}`,
  means: {
    off: '音声操作はオフです。',
    ready: '音声操作はオンで、測定中に聞き取ります。',
    begun: '準備が済むまで、音声操作はオフです。',
    asking: 'ブラウザーがマイクの使用許可を求めています。',
    opening: 'マイクを準備しています。',
    listening: '聞き取り中です。',
    speaking: '読み上げ中です。その間は聞き取りません。',
    'opens when pressed': 'スイッチを押すと聞き取ります。',
  },
  deaf: {
    'no microphone': 'マイクが見つかりません。つなぐと、自動で聞き取りを始めます。',
    'not asked': 'マイクの使用がまだ許可されていません。許可すると、自動で聞き取りを始めます。',
    blocked: 'Sweepbookのマイク使用がブロックされています。許可し直す方法は、マイクのページにあります。',
    'in use': '別のプログラムが使用中のため、マイクを開けません。そのプログラムを閉じると、自動で聞き取りを始めます。',
    muted: 'マイクがミュートされています。マイク本体かシステムの音の設定で、ミュートを解除してください。',
    silent: 'マイクから音がまったく届きません。マイクの電源を入れるか、ブラウザーやシステムで別のマイクを選ぶと、自動で聞き取りを始めます。',
    'no service': 'ブラウザーの音声認識が応答しません。ネットワークを確かめるか、自分の言葉を登録してください。自動で再試行します。',
    'no network': 'ネットワークが切れています。ブラウザーの音声認識に必要です。キーは使えます。つながると、自動で聞き取りに戻ります。',
    'no recogniser': 'このブラウザーには音声認識がありません。代わりに、自分の言葉を登録してください。',
    'not on this computer':
      'このコンピューター上で使える音声認識がありません。自分の言葉を登録するか、ブラウザーの音声認識を選んでください。後者では音声が外部に送られることがあります。',
    'to be downloaded': '必要なものをダウンロードすれば、このコンピューター上で音声を認識できます。',
    'being downloaded': '音声認識に必要なものをダウンロードしています。済むと、自動で聞き取りを始めます。',
    'not usable': 'ブラウザーがここでの音声認識を許可していません。ブラウザーの設定で許可するか、自分の言葉を登録してください。',
    get 'no language'() {
      return `ブラウザーの音声認識が、ここでは${voiceNamed('ja')}に対応していません。代わりに、自分の言葉を登録してください。`;
    },
    'no words': 'まだ言葉が登録されていません。測定に使う7つの言葉を登録してください。',
    'words unreadable': '登録した言葉を読み込めません。聞き取りテストで登録し直してください。',
    'no sound': 'このブラウザーからはマイクの音を受け取れません。キー、ペダル、ポインターですべて操作できます。',
    'held back': 'パネルに触れるまで、ブラウザーがマイクの音を止めています。キーを押すか、一度クリックしてください。',
    'another window': '別のウィンドウで聞き取り中です。閉じるか、こちらで聞き取ってください。',
    unread: 'パネルの一部を読み込めません。パネルを閉じて、開き直してください。失われたものはありません。',
  },
  deafSaid: {
    'no microphone': '聞き取れません。マイクがありません。',
    'not asked': '聞き取れません。マイクが許可されていません。',
    blocked: '聞き取れません。マイクがブロックされています。',
    'in use': '聞き取れません。別のプログラムがマイクを使用中です。',
    muted: '聞き取れません。マイクがミュートされています。',
    silent: '聞き取れません。マイクから音が届きません。',
    'no service': '聞き取れません。音声認識が応答しません。',
    'no network': '聞き取れません。ネットワークが切れています。',
    'no recogniser': '聞き取れません。このブラウザーには音声認識がありません。',
    'not on this computer': '聞き取れません。このコンピューターで使える音声認識がありません。',
    'to be downloaded': '聞き取れません。音声認識がダウンロードされていません。',
    'being downloaded': 'まだ聞き取れません。音声認識をダウンロード中です。',
    'not usable': '聞き取れません。音声認識が許可されていません。',
    get 'no language'() {
      return `聞き取れません。音声認識が${voiceNamed('ja')}に対応していません。`;
    },
    'no words': '聞き取れません。言葉が登録されていません。',
    'words unreadable': '聞き取れません。登録した言葉を読み込めません。',
    'no sound': '聞き取れません。ブラウザーから音が届きません。',
    'held back': 'キーを押すまで聞き取れません。',
    'another window': '別のウィンドウで聞き取り中です。',
    unread: '聞き取れません。パネルを開き直してください。',
  },
  hearsAgain: '聞き取れるようになりました。',
  press: {
    sheet: '音声操作を開く',
    allow: 'マイクを許可',
    page: 'マイクのページを開く',
    teach: '言葉を登録',
    here: 'こちらで聞き取る',
  },
  goes: {
    browser:
      '言葉はブラウザー内蔵の音声認識が聞き取ります。音声は、ブラウザーの提供元のサーバーに送られることがあります。' +
      'Sweepbook自体は音声を保存も送信もしません。',
    here: '言葉は、このコンピューター上でブラウザーが聞き取ります。音声は外部に出ず、保存もされません。',
    own: '言葉は、このコンピューター上で、登録したときの発声と比べます。音声は外部に出ず、保存もされません。',
  },
  sheet: {
    title: '音声操作',
    get offered() {
      return `キーの代わりに「${taught('holding')}」「${taught('solid')}」「${taught('flicker')}」などと言えます。キー、ペダル、ポインターもそのまま使えます。`;
    },
    allow: '許可',
    allowAndTeach: '許可して7つの言葉を登録',
    download: 'ダウンロード',
    downloadInstead: '代わりに、ブラウザーの音声認識をダウンロード（音声は外部に出ません）',
    downloading: 'ダウンロード中',
    notDownloaded: 'ダウンロードできませんでした。ネットワークと空き容量を確かめて、もう一度試してください。',
    teachInstead: '代わりに、7つの言葉を登録（音声は外部に出ません）',
    asking: 'Sweepbookにマイクの使用を許可するか、ブラウザーが尋ねています。「許可」を選ぶと、自動で先へ進みます。',
    once: '今回だけ許可する場合は、作業中そのタブを開いたままにしてください。閉じると許可も終わります。',
    askAgain: 'もう一度尋ねる',
    refused: 'Sweepbookのマイク使用がブロックされているため、音声操作はオフのままです。ほかは変わりません。',
    howToUnblock: '許可する方法を見る',
    leaveOff: 'オフのままにする',
    on: '音声操作はオンです。',
    get trial() {
      return `「${taught('solid')}」と言って試せます。`;
    },
    heard: (word: string) => `「${word}」と聞こえました。`,
    get begin() {
      return `下のボタンで開始し、「${taught('holding')}」と言ってください。`;
    },
    get toSweep() {
      return `測定に戻り、「${taught('resume')}」と言う`;
    },
    switchOff: '音声操作をオフにする',
    checkHearing: '聞き取りテスト：騒音、言葉の登録',
    again: '再試行',
    teach: (done: number, of: number) => `${of}語のうち${done}語が登録済みです。1語につき5回言い、全部で2分足らずです。済むと自動で先へ進みます。`,
    lesson: (said) => said.map((word) => `「${word}」`).join(''),
    openLesson: '7つの言葉を登録',
  },
};
