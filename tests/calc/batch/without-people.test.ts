import { batchSchema, withoutPeople } from '@larderwright/calc/batch';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';

interface Node {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Node>>;
  readonly item?: Node;
  readonly value?: Node;
  readonly wrapped?: Node;
}

/** Texts of the record by their path, with what the schema says they hold. */
function texts(node: Node, path: string): { path: string; holds: unknown }[] {
  const below = Object.entries({ ...node.entries, '[]': node.item, '{}': node.value, '': node.wrapped });
  const here =
    node.type === 'string' ? [{ path, holds: v.getMetadata(node as unknown as v.GenericSchema).holds }] : [];
  return [
    ...here,
    ...below.flatMap(([key, part]) => (part ? texts(part, key ? `${path}.${key}` : path) : [])),
  ];
}

/** Keys that end like a name of who did something and are none. */
const NO_PERSON = /\.(?:useBy|cutBy|linkBy)$/;

describe('withoutPeople', () => {
  it('knows every field of the record that says who did something', () => {
    const all = texts(batchSchema as unknown as Node, '');
    const asks = all.filter(({ path }) => /(?:By|\.by|[iI]nitials|\.who|[pP]erson)$/.test(path));
    const unmarked = asks.filter(({ path, holds }) => !NO_PERSON.test(path) && holds !== 'person');
    expect(asks.length).toBeGreaterThan(5);
    expect(unmarked).toEqual([]);
  });

  it.each(Object.entries(demos))('changes nothing else in the demo %s', (_, batch) => {
    const before = structuredClone(batch);
    const copy = withoutPeople(batch);
    expect(batch).toEqual(before);
    expect(copy.signOffs).toEqual([]);
    expect(JSON.stringify(copy)).not.toMatch(/"(?:madeBy|weighedBy|checkedBy|by|initials)":"[^"]/);
    expect({ ...copy, product: batch.product, cure: batch.cure, process: batch.process }).toEqual({
      ...batch,
      signOffs: [],
      deviations: batch.deviations.map((deviation) => ({ ...deviation, by: '' })),
    });
    expect(copy.product).toEqual({ ...batch.product, madeBy: '' });
  });
});
