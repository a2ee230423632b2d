// Japanese: the readings that words which are told are made of, for what a recogniser writes in place of one that sounds the same. A line
// is the reading, then its characters, the commonest; all others count as two syllables that are like none.

export const READINGS = `
あん 安案
い 位医意以囲委移胃異威依維
えん 延円園援演煙塩鉛縁
おく 屋億憶奥贈
か 化家科価下火課果加河花貨過歌架
かい 会回開階界海改械解快怪介街
かく 確各角格拡核隔覚較革閣郭獲
かん 完間感関管官館観簡環看刊
が 画我
き 機記気器期木規希季基貴喜祈
きゅう 休球級急旧究宮求救吸給久
きん 均金禁筋勤菌緊琴
く 区苦句
けい 継計系経憩警景敬傾係径恵契携
けつ 決結血欠潔
けん 検件県券健研建権憲献賢兼険験剣圏軒
こう 高公行光校港考工広交航候構講功幸康鉱
ご 語後碁午御護誤悟互
さい 再最済祭才採際細裁災菜歳債彩催
さく 索作策削柵搾錯
さん 山産酸参散算賛傘
し 止市氏紙試志師資詩史支司誌姿指士
しゅう 終週集周修収州秀衆宗就習拾
しょう 消小少商賞章象証省招症承照昇将
じ 時次字児寺辞磁
じゅう 重銃住従獣渋充縦
じゅん 順準純巡
すう 数
せい 正生成精製制性政静整清誠聖星
せつ 設節説接雪
せん 線先選戦専船宣洗泉
ぞく 続族属
たん 旦
だい 大台題代第
だん 断段団談弾暖
ち 地置遅知池恥致
ちゅう 中注柱虫忠宙抽
ちょう 長町超丁庁頂腸兆張
てい 定停低底庭邸程提堤抵艇帝訂
てん 点店天典転展添
とう 灯等投答登東糖当党島統塔湯到
に 荷似煮
にゅう 入乳
はち 鉢蜂
ばん 番晩板盤
ひ 日
ひゃく 百
ひょう 表票評標氷
ふ 不府婦夫富布負普符譜
へん 変編辺
ぺき 璧
ほ 補歩保捕
まい 毎枚
みつ 密
めつ 滅
めん 面綿免
よう 用曜陽洋容溶
り 利理里裏離梨
りょう 了両料良量領寮療僚
りょく 力緑
れい 例礼冷霊齢令鈴
ろく 録禄
`;

/** Stands for a character that cannot be read: two syllables that are like none. */
export const UNREAD = '々';
