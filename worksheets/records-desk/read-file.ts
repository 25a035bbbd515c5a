import {
  type FileProblem,
  type FileRecord,
  MOST_FILE_CHARACTERS,
  openBatchFile,
  type ReadDevicePart,
  readDevicePart,
  readFileRecord,
} from '@larderwright/calc/exchange';

/** Longest stretch of work between two breaths of the page. */
const BREATH_MS = 16;

export type ReadFile =
  | {
      readonly ok: true;
      readonly writtenAt: string | null;
      readonly records: readonly FileRecord[];
      readonly device: ReadDevicePart;
    }
  | ({ readonly ok: false } & FileProblem);

/**
 * Reads a file of batches record by record, letting the page breathe.
 *
 * @param onProgress told how many records were read, of how many
 */
export async function readFile(
  file: Blob,
  onProgress: (done: number, all: number) => void,
): Promise<ReadFile> {
  if (file.size > MOST_FILE_CHARACTERS)
    return { ok: false, problem: 'too-large', found: file.size, most: MOST_FILE_CHARACTERS };
  const opened = openBatchFile(await file.text());
  if (!opened.ok) return opened;
  const records: FileRecord[] = [];
  let breathedMs = performance.now();
  for (const raw of opened.records) {
    records.push(readFileRecord(raw));
    if (performance.now() - breathedMs < BREATH_MS) continue;
    onProgress(records.length, opened.records.length);
    await new Promise((resolve) => setTimeout(resolve));
    breathedMs = performance.now();
  }
  return { ok: true, writtenAt: opened.writtenAt, records, device: readDevicePart(opened.device) };
}
