import * as v from 'valibot';
import type { Batch } from './record.ts';
import { batchSchema } from './schema/index.ts';

/** What a schema is made of, as far as a walk through a record needs to know. */
interface Node {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Node>>;
  readonly item?: Node;
  readonly value?: Node;
  readonly wrapped?: Node;
}

function cleared(value: unknown, schema: Node): unknown {
  if (schema.wrapped) return value === null || value === undefined ? value : cleared(value, schema.wrapped);
  const { holds } = v.getMetadata(schema as unknown as v.GenericSchema);
  if (holds === 'person') return '';
  if (holds === 'signatures') return [];
  if (Array.isArray(value) && schema.item) {
    const { item } = schema;
    return value.map((row) => cleared(row, item));
  }
  if (typeof value !== 'object' || value === null) return value;
  const below = (key: string) => schema.entries?.[key] ?? schema.value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => {
      const node = below(key);
      return [key, node ? cleared(part, node) : part];
    }),
  );
}

/**
 * The batch without the people in it: names and initials blank, sign-offs gone. Which fields those are stands in the
 * schema. Free text (notes, what went wrong, product and kitchen names) stays as it was written.
 */
export function withoutPeople(batch: Batch): Batch {
  return cleared(batch, batchSchema as unknown as Node) as Batch;
}
