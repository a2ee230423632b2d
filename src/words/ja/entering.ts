// Japanese: what to enter for a lens on a body.
import type { MemoryPlace } from '../../logbook/entering/advice.ts';
import type { Fit } from '../../logbook/entering/band.ts';
import type { ShownThere } from '../../logbook/entering/shown.ts';
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import type { EnteringWords } from '../enteringWords.ts';
import { between, correctionBetween, focusFell, marginOf } from './focusFell.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

const KEEPS = { one: 'このボディは、レンズごとに値を1つ記憶します。', two: 'このボディは、ズームの両端に値を1つずつ記憶します。' } as const;

const WHY: Readonly<Record<MemoryPlace['uncounted'][number]['why'], string>> = {
  'never measured': '未測定',
  'only a value is known': '値だけが分かっている',
  'past the limit': '安定域が限界の先まで続く',
  'beyond the scale': '安定域が補正範囲外',
  'nothing held': '安定域なし',
};

const CAME: Readonly<Record<Measured['by'], string>> = {
  sweep: '測定',
  'by hand': '手入力',
  'from a table': '表から',
  'from another computer': '別のコンピューターから',
};

const CHECK = 'そこで写真による検証をしてください。';

const long = (focalLength: number): string => write.millimetres(millimetres(focalLength));
const where = ({ band }: Fit): string => place(band);
const missed = (fit: Fit): string => `${where(fit)}（端から${write.number(fit.past, 1)}ステップ外）`;

function lies(linear: Fit, logarithmic: Fit): readonly string[] {
  if (linear.inside && logarithmic.inside) return ['どちらもその安定域に入ります。'];
  if (!linear.inside && !logarithmic.inside) return ['どちらもその安定域に入りません。', CHECK];
  return [linear.inside ? '前者だけがその安定域に入ります。' : '後者だけがその安定域に入ります。', CHECK];
}

function bracketSaid({ subject, bracket }: ShownThere): readonly string[] {
  if (bracket === null) return [];
  const { centre, at } = bracket;
  const head = `${place(subject)}：${write.day(at)}のブラケットによる中心は${correctionBetween(centre)}です。`;
  if (bracket.is === 'alone') return [head, ...(bracket.value === null ? ['補正範囲外です。'] : [])];
  const { band, difference } = bracket;
  if (bracket.is === 'agree')
    return [head, `安定域の中心${write.signed(band, 1)}と一致します。合わせた値は${correctionBetween(bracket.joint)}で、ここではこれを使います。`];
  const apart = `${write.signed(difference.value, 1)} ± ${write.number(marginOf(difference), 1)}ステップ`;
  return [head, `安定域の中心${write.signed(band, 1)}と${apart}の差があるため、安定域だけを使います。測定環境を確かめ、両方とも測定し直してください。`];
}

function checkSaid({ subject, check }: ShownThere): string {
  if (check === null) return '';
  const { correction, bias, found, at } = check;
  const which = `${place(subject)}：${write.day(at)}の検証`;
  return found === 'confirmed'
    ? `${which}で、${writeSteps(correction)}が正しいと確認されました。`
    : `${which}で、${writeSteps(correction)}にずれが見つかりました。ピント位置は${focusFell(bias)}です。`;
}

const LEGEND = ['線：設定する値。', '中抜きの棒は、線に届かない安定域です。'];

export const words: EnteringWords = {
  title: '設定する値',
  gone: 'このボディまたはレンズは、もう機材にありません。',
  about: ({ body, lens }) => [`${pair({ lens: lens.name, body: body.name })}。`, KEEPS[body.zoomStore]],
  bare: 'レンズのみ',
  behind: (converter) => `${converter}使用時`,
  bands: '各安定域との関係',
  toPrint: '印刷用ページ',
  entered: '設定済みにする',
  enteredAt: (focalLength) => `${long(focalLength)}の値を設定済みにする`,
  weigh: {
    legend: '重みの付け方',
    by: {
      'worst share': { label: 'すべて同等', note: '最も悪い組み合わせでも、できるだけ良い値にします。' },
      use: { label: '使用頻度', note: 'よく使うものを重く見ます。' },
    },
    weightOf: (band, converter) => (converter ? `${place(band)}の使用頻度（コンバーター使用）` : `${place(band)}の使用頻度`),
    noUse: '使用頻度を0〜100で入力してください。それまでは1として数えます。',
  },
  unknown: 'ここの安定域はまだ分かりません。測定するか、安定域の両端を手入力してください。',
  missingEnd: (focalLength) => `このボディは、ズームの両端に値を1つずつ記憶します。${long(focalLength)}でも測定してください。それまでは、全体で1つの値です。`,
  enter: '設定値',
  wide: (focalLength) => `広角端${long(focalLength)}：`,
  tele: (focalLength) => `望遠端${long(focalLength)}：`,
  serves: (outside, all, weighed) => {
    if (outside === 0) return all === 1 ? '測定した唯一の安定域に入ります。' : `${write.number(all)}個の安定域すべてに入ります。`;
    return weighed
      ? `指定した重みでは、${write.number(all)}個の安定域のうち${write.number(outside)}個から外れます。`
      : `${write.number(all)}個の安定域すべてに入る値はありません。この値は${write.number(outside)}個から外れます。`;
  },
  table: { at: '測定した組み合わせ', off: '中心との差', share: '半幅に対して' },
  at: place,
  off: ({ error }) => write.signed(error, 1),
  share: ({ share, inside, past }) => (inside ? `${write.percent(share)}、域内` : `${write.percent(share)}、端から${write.number(past, 1)}外`),
  middle: ({ band, linear, logarithmic }) => [
    `両端の間の${place(band)}では、ボディは、値を焦点距離に比例させるなら${write.signed(linear.value, 1)}、その対数に比例させるなら${write.signed(logarithmic.value, 1)}を使います。`,
    'どちらであるか、メーカーは公表していません。',
    `測定値は${write.signed(band.centre, 1)}です。`,
    ...lies(linear, logarithmic),
  ],
  trade: {
    title: '各値で合う組み合わせ',
    option: ({ value, fits }) => [
      `${writeSteps(value)}で合うのは、${write.list(fits.filter(({ inside }) => inside).map(where))}です。`,
      `外れるのは、${write.list(fits.filter(({ inside }) => !inside).map(missed))}です。`,
    ],
  },
  shown: { title: '写真で分かったこと', bracket: bracketSaid, check: checkSaid },
  uncounted: (list) => `数えていないもの：${write.list(list.map((one) => `${place(one)}（${WHY[one.why]}）`))}。`,
  converter: (fNumber) => ['ボディは、レンズのみの値とは別に記憶します。', ...(fNumber === null ? [] : [`合成F値はf/${write.number(fNumber, 1)}になります。`])],
  chart: {
    one: {
      'focal length': ['棒：焦点距離ごとの安定域。', ...LEGEND],
      distance: ['棒：距離ごとの安定域。', ...LEGEND],
    },
    two: [
      '棒：焦点距離ごとの安定域。',
      '線：値を焦点距離に比例させる場合。',
      '破線：焦点距離の対数に比例させる場合。',
      '中抜きの棒は、線に届かない安定域です。',
    ],
    mark: { 'focal length': long, distance: (distance) => write.distance(millimetres(distance)) },
  },
  page: {
    title: ({ body, lens }) => pair({ lens: lens.name, body: body.name }),
    about: ({ body, lens }, printed) => [
      ...(body.serial === null ? [] : [`ボディ${body.serial}。`]),
      ...(lens.serial === null ? [] : [`レンズ${lens.serial}。`]),
      `印刷日：${write.day(printed)}。`,
      'カメラの説明書に従って設定し、写真で検証してください。',
    ],
    restsOn: (weighed) => (weighed ? '値の根拠（使用頻度で重み付け）' : '値の根拠'),
    evidence: ({ band, measured: { at, by, holds, interval, within } }, use) => [
      `${place(band)}：安定域${writeSteps(band.low)}〜${writeSteps(band.high)}。`,
      by === 'sweep' && holds !== null ? `半押し${write.number(holds)}回、${write.day(at)}。` : `${CAME[by]}、${write.day(at)}。`,
      ...(interval ? [`中心の95%区間${between(interval.from, interval.to)}。`] : []),
      ...(within === null ? [] : [`±1ステップ以内の確率${write.chance(within)}。`]),
      ...(use === null ? [] : [`重み${write.number(use, 1)}。`]),
    ],
    lensGone: 'このレンズは、もう機材にありません。このページを閉じて、記録帳から開き直してください。',
    gone: 'これはもう機材にありません。このページを閉じて、記録帳から開き直してください。',
  },
};
