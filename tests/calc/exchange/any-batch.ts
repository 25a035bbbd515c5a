import { type Batch, batchSchema } from '@larderwright/calc/batch';
import fc from 'fast-check';

/** What a schema is made of, as far as drawing values for it needs to know. */
interface Node {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Node>>;
  readonly item?: Node;
  readonly value?: Node;
  readonly wrapped?: Node;
  readonly options?: readonly unknown[];
  readonly literal?: unknown;
}

/** Texts a field may hold: anything typed, moments, and what a packed text uses as marks of its own. */
const typed = fc.oneof(
  { weight: 4, arbitrary: fc.string({ unit: 'grapheme', maxLength: 12 }) },
  { weight: 2, arbitrary: fc.constantFrom('', '0', '12,5', 'a|b', '|', '-3', '=1+1', '\uD800', '\u0000') },
  {
    weight: 2,
    arbitrary: fc
      .tuple(
        fc.date({ noInvalidDate: true, min: new Date('2020-01-01'), max: new Date('2040-01-01') }),
        fc.constantFrom('+01:00', '-05:30'),
      )
      .map(([date, zone]) => `${date.toISOString().slice(0, 19)}${zone}`),
  },
);

function drawn(node: Node): fc.Arbitrary<unknown> {
  switch (node.type) {
    case 'string':
      return typed;
    case 'number':
      return fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0 || 0);
    case 'boolean':
      return fc.boolean();
    case 'literal':
      return fc.constant(node.literal);
    case 'picklist':
      return fc.constantFrom(...(node.options ?? []));
    case 'nullable':
      return fc.option(drawn(node.wrapped ?? { type: 'missing' }));
    case 'array':
      return fc.array(drawn(node.item ?? { type: 'missing' }), { maxLength: 3 });
    case 'record':
      return fc.dictionary(fc.stringMatching(/^[a-z]{1,5}$/), drawn(node.value ?? { type: 'missing' }), {
        maxKeys: 2,
        noNullPrototype: true,
      });
    case 'strict_object':
      return objectOf(node.entries ?? {});
    default:
      throw new Error(`No values are drawn for a schema of type ${node.type} yet`);
  }
}

function objectOf(entries: Readonly<Record<string, Node>>): fc.Arbitrary<unknown> {
  const isOptional = (node: Node) => node.type === 'exact_optional';
  const required = Object.keys(entries).filter((key) => entries[key] && !isOptional(entries[key]));
  const values = Object.entries(entries).map(
    ([key, node]) => [key, drawn((isOptional(node) && node.wrapped) || node)] as const,
  );
  return fc.record(Object.fromEntries(values), { requiredKeys: required, noNullPrototype: true });
}

/** Any record the schema allows, drawn from the schema itself, so that a new slice is drawn from the day it exists. */
export const anyBatch = drawn(batchSchema as unknown as Node)
  .map((value) => value as Batch)
  .filter((batch) => batch.id !== '');
