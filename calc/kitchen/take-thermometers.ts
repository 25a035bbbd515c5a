import type { Thermometer, ThermometerSlice } from '../thermometer/index.ts';
import type { Kitchen } from './kitchen.ts';

const folded = (name: string) => name.trim().toLocaleLowerCase('en');

/**
 * The settings with the thermometers of a check: one of the same name is replaced, the others are added. A thermometer
 * without a name is left out, for nobody could find it again. The height is taken where somebody wrote it.
 *
 * @param newId gives a fresh id
 */
export function takeThermometers(
  kitchen: Kitchen,
  { thermometers, altitude }: ThermometerSlice,
  newId: () => string,
): Kitchen {
  const checked = new Map(
    thermometers.filter(({ name }) => name.trim() !== '').map((each) => [folded(each.name), each] as const),
  );
  const known = new Set(kitchen.thermometers.map(({ name }) => folded(name)));
  const replaced = kitchen.thermometers.map((here): Thermometer => {
    const fresh = checked.get(folded(here.name));
    return fresh ? { ...fresh, id: here.id } : here;
  });
  const added = [...checked].flatMap(([name, each]) => (known.has(name) ? [] : [{ ...each, id: newId() }]));
  return {
    ...kitchen,
    altitude: altitude.text.trim() === '' ? kitchen.altitude : altitude,
    thermometers: [...replaced, ...added],
  };
}
