// Japanese: the readings that words which are told are made of, for what a recogniser writes in place of one that sounds the same. A line
// is the reading, then its characters, the commonest; all others count as two syllables that are like none.

export const READINGS = `
あん 安案
い 位医意以
えん 延円園
おく 屋億憶
か 化家科価下火
かい 会回開階界海
かく 確各角格拡核
かん 完間感
が 画我
き 機記気器期木
きゅう 休球級急旧究宮求救
きん 均金禁筋勤
く 区苦句
けい 継計系経憩
けつ 決結
けん 検件県券
こう 高公行光
ご 語後碁午御
さい 再最済祭才採際細
さく 索作策
さん 山産酸参
し 止市氏紙試
しゅう 終週集周修収州
しょう 消小少
じ 時次字
じゅう 重銃住従獣
じゅん 順
すう 数
せい 正生成
せつ 設
せん 線先
ぞく 続
たん 旦
だい 大台題代
だん 断段
ち 地置遅知池
ちゅう 中注
てい 定停低底庭邸
てん 点店天
とう 灯等投答登東糖
に 荷似
にゅう 入乳
はち 鉢蜂
ばん 番
ひ 日
ひゃく 百
ひょう 表
ふ 不
へん 変
ぺき 璧
ほ 補
まい 毎枚
みつ 密
めつ 滅
めん 面
よう 用
り 利理里
りょう 了両料良量
りょく 力緑
れい 例礼冷
ろく 録禄
`;

/** Stands for a character that cannot be read: two syllables that are like none. */
export const UNREAD = '々';
