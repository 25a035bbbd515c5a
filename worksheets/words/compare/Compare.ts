export const whichBatches = 'Which batches';
export const demo = 'DEMO';
export const sideBySide = 'Side by side';
export const batchesComparedByHand = 'Batches compared by hand';
export const what = 'What';
export const batch = 'Batch ______';
export const trendOfAFamily = 'Trend of a family';
export const family = 'Family';
