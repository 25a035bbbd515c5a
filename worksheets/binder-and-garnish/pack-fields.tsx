import * as say from '#words/binder-and-garnish/pack-fields.ts';
import { NumberField } from '../parts/number-field.tsx';

/** Salt and water off a pack; blank leaves them to the table. */
export function PackFields({ path, name }: { path: string; name: string }) {
  return (
    <>
      <NumberField
        path={`${path}.salt`}
        label={say.saltInByThePack(name)}
        kind="fraction"
        range={{ min: 0, max: 1 }}
        hint={say.blankTheCompositionTable}
      />
      <NumberField
        path={`${path}.water`}
        label={say.waterIn(name)}
        kind="fraction"
        range={{ min: 0, max: 1 }}
        hint={say.blankTheCompositionTable}
      />
    </>
  );
}
