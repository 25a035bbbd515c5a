import { blankEntry, readEntry } from '../quantities/index.ts';
import { countsNitrate, inLimitForm } from './in-limit-form.ts';
import { sodiumNitriteFromNitriteIon } from './nitrite-forms.ts';
import type { CureLimit } from './rule-sets/index.ts';
import type { ResidualNitrite } from './slice.ts';

/** What a laboratory found left, read. `incomplete`: a figure stands there that cannot be used as it is. */
export type MeasuredResidual =
  | 'incomplete'
  | {
      /** mg/kg, as sodium nitrite. */
      readonly ppm: number;
      /** Nitrate is counted in. */
      readonly countsNitrate: boolean;
    };

/** A record nobody has filled: no figure, no form. */
export function newResidualNitrite(): ResidualNitrite {
  return { found: blankEntry('ppm'), as: null, report: '' };
}

/** Reads the record of a laboratory's figure. Null: nobody has written one down. */
export function readResidual(residual: ResidualNitrite | undefined): MeasuredResidual | null {
  if (residual === undefined) return null;
  const found = readEntry('ppm', residual.found);
  if (found.state === 'blank') return null;
  if (found.state === 'bad' || residual.as === null) return 'incomplete';
  return {
    ppm: residual.as === 'nitrite-ion' ? sodiumNitriteFromNitriteIon(found.value) : found.value,
    countsNitrate: countsNitrate(residual.as),
  };
}

/** What was measured, as a limit counts it; and whether the two count the same thing. */
export function inResidualForm(
  limit: CureLimit,
  measured: Exclude<MeasuredResidual, 'incomplete'>,
): { readonly ppm: number; readonly counts: 'same' | 'less' | 'more' } {
  const wanted = countsNitrate(limit.expressedAs);
  const counts = wanted === measured.countsNitrate ? 'same' : wanted ? 'less' : 'more';
  return { ppm: inLimitForm(limit.expressedAs, measured.ppm, 0), counts };
}
