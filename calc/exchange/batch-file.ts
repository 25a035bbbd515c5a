import * as v from 'valibot';
import { type Batch, batchSchema, type ReadBatch, readBatch } from '../batch/index.ts';
import { type DevicePart, devicePartSchema } from './device-part.ts';
import { inspectJson } from './inspect-json.ts';

/** Names the file to whoever opens it, and to us. */
export const FILE_FORMAT = 'larderwright-batches';
/** The version of the file around the batches; each batch has a version of its own. */
export const FILE_VERSION = 1;
/** Largest file that is read, characters: a thousand batches, or one with a logger's whole day. */
export const MOST_FILE_CHARACTERS = 30_000_000;
/** Most batches one file may hold. */
export const MOST_FILE_BATCHES = 5_000;

const text = v.pipe(v.string(), v.maxLength(2_000));

/** A file of batches, as it is written and published. */
export const batchFileSchema = v.strictObject({
  $schema: v.exactOptional(text),
  format: v.literal(FILE_FORMAT),
  version: v.literal(FILE_VERSION),
  writtenAt: text,
  batches: v.pipe(v.array(batchSchema), v.maxLength(MOST_FILE_BATCHES)),
  device: v.exactOptional(devicePartSchema),
});

/**
 * Writes batches as the text of a file.
 *
 * @param where address of the published schema ('' leaves it out), and the moment of writing (ISO 8601 with offset)
 * @param device what lies beside them on the device; only a file of all there is has it
 */
export function writeBatchFile(
  batches: readonly Batch[],
  where: { schemaAddress: string; at: string },
  device?: DevicePart,
): string {
  const file = {
    ...(where.schemaAddress === '' ? {} : { $schema: where.schemaAddress }),
    format: FILE_FORMAT,
    version: FILE_VERSION,
    writtenAt: where.at,
    batches,
    ...(device === undefined ? {} : { device }),
  };
  return `${JSON.stringify(file, null, 1)}\n`;
}

/** Why a file cannot be read at all. */
export type FileProblem =
  | { readonly problem: 'empty' | 'not-ours' }
  | { readonly problem: 'too-large' | 'too-many'; readonly found: number; readonly most: number }
  | { readonly problem: 'not-json'; readonly line: number | null; readonly column: number | null }
  | { readonly problem: 'too-deep' | 'forbidden-key' | 'damaged'; readonly path: string }
  | { readonly problem: 'newer-file'; readonly version: number };

export type OpenedFile =
  | {
      readonly ok: true;
      readonly writtenAt: string | null;
      readonly records: readonly unknown[];
      /** What lay beside them on the device, unread; undefined where the file has none. */
      readonly device: unknown;
    }
  | ({ readonly ok: false } & FileProblem);

const refuse = (problem: FileProblem): OpenedFile => ({ ok: false, ...problem });

/** Line and column of a syntax error, from the words of the engine or the place it counts. */
function placeOf(error: unknown, source: string): { line: number | null; column: number | null } {
  const said = error instanceof Error ? error.message : '';
  const lined = /line (\d+) column (\d+)/.exec(said);
  if (lined) return { line: Number(lined[1]), column: Number(lined[2]) };
  const position = /position (\d+)/.exec(said)?.[1];
  const at = position === undefined ? (/end of/i.test(said) ? source.length : null) : Number(position);
  if (at === null) return { line: null, column: null };
  const before = source.slice(0, at).split('\n');
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Opens the text of a file: one of ours, or a single batch by itself. The records in it are still unread, for
 * `readFileRecord` to take one at a time.
 */
export function openBatchFile(source: string): OpenedFile {
  if (source.length > MOST_FILE_CHARACTERS)
    return refuse({ problem: 'too-large', found: source.length, most: MOST_FILE_CHARACTERS });
  const json = source.replace(/^\uFEFF/, '');
  if (json.trim() === '') return refuse({ problem: 'empty' });
  let raw: unknown;
  try {
    raw = JSON.parse(json);
  } catch (error) {
    return refuse({ problem: 'not-json', ...placeOf(error, json) });
  }
  const fault = inspectJson(raw);
  if (fault) return refuse(fault);
  if (!isObject(raw)) return refuse({ problem: 'not-ours' });
  if (raw.format === undefined && typeof raw.schema === 'number' && isObject(raw.formula))
    return { ok: true, writtenAt: null, records: [raw], device: undefined };
  if (raw.format !== FILE_FORMAT) return refuse({ problem: 'not-ours' });
  const { version, batches, writtenAt, device } = raw;
  if (typeof version === 'number' && version > FILE_VERSION)
    return refuse({ problem: 'newer-file', version });
  if (version !== FILE_VERSION) return refuse({ problem: 'damaged', path: 'version' });
  if (!Array.isArray(batches)) return refuse({ problem: 'damaged', path: 'batches' });
  if (batches.length > MOST_FILE_BATCHES)
    return refuse({ problem: 'too-many', found: batches.length, most: MOST_FILE_BATCHES });
  return {
    ok: true,
    writtenAt: typeof writtenAt === 'string' ? writtenAt : null,
    records: batches,
    device,
  };
}

/** What a record that could not be read still says of itself, for a person to know it by. */
export interface RecordClue {
  readonly name: string;
  readonly batchNo: string;
}

export type FileRecord = ReadBatch & { readonly clue: RecordClue };

const MOST_CLUE = 120;
const clueText = (value: unknown) => (typeof value === 'string' ? value.slice(0, MOST_CLUE) : '');

/** Reads one record of an opened file. */
export function readFileRecord(raw: unknown): FileRecord {
  const product = isObject(raw) && isObject(raw.product) ? raw.product : {};
  return {
    ...readBatch(raw),
    clue: { name: clueText(product.name), batchNo: clueText(product.batchNo) },
  };
}
