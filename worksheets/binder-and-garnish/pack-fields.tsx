import { NumberField } from '../parts/number-field.tsx';

/** Salt and water off a pack; blank leaves them to the table. */
export function PackFields({ path, name }: { path: string; name: string }) {
  return (
    <>
      <NumberField
        path={`${path}.salt`}
        label={`Salt in ${name}, by the pack`}
        kind="fraction"
        range={{ min: 0, max: 1 }}
        hint="Blank: the composition table."
      />
      <NumberField
        path={`${path}.water`}
        label={`Water in ${name}`}
        kind="fraction"
        range={{ min: 0, max: 1 }}
        hint="Blank: the composition table."
      />
    </>
  );
}
