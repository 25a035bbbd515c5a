export const blankBench = 'A new batch begins with the first thing you type. It is kept on this device only.';
export const batchMayNotKeptPrintBefore = 'The batch may not be kept. Print it before you leave.';
export const unnamedBatch = 'Unnamed batch';
export const batchOnTheBench = 'Batch on the bench:';
export const demoInvented = 'DEMO, invented';
export const lookingForTheBatchOnThis = 'Looking for the batch on this device …';
export const putTheDemoBackAsIt = 'Put the demo back as it was';
export const copyItAsABatchOf = 'Copy it as a batch of my own';
