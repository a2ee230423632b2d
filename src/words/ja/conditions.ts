// Japanese: how it was when a value was measured or entered.
import type { ConditionsWords } from '../conditionsWords.ts';
import { line } from '../line.ts';
import { CONDITION_FAULT } from './conditionFaults.ts';
import { write } from './write.ts';

export const words: ConditionsWords = {
  open: '日付、明るさ、温度、メモ',
  fields: {
    day: { label: '日付', hint: '2026-03-04のように、年、月、日の順。' },
    temperature: { label: '温度（°C）' },
    light: { label: '明るさ（EV、ISO 100）' },
    firmware: { label: 'ボディのファームウェア' },
    note: { label: 'メモ' },
  },
  fault: {
    ...CONDITION_FAULT,
    'no day': '日付を2026-03-04のように、年、月、日の順で入力してください。今日より後にはできません。',
    'does not fit': '入力内容が正しくありません。確かめてください。',
  },
  inLine: (conditions) =>
    conditions === null
      ? ''
      : line([
          conditions.light !== null && `EV ${write.number(conditions.light, 1)}`,
          conditions.temperature !== null && write.unit(conditions.temperature, 'celsius', 1),
          conditions.firmware && `ファームウェア${conditions.firmware}`,
          conditions.note,
        ]),
};
