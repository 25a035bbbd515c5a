import { compensatedSum, entryValue } from '../quantities/index.ts';
import { type HeatLot, heatOfLots, heatOfMix, iceInMeatG, mixTempC, thawedHeatJK } from './balance.ts';
import { WATER_HEATS } from './heat-contents.ts';
import { isMeatLot, type ReadLot } from './read-lots.ts';
import type { GrindPass } from './slice.ts';
import type { MixStep } from './values.ts';

/** The mix on its way, and the work put into it. Null from the first thing that is unknown. */
export interface PassRun {
  readonly steps: readonly MixStep[];
  readonly workJ: number | null;
}

const UNKNOWN = { massG: null, tempC: null, riseC: null, iceInMeatG: null, addedIceLeftG: null } as const;

/**
 * Brings the lots together and runs the passes. The warming of a pass is what it would be in thawed meat: its heat goes
 * into the mix whatever state it is in, and part-frozen meat melts first.
 */
export function runPasses(lots: readonly ReadLot[], passes: readonly GrindPass[]): PassRun {
  const known = new Set(passes.map(({ id }) => id));
  const joining = (passId: string | null) =>
    lots.filter(({ lot }) =>
      passId === null
        ? lot.beforePassId === null || !known.has(lot.beforePassId)
        : lot.beforePassId === passId,
    );
  const steps: MixStep[] = [];
  let inMix: ReadLot[] = [];
  let heatJ: number | null = 0;
  let workJ: number | null = 0;
  for (const passId of [null, ...passes.map(({ id }) => id)]) {
    const fresh = joining(passId);
    inMix = [...inMix, ...fresh];
    heatJ = heatJ === null || fresh.some(({ ready }) => ready === null) ? null : heatJ + heatOf(fresh);
    const rise = passId === null ? 0 : riseOf(passes, passId);
    const work: number | null =
      rise === null ? null : rise * thawedHeatJK(inMix.flatMap(({ ready }) => ready ?? []));
    heatJ = heatJ === null || work === null ? null : heatJ + work;
    workJ = workJ === null || work === null || heatJ === null ? null : workJ + work;
    steps.push(stepOf(passId, inMix, heatJ, steps.at(-1)?.tempC ?? null));
  }
  return { steps, workJ };
}

const heatOf = (lots: readonly ReadLot[]) => heatOfLots(lots.flatMap(({ ready }) => ready ?? []));

function riseOf(passes: readonly GrindPass[], passId: string): number | null {
  const pass = passes.find(({ id }) => id === passId);
  return pass ? entryValue('temperature-difference', pass.rise) : null;
}

function stepOf(
  passId: string | null,
  inMix: readonly ReadLot[],
  heatJ: number | null,
  beforeC: number | null,
): MixStep {
  const ready: HeatLot[] = inMix.flatMap((lot) => lot.ready ?? []);
  const tempC = heatJ === null ? null : mixTempC(ready, heatJ);
  if (tempC === null || heatJ === null) return { passId, ...UNKNOWN };
  const meat = inMix.filter(({ lot }) => isMeatLot(lot)).flatMap((lot) => lot.ready ?? []);
  const added = inMix.filter(({ lot }) => !isMeatLot(lot)).flatMap((lot) => lot.ready ?? []);
  const addedG = compensatedSum(added.map(({ massG }) => massG));
  // At 0 °C the heat tells how much of the added ice is still there.
  const unmelted = ((heatOfMix(ready, 0) - heatJ) / WATER_HEATS.fusionJkg) * 1000;
  return {
    passId,
    massG: compensatedSum(ready.map(({ massG }) => massG)),
    tempC,
    riseC: passId === null || beforeC === null ? null : tempC - beforeC,
    iceInMeatG: iceInMeatG(meat, tempC),
    addedIceLeftG: tempC > 0 ? 0 : tempC < 0 ? addedG : Math.min(addedG, Math.max(0, unmelted)),
  };
}
