import type { Entry } from '../quantities/index.ts';
import type { ThermometerSlice } from '../thermometer/index.ts';
import type { Batch } from './record.ts';

/** Where a batch's height above the sea stands: typed once, it serves the thermometer check and the cook plan. */
export type AltitudePath = 'thermometers.altitude' | 'cookPlan.altitude';

type Placed = Pick<Batch, 'thermometers' | 'cookPlan'>;

const isTyped = (entry: Entry | undefined) => entry !== undefined && entry.text.trim() !== '';
/** The plan's own height is the sea's until somebody changes it. */
const isPlanned = ({ cookPlan }: Placed) => cookPlan?.altitude.origin === 'entered';

/** The field that holds the height: where it was typed, the check's before the plan's, or else the one that asks. */
export function altitudePath(batch: Placed, asking: AltitudePath): AltitudePath {
  if (isTyped(batch.thermometers?.altitude)) return 'thermometers.altitude';
  return isPlanned(batch) ? 'cookPlan.altitude' : asking;
}

/** The check's height where one was typed there: the plan counts with it instead of its own. */
export function plannedAltitude({ thermometers }: Placed): Entry | undefined {
  return thermometers && isTyped(thermometers.altitude) ? thermometers.altitude : undefined;
}

/** The check with the height that was typed in the plan, where the check itself has none. A default is no height. */
export function placedThermometers(batch: Placed): ThermometerSlice | undefined {
  const { thermometers, cookPlan } = batch;
  if (thermometers === undefined || cookPlan === undefined) return thermometers;
  if (isTyped(thermometers.altitude) || !isPlanned(batch)) return thermometers;
  return { ...thermometers, altitude: cookPlan.altitude };
}
