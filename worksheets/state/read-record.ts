/**
 * The reader of stored records, with the schema behind it, in a module of its own: fetched only when there
 * is a record to read. Importing calc's face itself on demand would put all of it into the first load, since
 * the page already needs the empty batch from the same face.
 */
export { readBatch } from '@larderwright/calc/batch';
