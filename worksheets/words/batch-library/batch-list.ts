import { plural } from '../plural.ts';

export const lastChangedFirst = 'Last changed first';
export const newestDayFirst = 'Newest day first';
export const heldFirstThenByState = 'Held first, then by state';
export const byName = 'By name';
export const byNumber = 'By number';
export const inUse = 'In use';
export const archived = 'Archived';
export const all = 'All';
export const startANewBatch = 'Start a new batch';
export const find = 'Find';
export const nameNumberLotIngredientDay = 'Name, number, lot, ingredient, day, state, customer.';
export const order = 'Order';
export const show = 'Show';
export const nothingKeptHereYetFirstThing =
  'Nothing is kept here yet. The first thing you type on a worksheet begins a batch.';
export const batchEs = (length: number) => `${length} batch${plural(length, { one: '', other: 'es' })}.`;
export const ofWord = (length: number, length2: number) => `${length} of ${length2}.`;
export const showMore = (page: number) => `Show ${page} more`;
export const deleted = 'Deleted';
export const backInUse = 'Back in use';
export const undo = 'Undo';
