// Japanese: the kit.
import type { Lens } from '../../kit/lens.ts';
import type { KitList } from '../../kit/change.ts';
import { byUnit } from '../countryInUse.ts';
import type { KitWords } from '../kitWords.ts';
import { FIELD_FAULT } from './fieldFaults.ts';
import { write } from './write.ts';

const ITEM: Readonly<Record<KitList, string>> = { bodies: 'ボディ', lenses: 'レンズ', converters: 'コンバーター', situations: '組み合わせ' };
const LACKED = { body: 'ボディ', lens: 'レンズ', converter: 'コンバーター' } as const;

const named = (lenses: readonly Pick<Lens, 'name' | 'serial'>[]): string =>
  write.list(lenses.map(({ name, serial }) => (serial === null ? name : `${name}（${serial}）`)));

const range = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? write.number(from, 1) : `${write.number(from, 1)}〜${write.number(to, 1)}`;

export const words: KitWords = {
  title: '機材',
  lists: {
    body: { title: 'ボディ', add: 'ボディを追加', unnamed: '新しいボディ' },
    lens: { title: 'レンズ', add: 'レンズを追加', unnamed: '新しいレンズ' },
    converter: { title: 'コンバーター', add: 'コンバーターを追加', unnamed: '新しいコンバーター' },
  },
  none: 'まだありません。',
  retired: (count) => `使用終了（${write.number(count)}）`,
  save: '保存',
  retire: '使用終了にする（測定結果は残ります）',
  bringBack: '使用中に戻す',
  warning: (warning) => {
    const body = warning.body.name;
    if (warning.about === 'memory') {
      const left = warning.left === 0 ? '空きがありません' : `残りは${write.number(warning.left)}本分です`;
      return `${body}が記憶できるのはレンズ${write.number(warning.remembers)}本分で、${left}。次のレンズを設定する前に、使わなくなったレンズをボディから消去してください。`;
    }
    const lenses = named(warning.lenses);
    return warning.surely
      ? `${body}は${lenses}を区別できません。記憶される値は共通なので、使うほうの値を設定してください。`
      : `${body}では、${lenses}の値が共通になるかもしれません。ボディの説明書で確かめて、機材で指定してください。`;
  },
  fields: {
    name: '名前',
    yourName: '見分けのつく名前。',
    serial: '製造番号',
    model: '機種名（写真の記録のとおり）',
    sensor: { legend: 'センサー（mm）', width: '幅', height: '高さ' },
    scale: { legend: '補正範囲', from: '下限', to: '上限', step: '刻み' },
    remembers: { label: '記憶できるレンズの数', hint: '不明なら空欄にします。説明書に書かれています。' },
    focal: { legend: '焦点距離（mm）', hint: '単焦点レンズでは、望遠端を空欄にします。', from: '広角端', to: '望遠端' },
    widest: { legend: '開放絞り（F値）', from: '広角端', to: '望遠端' },
    get closest() {
      return byUnit({ m: '最短撮影距離（m）', ft: '最短撮影距離（ft）' });
    },
    factor: '倍率',
  },
  arrows: {
    label: '合焦ランプの両脇の矢印',
    is: { absent: '矢印なし', 'right-is-up': '右矢印：+方向へ', 'right-is-down': '右矢印：\u2212方向へ' },
  },
  zoomStore: { label: 'ズームで記憶する値', is: { one: '1つ', two: '両端に1つずつ' } },
  copies: { label: '同じレンズが2本あるとき', is: { 'not known': '不明', 'told apart': '区別する', 'share a value': '値は共通' } },
  trigger: { label: 'AFの開始', is: { 'half-press': '半押し', 'rear button': '背面ボタン' } },
  manualFocus: {
    label: 'MFへの切り替え',
    is: { 'not known': '不明', 'on the lens': 'レンズ側', 'on the body': 'ボディ側', 'on both': '両方' },
  },
  choices: '矢印、ボタン、ズーム、同じレンズ',
  card: '携帯カードを印刷',
  happened: {
    open: 'ファームウェア更新や修理を記録',
    form: '出来事',
    what: '出来事',
    is: { firmware: 'ファームウェア更新', service: '修理・点検' },
    note: 'メモ',
    save: '記録する',
    saved: '記録しました。以前の測定は要再測定になります。',
  },
  photograph: {
    title: '写真から情報を取り込む',
    choose: '写真',
    drop: '選ぶか、ここにドロップ。',
    stays: 'このコンピューター上で読み取り、どこにも送りません。',
    use: '選んだ情報を使う',
    used: '情報を機材に取り込みました。',
    fault: {
      gone: 'このファイルを読み込めません。元の場所にあるか確かめて、選び直してください。',
      'no photograph': 'このファイルは、ここで読める写真ではありません。カメラが記録したままのJPEGを選んでください。',
      'no camera data': 'この写真には撮影情報がありません。カメラが記録したままの写真を選んでください。',
      'camera data unread': 'この写真の撮影情報を読み取れません。別の写真を選んでください。',
    },
    openSituation: '記録帳でこの組み合わせを開く',
    read: ({ taken, focalLength, aperture, distance }, body, lens) =>
      [
        taken !== null && `撮影日：${write.day(taken)}。`,
        focalLength !== null && `焦点距離：${write.millimetres(focalLength)}。`,
        aperture !== null && `絞り：f/${write.number(aperture, 1)}。`,
        distance !== null && `撮影距離：${write.distance(distance)}。`,
        body === null ? 'ボディはまだ機材にありません。' : `機材のボディ：${body}。`,
        lens === null ? 'レンズはまだ機材にありません。' : `機材のレンズ：${lens}。`,
      ].filter((sentence) => sentence !== false),
    offer: (offer) => {
      switch (offer.field) {
        case 'model':
          return offer.to === 'body' ? `ボディの機種名：${offer.value}` : `レンズの機種名：${offer.value}`;
        case 'serial':
          return offer.to === 'body' ? `ボディの製造番号：${offer.value}` : `レンズの製造番号：${offer.value}`;
        case 'focal':
          return `レンズの焦点距離：${range(offer.value)}\u00a0mm`;
        case 'widest':
          return `レンズの開放絞り：f/${range(offer.value)}`;
        case 'focalLength':
          return `焦点距離：${write.millimetres(offer.value)}`;
        case 'distance':
          return `距離：${write.distance(offer.value)}`;
      }
    },
    body: 'ボディ',
    lens: 'レンズ',
  },
  fault: FIELD_FAULT,
  unsaved: (fault) => {
    switch (fault.is) {
      case 'changed elsewhere':
        return `この${ITEM[fault.list]}は別のウィンドウで変更されました。開き直してから、変更してください。`;
      case 'gone':
        return `この${ITEM[fault.list]}はもうありません。一覧を読み込み直してください。`;
      case 'situation lacks':
        return `先に、この組み合わせの${LACKED[fault.what]}を選んでください。`;
    }
  },
};
