export const onlyRowsThatDiffer = 'Only rows that differ';
export const batchesSideBySide = 'Batches side by side';
export const what = 'What';
export const unnamedBatch = 'Unnamed batch';
export const demo = 'DEMO';
