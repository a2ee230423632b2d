// Japanese: what does not fit the light, the temperature or a note, in a form or in a file.
import type { ConditionFault } from '../../logbook/conditions.ts';

export const CONDITION_FAULT: Readonly<Record<ConditionFault, string>> = {
  'no light': '明るさを9のような露出値（EV）で入力してください。',
  'light too low': '明るさはEV \u221210以上です。',
  'light too high': '明るさはEV 24以下です。',
  'no temperature': '温度を摂氏で入力してください。',
  'temperature too low': '温度は\u221260°C以上です。',
  'temperature too high': '温度は60°C以下です。',
  'firmware too long': 'ファームウェアは40文字以内にしてください。',
  'note too long': 'メモは2000文字以内にしてください。',
};
