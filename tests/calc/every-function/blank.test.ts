import { assess, type Batch } from '@larderwright/calc/batch';
import type { VerdictState } from '@larderwright/calc/findings';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';
import { examples } from '../../../content/examples/index.ts';

const composition = await loadIngredients();

interface Field {
  readonly path: string;
  text: string;
}

/** Every number field of a record, with its path. */
function fieldsOf(value: unknown, path = ''): Field[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('text' in value && 'origin' in value) return [Object.assign(value as { text: string }, { path })];
  return Object.entries(value).flatMap(([key, member]) =>
    fieldsOf(member, path === '' ? key : `${path}.${key}`),
  );
}

const statesOf = (batch: Batch): ReadonlyMap<string, VerdictState> =>
  new Map(
    assess(batch, { composition, today: '2026-11-25' }).verdicts.map(({ id, state }) => [id, state] as const),
  );

it('a field that is blanked, whichever it is, makes a pass of no verdict that was none', () => {
  const passes: string[] = [];
  for (const [name, batch] of Object.entries({ ...demos, ...examples })) {
    const before = statesOf(batch);
    const count = fieldsOf(structuredClone(batch)).length;
    // All of a demo; of the many examples, which share their slices, every fifth field.
    const step = name in demos ? 1 : 5;
    for (let at = 0; at < count; at += step) {
      const changed = structuredClone(batch);
      const fields = fieldsOf(changed);
      const field = fields[at];
      if (!field || field.text === '') continue;
      field.text = '';
      for (const [id, state] of statesOf(changed)) {
        if (state === 'pass' && before.has(id) && before.get(id) !== 'pass')
          passes.push(`${name}: ${field.path} → ${id}`);
      }
    }
  }
  expect(passes).toEqual([]);
});
