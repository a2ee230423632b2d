// Japanese: how the words that are told are written with other characters than kana, also for others that sound the same. A line is the
// reading, then its spellings; a word of daily talk is here where it begins like one that is told.

export const SPELLINGS = `
おくれ 遅れ 後れ 送れ お暮れ
おそ 遅 襲
ちえん 遅延
ちか 近 地下 地価
ちかちか 近々
ひだり 左
みぎ 右
さゆう 左右
がわ 側
きんとう 均等 近東
りょうほう 両方
かたよ 偏 片寄
かた 片 方 肩
ふぞろい 不揃い 不ぞろい
やじるし 矢印
とりけ 取り消 取りけ とり消 鳥消
とりけし 取消し 取消
もういちど もう一度 もう1度
もういっかい もう一回 もう1回
いちど 一度 1度
いっかい 一回 1回
いちじ 一時
いったん 一旦
かいし 開始
もと 元
ひょうじ 表示
ひとつ 一つ 1つ
くりかえ 繰り返 繰返
つづけ 続け
つづき 続き
まっくら 真っ暗
つか 着か 付か 点か 使 突か
つき 着き 付き 点き
つい 着い 付い 点い
おなじ 同じ
ずれ 図れ 擦れ 逸れ
かわ 変わ 代わ
うご 動
おわ 終わ
きえ 消え
けし 消し
けす 消す
おわり 終り
はじめ 始め 初め
はんお 半押 反押
ま 待
つぎ 次 継ぎ
もど 戻
すす 進
まえ 前
てじゅん 手順
て 手
いれ 入れ
み 見
しら 調
さが 探
おし 教 押
きろくちょう 記録帳
かくにん 確認
たすけ 助け
とば 飛ば 跳ば
おお 大き
あたい 値
ほせいち 補正値
あわ 合わ
ほうこう 方向
へんこう 変更
けってい 決定
しゅうりょう 終了 修了
ねが 願
たの 頼
くだ 下さ
おも 思
い 言
いま 今
こんど 今度
きょう 今日
らんぷ 光 ひかり ヒカリ
しょうてん ピント ぴんと
すこし 少し
ぜんぜん 全然
なん 何
さくじつ きのう 昨日
ぷらす plus
まいなす minus
せっと set
すきっぷ skip
すたあと start
ぽうず pause
へるぷ help
みり mm ミリメートル
`;
