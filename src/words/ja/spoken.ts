// Japanese: whatever a sweep says.
import type { NotNow, Prompt } from '../../sweep/effect.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Rival } from '../../sweep/end/story.ts';
import type { Hold } from '../../sweep/hold.ts';
import type { Suggestion } from '../../sweep/next/suggestion.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { TurnWay } from '../../sweep/transfer/turning.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import type { Steps } from '../../units.ts';
import { sayCorrection, sayNumber } from '../../hearing/languages/ja/sayCorrection.ts';
import type { InWords } from '../inWords.ts';
import type { SpokenWords } from '../spokenWords.ts';
import { taught } from '../taught.ts';
import { drifted } from './drift.ts';
import { outcome } from './outcomes.ts';
import { reason, startAloud } from './reasons.ts';
import { sentences, together } from './sentence.ts';
import { TROUBLE_SAID } from './troubleSaid.ts';
import { readBack } from './verdict.ts';
import { write } from './write.ts';

const both = (text: string): InWords => ({ spoken: text, written: text });

const sameOrShifted = (): string => `${taught('same')}、それとも${taught('shifted')}？`;

function prompt(one: Prompt): InWords {
  switch (one.say) {
    case 'opening':
      return { spoken: sentences(`${sayCorrection(one.next.value)}に合わせてください`, startAloud(one.next)), written: set(one.next) };
    case 'next':
      return next(together(noted(one.noted), found(one.trouble)), one.next);
    case 'too early':
      return tooEarly(Math.max(1, Math.ceil(one.left)));
    case 'did it hold':
      return { spoken: '安定していましたか？', written: `${writeSteps(one.value)}の時間が終わりました。ランプは安定していましたか？` };
    case 'hold again':
      return holdAgain(one.value, one.why);
    case 'offer': {
      const { spoken, written } = one.trouble ? both(TROUBLE_SAID[one.trouble.trouble]) : outcome(one.outcome);
      const look = one.look && !one.trouble ? 'ライブビューではピントが合ったままですか？' : null;
      return {
        spoken: together(noted(one.noted), spoken, look, '確定しますか？'),
        written: together(noted(one.noted), written, look, '確定しますか、続けますか？'),
      };
    }
    case 'check focus': {
      const before = together(noted(one.noted), found(one.trouble));
      return {
        spoken: together(before, DISAGREE[one.rival ?? 'none'], 'ライブビューでピントを確認してください。', sameOrShifted()),
        written: together(before, drifted(one.drift, one.rival), 'ライブビューを見てください。ピントはそのままですか、ずれましたか？'),
      };
    }
    case 'turn the focus':
      return both(
        together(
          noted(one.noted),
          one.practice ? '練習用カメラは自分でリングを回します。' : TURN[one.way],
          `済んだら「${taught('shifted')}」と言ってください。`,
        ),
      );
    case 'fresh series':
      return next('測定をやり直します。', one.next);
    case 'undone':
      return next('取り消しました。', one.next);
    case 'nothing to undo':
      return both('取り消すものがありません。');
    case 'paused':
      return both('一時停止しました。');
    case 'outcome':
      return one.trouble ? both(`${TROUBLE_SAID[one.trouble.trouble]}確認項目を見てください。`) : afterwards(one.outcome, one.practice);
    case 'not now':
      return notNow(one.why);
  }
}

const noted = (hold: Hold | null): string | null => hold && sentences(readBack(hold.verdict));
const found = (trouble: Trouble | undefined): string | null => (trouble ? TROUBLE_SAID[trouble.trouble] : null);
const set = (suggested: Suggestion): string => `${writeSteps(suggested.value)}に合わせてください：${reason(suggested)}。`;

const next = (before: string, suggested: Suggestion): InWords => ({
  spoken: together(before, sentences(sayCorrection(suggested.value))),
  written: together(before, set(suggested)),
});

/** A value is to be entered, and said to be. After a width transfer the focus still stands aside. */
function afterwards(one: Outcome, practice: boolean): InWords {
  const words = outcome(one);
  if (one.found === 'carried over') return { ...words, spoken: `${words.spoken}ライブビューでピントを合わせ直してください。` };
  if (one.found !== 'band' || practice) return words;
  return { ...words, spoken: `${sayCorrection(one.chosen)}をカメラに設定し、「${taught('entered')}」と言ってください。` };
}

const tooEarly = (left: number): InWords => ({
  spoken: `あと${write.number(left)}秒。`,
  written: `まだです。あと${write.number(left)}秒、半押しを続けてください。`,
});

function holdAgain(value: Steps, why: 'unanswered' | 'cut off'): InWords {
  const because = why === 'unanswered' ? '判定がなかったため、この半押しは数えません。' : '半押しが途中で切れたため、数えません。';
  return { spoken: sentences('もう一度', sayCorrection(value)), written: `${because}${writeSteps(value)}に合わせて、もう一度半押ししてください。` };
}

/** Where two stories fit, both are said. */
const DISAGREE: Readonly<Record<Rival | 'none', string>> = {
  none: '判定が食い違っています。',
  drifting: '判定が食い違っています。ピントが動いたか、安定域が動いています。',
  play: '判定が食い違っています。ピントが動いたか、合わせる向きで結果が変わります。',
};

const TURN: Readonly<Record<TurnWay, string>> = {
  first: 'ライブビューで、ピントがわずかに外れるまでリングを少し回してください。',
  further: 'その向きです。もう少し回してください。',
  'other way': '逆です。ピントの合う位置を越えて、反対側へ回してください。',
  back: '回しすぎです。半分戻してください。',
};

const NOT_NOW: Readonly<Record<NotNow, () => InWords>> = {
  'hold first': () => ({ spoken: '先に半押しです。', written: '半押しが始まっていません。先に始めてください。' }),
  'hold under way': () => ({ spoken: '半押し中です。', written: '半押しの途中です。先に判定するか、取り消してください。' }),
  'answer first': () => ({ spoken: '安定していましたか？', written: '先に、ランプがどう見えたかを答えてください。' }),
  'off the scale': () => ({ spoken: '補正範囲外です。', written: 'このボディにその補正値はありません。補正範囲から選んでください。' }),
  paused: () => ({ spoken: '一時停止中です。', written: '測定は一時停止中です。先に再開してください。' }),
  'not paused': () => ({ spoken: '一時停止していません。', written: '測定は一時停止していません。' }),
  finished: () => ({ spoken: '終了しています。', written: '測定は終了しています。取り消すと、測定に戻ります。' }),
  'no arrows': () => ({
    spoken: 'このボディに矢印はありません。',
    written: '機材では、このボディに矢印がないことになっています。矢印が出るなら、機材で変更してください。',
  }),
  'check focus first': () => ({ spoken: sameOrShifted(), written: '先にライブビューでピントを見てください。そのままですか、ずれましたか？' }),
  'turn first': () => ({
    spoken: '先にリングを回してください。',
    written: `先にライブビューでリングを回してください。済んだら「${taught('shifted')}」と言ってください。`,
  }),
  'nothing to check': () => ({ spoken: '確認は不要です。', written: '今、ピントの確認は必要ありません。' }),
  'nothing to enter': () => ({ spoken: '設定する値がありません。', written: 'この結果には、設定する値がありません。' }),
  'not offered': () => ({
    spoken: 'まだ確定できません。',
    written: `まだ結果が出ていません。ここまでで測定を終えるには「${taught('finish')}」と言ってください。`,
  }),
};

const notNow = (why: NotNow): InWords => NOT_NOW[why]();

function spelled(value: number): string {
  const digits = [...String(Math.abs(value))];
  const whole = sayCorrection(value);
  return digits.length < 2 ? whole : `${whole}、${digits.map((digit) => sayNumber(Number(digit))).join('、')}`;
}

export const words: SpokenWords = {
  prompt,
  correction: sayCorrection,
  brief: (one) => (one.say === 'did it hold' ? '安定？' : sentences(sayCorrection(one.next.value))),
  reason,
  outcome,
  help: (now) => both(`使える言葉は、${now.map((word) => (word === 'set' ? `「${taught('set')}」に続けて数` : taught(word))).join('、')}です。`),
  askBack: {
    // 「左ですか？」「マイナス15、1、5ですか？」
    question: ({ input, words: heard }) => ({
      spoken: `${input.told === 'set' ? spelled(input.value) : heard}ですか？`,
      written: `「${heard}」ですか？合っていればもう一度「${heard}」と、違えば「${taught('undo')}」か正しい言葉を言ってください。`,
    }),
    notTaken: { spoken: '受け付けませんでした。', written: '受け付けませんでした。正しい言葉を言ってください。' },
    sayAgain: { spoken: 'もう一度言ってください。', written: '聞き取れませんでした。もう一度言ってください。' },
  },
  mark: {
    made: (value) => ({
      spoken: `${sayCorrection(value)}を設定済みにしました。`,
      written: `${writeSteps(value)}を「カメラに設定済み」にしました。取り消すと元に戻ります。`,
    }),
    madeBefore: (value) => ({
      spoken: `${sayCorrection(value)}はもう設定済みです。`,
      written: `${writeSteps(value)}はすでに「カメラに設定済み」です。`,
    }),
    takenBack: (value) => ({ spoken: '設定済みを取り消しました。', written: `設定済みを取り消しました。${writeSteps(value)}は未設定です。` }),
  },
};
