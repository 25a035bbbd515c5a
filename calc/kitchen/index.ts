export { blankKitchen, type Kitchen, type Scale } from './kitchen.ts';
export { mergeKitchen } from './merge-kitchen.ts';
export { kitchenSchema, type ReadKitchen, readKitchen } from './read-kitchen.ts';
export { takeThermometers } from './take-thermometers.ts';
export { finestStep, withKitchen } from './with-kitchen.ts';
