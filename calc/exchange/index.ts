export {
  batchFileSchema,
  FILE_FORMAT,
  FILE_VERSION,
  type FileProblem,
  type FileRecord,
  MOST_FILE_BATCHES,
  MOST_FILE_CHARACTERS,
  type OpenedFile,
  openBatchFile,
  type RecordClue,
  readFileRecord,
  writeBatchFile,
} from './batch-file.ts';
export { crc32, recordChecksum } from './checksum.ts';
export { type Cell, csvText, type DecimalMark } from './csv.ts';
export {
  type DevicePart,
  type FileOven,
  type ReadDevicePart,
  readDevicePart,
} from './device-part.ts';
export { safeFileName } from './file-name.ts';
export {
  MOST_SHARE_CHARACTERS,
  type OpenedShare,
  openShare,
  type ShareProblem,
  shareText,
} from './share.ts';
