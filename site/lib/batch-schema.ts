import { BATCH_SCHEMA, batchSchema, entrySchema } from '@larderwright/calc/batch';
import { batchFileSchema } from '@larderwright/calc/exchange';
import { toJsonSchema } from '@valibot/to-json-schema';
import { urls } from './urls.ts';

/**
 * The published JSON Schema (draft 2020-12) of a file of batches, made from the very schema that reads it. Its address
 * carries the version of the record and stays: when the record changes, the finished file of the old version is put into
 * `site/public/schema/`.
 */
export function publishedSchema(): Record<string, unknown> {
  const { $schema, ...schema } = toJsonSchema(batchFileSchema, {
    target: 'draft-2020-12',
    definitions: { batch: batchSchema, entry: entrySchema },
    // Our own mark of such fields is no keyword of JSON Schema.
    overrideAction: ({ valibotAction, jsonSchema }) => {
      if (valibotAction.type !== 'metadata') return undefined;
      const { holds, ...plain } = jsonSchema as Record<string, unknown>;
      return {
        ...plain,
        ...(holds ? { description: 'Who did it. Left out of a link that is handed on.' } : {}),
      };
    },
  });
  return {
    $schema,
    $id: urls.batchSchema(BATCH_SCHEMA),
    title: `Larderwright batches, record version ${BATCH_SCHEMA}`,
    description:
      'What a person entered or measured of each batch. An entry is a number field as it was typed: its text, the unit the text is read in where it names none, and whether a person entered it or it is a default. A blank text is unknown, never zero. Moments are ISO 8601 with offset.',
    ...schema,
  };
}
