export const saveThisBatchToAFile = 'Save this batch to a file';
export const keepItAfterAll = 'Keep it after all';
