import { ALTITUDE_M } from '@larderwright/calc/thermometer';
import { NumberBox } from '../parts/number-box.tsx';
import { $kitchen, changeKitchen } from '../state/kitchen.ts';
import { useShared } from '../state/use-shared.ts';
import { SETTINGS } from '../words/settings.ts';

const MM_PER_M = 1000;

/** How high the kitchen stands. */
export function HeightField() {
  const { altitude } = useShared($kitchen).kitchen;
  return (
    <NumberBox
      label={SETTINGS.altitude}
      kind="length"
      units={['m', 'ft']}
      range={{ min: ALTITUDE_M.min * MM_PER_M, max: ALTITUDE_M.max * MM_PER_M }}
      entry={altitude}
      onEntry={(entry) => changeKitchen((now) => ({ ...now, altitude: entry }))}
      hint={SETTINGS.altitudeHint}
    />
  );
}
