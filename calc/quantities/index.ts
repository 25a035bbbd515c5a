export { blankEntry, defaultEntry, type Entry, enteredEntry, type Unit } from './entry.ts';
