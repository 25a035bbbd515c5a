import { newBrineSlice } from '../brine/index.ts';
import type { CureFindingId, CureValues } from '../cure/index.ts';
import { newDryCureSlice } from '../dry-cure/index.ts';
import type { StageResult } from '../findings/index.ts';
import type { FormulaFindingId, FormulaValues, MixComponent } from '../formula/index.ts';
import { type Entry, entryValue } from '../quantities/index.ts';
import type { Batch } from './record.ts';

type Cured = Pick<Batch, 'brine' | 'dryCure'>;

/**
 * Whether a brine or a dry cure salts the meat of the batch: what the formula holds is then the bare meat. A slice that
 * its worksheet laid down and nobody filled says nothing.
 */
export function isWholeMuscle({ brine, dryCure }: Cured): boolean {
  const isFilled = (slice: unknown, blank: unknown) =>
    slice !== undefined && JSON.stringify(slice) !== JSON.stringify(blank);
  return isFilled(brine, newBrineSlice()) || isFilled(dryCure, newDryCureSlice());
}

const isNone = (target: Entry, weighed: readonly Entry[]) =>
  entryValue('ppm', target) === 0 && weighed.every((entry) => (entryValue('mass', entry) ?? 0) === 0);

/** Whether nitrite may come with the brine or the dry cure. Unless somebody wrote that none is wanted, it may. */
export function mayBringNitrite(batch: Cured): boolean {
  if (!isWholeMuscle(batch)) return false;
  const { brine, dryCure } = batch;
  const brined = brine !== undefined && !isNone(brine.nitriteTarget, [brine.actual.curingSalt]);
  const weighed = dryCure?.pieces.map(({ curingSaltActual }) => curingSaltActual) ?? [];
  return brined || (dryCure !== undefined && !isNone(dryCure.nitriteTarget, weighed));
}

const UNKNOWN = { grams: null, fraction: null, minFraction: null, maxFraction: null } as const;
const unknownSalt = (salt: MixComponent): MixComponent => ({ ...salt, ...UNKNOWN });

/**
 * The formula of a whole muscle without what it would say of salt: bare meat is not the product, and no salt is to be
 * added to the bowl. Any other formula as it is.
 */
export function withoutBareSalt(
  batch: Cured,
  result: StageResult<FormulaValues, FormulaFindingId>,
): StageResult<FormulaValues, FormulaFindingId> {
  if (!isWholeMuscle(batch)) return result;
  const { mix, planned, asWeighed, lined, finished } = result.values;
  const bare = <Of extends typeof mix>(of: Of): Of => ({
    ...of,
    salt: unknownSalt(of.salt),
    saltOnWaterFraction: null,
    saltOnWaterMinFraction: null,
  });
  return {
    ...result,
    values: {
      ...result.values,
      mix: bare(mix),
      planned: bare(planned),
      asWeighed: asWeighed && bare(asWeighed),
      lined: lined && { ...lined, salt: unknownSalt(lined.salt) },
      finished: finished && { ...finished, saltFraction: null },
      plainSalt: { state: 'cannot-tell', because: 'salt' },
    },
    findings: result.findings.filter(
      ({ id, params }) =>
        id !== 'formula.salt-off-target' &&
        id !== 'formula.salt-over-supplied' &&
        !(id === 'formula.outside-band' && params.what === 'salt'),
    ),
  };
}

const NO_FIGURES = {
  nitriteG: null,
  nitritePpmMeat: null,
  nitritePpmTotal: null,
  nitriteIonPpmMeat: null,
  nitriteIonPpmTotal: null,
  highestPpmMeat: null,
  highestPpmTotal: null,
  nitritePpmLined: null,
  nitriteIonPpmLined: null,
  highestPpmLined: null,
  plannedPpmLined: null,
  plannedPpmMeat: null,
  plannedPpmTotal: null,
  dose: null,
  ceilings: [],
  floors: [],
} as const satisfies Partial<CureValues>;

/**
 * The cure of a whole muscle without what it would say of nitrite: that is reckoned in the brine or the dry cure, by
 * limits of another table. Nothing passes here; what does not pass in the formula alone stands. Any other as it is.
 */
export function withoutBareNitrite(
  batch: Cured,
  result: StageResult<CureValues, CureFindingId>,
): StageResult<CureValues, CureFindingId> {
  if (!isWholeMuscle(batch)) return result;
  const { values } = result;
  return {
    ...result,
    values: {
      ...values,
      ...NO_FIGURES,
      salt: {
        ...values.salt,
        totalG: null,
        fraction: null,
        plain: { state: 'cannot-tell', because: 'salt' },
      },
    },
    verdicts: result.verdicts.filter(({ state }) => state !== 'pass'),
  };
}
