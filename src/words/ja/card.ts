// Japanese: the card for the bag.
import type { CardLine } from '../../logbook/card.ts';
import type { CheckFound } from '../../logbook/newestCheck.ts';
import type { CardWords } from '../cardWords.ts';
import { line } from '../line.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const STATE: Readonly<Record<CardLine['state'], (day: string) => string>> = {
  entered: (day) => `${day}設定`,
  measured: (day) => `${day}測定、未設定`,
  differ: (day) => `${day}設定、測定値は別`,
};

const CHECKED: Readonly<Record<CheckFound['found'], (day: string) => string>> = {
  confirmed: (day) => `${day}写真で確認済み`,
  shifted: (day) => `${day}写真でずれあり`,
};

export const words: CardWords = {
  title: '携帯カード',
  gone: 'このボディは、もう機材にありません。このページを閉じて、機材からカードを開き直してください。',
  empty: 'このボディには、まだ測定も設定もありません。',
  about: (serial, printed) => [...(serial === null ? [] : [`製造番号${serial}。`]), `印刷日：${write.day(printed)}。`],
  at: place,
  facts: ({ state, at, within, check, due }) =>
    line([
      STATE[state](write.day(at)),
      within !== null && `±1ステップ以内の確率${write.chance(within)}`,
      check && CHECKED[check.found](write.day(check.at)),
      due && '要再測定',
    ]),
};
