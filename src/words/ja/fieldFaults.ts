// Japanese: what does not fit a field of the kit, in a form or in a file.
import type { FieldFault } from '../../kit/fault.ts';
import { byUnit } from '../countryInUse.ts';

export const FIELD_FAULT: Readonly<Record<FieldFault, string>> = {
  'no name': '見分けのつく名前を付けてください。',
  'name too long': '名前は60文字以内にしてください。',
  'engraving empty': '空欄にするか、カメラやレンズの刻印を写してください。',
  'engraving too long': '60文字以内にしてください。',
  'note too long': '2000文字以内にしてください。',
  'no focal length': '焦点距離を4〜2000\u00a0mmの範囲で入力してください。',
  get 'no distance'() {
    return byUnit({ m: '距離を0.05〜500\u00a0mの範囲で入力してください。', ft: '距離を0.17〜1640\u00a0ftの範囲で入力してください。' });
  },
  'no sensor size': 'センサーの幅と高さをミリメートルで入力してください。',
  'sensor too small': 'センサーの幅と高さは4\u00a0mm以上です。',
  'sensor too large': 'センサーの幅と高さは70\u00a0mm以下です。',
  'remembers no number': '記憶できるレンズの数を整数で入力してください。',
  'remembers too few': 'レンズの数は1以上を入力してください。',
  'remembers too many': 'レンズの数は1000以下を入力してください。',
  'no aperture': '絞りを1.8のようなF値で入力してください。',
  'aperture too wide': '開放絞りはf/0.5以上の値にしてください。',
  'aperture too narrow': '開放絞りはf/64以下の値にしてください。',
  'focal lengths turned round': '短いほうの焦点距離を先に入力してください。',
  'no factor': '倍率を1.4のように入力してください。',
  'factor too small': '倍率は0.5以上です。',
  'factor too large': '倍率は4以下です。',
  'no lowest correction': '補正値の下限を\u221220のような整数で入力してください。',
  'no highest correction': '補正値の上限を20のような整数で入力してください。',
  'no step': '刻みを1以上の整数で入力してください。',
  'scale too short': '補正範囲には3つ以上の補正値が必要です。',
  'step does not divide': '補正範囲を割り切れる刻みにしてください。',
  'arrows not chosen': 'このボディが合焦ランプの両脇に何を表示するか選んでください。',
  'does not fit': '入力内容が正しくありません。確かめてください。',
};
