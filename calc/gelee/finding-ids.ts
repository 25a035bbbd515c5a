/** What the jelly worksheet may have to say. */
export type GeleeFindingId =
  | 'gelee.rules-differ'
  | 'gelee.sheets-not-by-count'
  | 'gelee.bloom-unusual'
  | 'gelee.enzyme-fruit'
  | 'gelee.weakened'
  | 'gelee.sugar-firms'
  | 'gelee.too-strong'
  | 'gelee.outside-use'
  | 'gelee.stock-sets-enough'
  | 'gelee.agar-differs'
  | 'gelee.pour-too-hot'
  | 'gelee.core-too-hot'
  | 'gelee.adds-heat'
  | 'gelee.after-the-cook'
  | 'gelee.origin-unknown'
  | 'gelee.fish-gelatine';
