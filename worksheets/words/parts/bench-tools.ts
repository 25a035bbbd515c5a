import { plural } from '../plural.ts';

export const undo = 'Undo';
export const redo = 'Redo';
export const batches = 'Batches';
export const noBatchNumberYet = 'No batch number yet.';
export const giveIt = (number: string) => `Give it ${number}`;
export const batchEsHaveChangedSinceLast = (changed: number) =>
  `${changed} batch${plural(changed, { one: ' has', other: 'es have' })} changed since the last backup.`;
export const saveAllToAFile = 'Save all to a file';
export const notToday = 'Not today';
