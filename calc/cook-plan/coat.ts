import { airGap, type Face, fatLining, pastry, WALLS, wallLayer } from '../heat/index.ts';
import type { MouldBody } from './body.ts';
import type { PlanLid, PlanVessel } from './slice.ts';

/** One layer between the mix and what surrounds the mould. SI units. */
export interface CoatLayer {
  readonly thicknessM: number;
  readonly conductivityWmK: number;
  readonly heatCapacityJm3K: number;
}

export type Coat = Readonly<Record<Face, readonly CoatLayer[]>>;

/** What lies round the mix. Lengths in mm; null for no crust. */
export interface CoatPlan {
  readonly vessel: PlanVessel;
  readonly wallMm: number;
  readonly lid: PlanLid;
  readonly crust: { readonly wallMm: number; readonly lidMm: number } | null;
}

/** A lid or foil never lies closer than this: the least air under it, mm. Common practice, no source. */
const LEAST_AIR_MM = 2;

/** The usual wall of a vessel, mm; nothing for a roll in cloth or film. */
export function usualWallMm(vessel: PlanVessel): number {
  return vessel === 'none' ? 0 : WALLS[vessel].usualMm;
}

/**
 * The layers of every face, from the mix outward: lining (counted as back fat, which resists most), crust, wall; over
 * the top the lining folded over, the crust's lid, and air under foil or lid.
 */
export function coatOf(body: Pick<MouldBody, 'liningMm' | 'headspaceMm' | 'closed'>, plan: CoatPlan): Coat {
  const { vessel, wallMm, lid, crust } = plan;
  const lining = body.liningMm > 0 ? [fatLining(body.liningMm)] : [];
  const shell = vessel === 'none' || wallMm <= 0 ? [] : [wallLayer(vessel, wallMm)];
  const around = [...lining, ...(crust && crust.wallMm > 0 ? [pastry(crust.wallMm)] : []), ...shell];
  if (body.closed) return { bottom: around, side: around, end: around, top: around };
  const air = airGap(Math.max(LEAST_AIR_MM, body.headspaceMm));
  const top = [
    ...lining,
    ...(crust && crust.lidMm > 0 ? [pastry(crust.lidMm)] : []),
    ...(lid === 'open' ? [] : [air]),
    ...(lid === 'lid' ? shell : []),
  ];
  return { bottom: around, side: around, end: around, top };
}

/** How far the mix stands over the outside of the mould's base, mm: the water must first climb that. */
export function baseMm({ bottom }: Coat): number {
  return 1000 * bottom.reduce((sum, { thicknessM }) => sum + thicknessM, 0);
}

/** Resistance of a film or lid over still air, m²·K/W, for a stage in which the top is covered. */
export function coverResistance(headspaceMm: number): number {
  const { thicknessM, conductivityWmK } = airGap(Math.max(LEAST_AIR_MM, headspaceMm));
  return thicknessM / conductivityWmK;
}
