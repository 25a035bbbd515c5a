import {
  type CureSlice,
  type CuringSaltDose,
  type CuringSaltRefusal,
  exceeds,
  isWeighable,
  type JudgedLimit,
  limitParams,
  MIN_SCALE_STEPS,
  STRENGTH_RANGE,
} from '../cure/index.ts';
import type { Finding, Params, Severity, StageId } from '../findings/index.ts';
import type { Entry } from '../quantities/index.ts';
import { readEntry } from '../quantities/index.ts';
import { nitrateBar } from './judge.ts';
import type { PackReading } from './pack.ts';
import { HIGHEST_WHOLE_MUSCLE_PPM, type WholeMuscleKind } from './rule-sets/index.ts';

/** Findings that dry cure and brine share: the pack, the scale, the limits, the two people, the cold. */
export type MuscleFindingCode =
  | 'strength-missing'
  | 'strength-too-weak'
  | 'strength-too-strong'
  | 'nitrate-present'
  | 'nitrate-specialist'
  | 'nitrate-blank'
  | 'grams-only'
  | 'too-small-to-weigh'
  | 'target-over-ceiling'
  | 'other-sources-over-ceiling'
  | 'strength-below-target'
  | 'over-limit'
  | 'residual-over-limit'
  | 'gross-error'
  | 'above-every-ceiling'
  | 'below-floor'
  | 'too-warm'
  | 'scale-unknown'
  | 'second-person-missing'
  | 'same-person'
  | 'lock-up';

export type MuscleFindingId<Subject extends string> = `${Subject}.${MuscleFindingCode}`;
type MuscleFinding<Subject extends string> = Finding<MuscleFindingId<Subject>>;

/** Warmest a curing meat may lie, °C. Common practice, no source. */
export const WARMEST_CURE_C = 5;
/**
 * No recipe leads here, only curing salt weighed as if it were salt, mg/kg: 20 g of a 6.25 % pack to
 * the kilogram is 1,250. Common practice, no source.
 */
export const GROSS_MUSCLE_PPM = 1000;

const CEILING = 'nitrite-ceiling-and-floor';

/** Says a finding under a subject's own name. */
function tell<Subject extends StageId>(
  subject: Subject,
  code: MuscleFindingCode,
  severity: Severity,
  rest: { readonly field?: string; readonly params?: Params; readonly caution?: string },
): MuscleFinding<Subject> {
  const { params = {}, ...others } = rest;
  return { id: `${subject}.${code}`, severity, stage: subject, params, ...others };
}

/** The pack: its strength, and nitrate in it. Only where a curing salt is used or wanted. */
export function packFindings<Subject extends StageId>(
  subject: Subject,
  pack: PackReading,
  kind: WholeMuscleKind,
  packField: string,
): MuscleFinding<Subject>[] {
  const found: MuscleFinding<Subject>[] = [];
  const nitrite = `${packField}.strength.nitrite`;
  const nitrate = `${packField}.strength.nitrate`;
  const range = { lowFraction: STRENGTH_RANGE.min, highFraction: STRENGTH_RANGE.max };
  if (pack.problem !== null) {
    const caution = pack.problem === 'too-strong' ? 'no-pure-nitrite' : 'weigh-curing-salt';
    found.push(tell(subject, `strength-${pack.problem}`, 'stop', { field: nitrite, params: range, caution }));
  }
  if (pack.nitrateFraction === null) {
    found.push(tell(subject, 'nitrate-blank', 'caution', { field: nitrate, caution: 'pink-salt-mix-ups' }));
  } else if (pack.nitrateFraction > 0) {
    const isBarred = nitrateBar(kind) === 'barred';
    const caution = kind.product === 'bacon' ? 'no-nitrate-in-bacon' : 'pink-salt-mix-ups';
    const code = isBarred ? 'nitrate-present' : 'nitrate-specialist';
    const params = { product: kind.product ?? 'other' };
    found.push(tell(subject, code, isBarred ? 'stop' : 'caution', { field: nitrate, caution, params }));
  }
  return found;
}

/** Curing salt that was typed in another unit than grams. */
export function gramsOnly<Subject extends StageId>(
  subject: Subject,
  entry: Entry,
  field: string,
): MuscleFinding<Subject>[] {
  const reading = readEntry('mass', entry, { gramsOnly: true });
  if (reading.state !== 'bad' || !['grams-only', 'spoon-or-cup'].includes(reading.issue.code)) return [];
  return [tell(subject, 'grams-only', 'stop', { field, caution: 'no-spoons-for-curing-salt' })];
}

/** Why no dose is given. */
export function doseFindings<Subject extends StageId>(
  subject: Subject,
  dose: CuringSaltDose | null,
  params: Params,
  field: string,
): MuscleFinding<Subject>[] {
  if (dose === null || dose.ok || dose.reason === 'unusable-input') return [];
  const reason: Exclude<CuringSaltRefusal, 'unusable-input'> = dose.reason;
  const masses = {
    ...(dose.exactG === null ? {} : { massG: dose.exactG }),
    ...(dose.leastG === null ? {} : { leastG: dose.leastG }),
  };
  const caution = reason === 'too-small-to-weigh' ? 'weigh-curing-salt' : CEILING;
  return [tell(subject, reason, 'stop', { field, params: { ...params, ...masses }, caution })];
}

/** Curing salt that was weighed on too coarse a scale. */
export function scaleFindings<Subject extends StageId>(
  subject: Subject,
  weighedG: number | null,
  readabilityG: number | null,
  params: Params,
  field: string,
): MuscleFinding<Subject>[] {
  if (weighedG === null || weighedG <= 0 || readabilityG === null) return [];
  if (isWeighable(weighedG, readabilityG)) return [];
  const steps = { massG: weighedG, readabilityG, leastG: readabilityG * MIN_SCALE_STEPS };
  const rest = { field, params: { ...params, ...steps }, caution: 'weigh-curing-salt' };
  return [tell(subject, 'too-small-to-weigh', 'stop', rest)];
}

/** Limits that are broken, and doses beyond any recipe, from what is certain: `ppm` is on the green weight. */
export function limitFindings<Subject extends StageId>(
  subject: Subject,
  judged: { readonly ceilings: readonly JudgedLimit[]; readonly floors: readonly JudgedLimit[] },
  ppm: number | null,
  params: Params,
  field: string,
): MuscleFinding<Subject>[] {
  const found: MuscleFinding<Subject>[] = judged.ceilings
    .filter(({ state }) => state === 'fail')
    .map((one) => ({
      ...tell(subject, one.limit.kind === 'residual' ? 'residual-over-limit' : 'over-limit', 'stop', {
        field: one.limit.kind === 'residual' ? 'cure.residual.found' : field,
        params: { ...params, ...limitParams(one) },
        caution: CEILING,
      }),
      basis: one.limit.source,
    }));
  if (ppm !== null && ppm >= GROSS_MUSCLE_PPM) {
    const rest = { field, params: { ...params, ppm }, caution: 'pink-salt-mix-ups' };
    found.push(tell(subject, 'gross-error', 'stop', rest));
  } else if (ppm !== null && exceeds(ppm, HIGHEST_WHOLE_MUSCLE_PPM)) {
    const numbers = { ...params, ppm, highestCeilingPpm: HIGHEST_WHOLE_MUSCLE_PPM };
    found.push(tell(subject, 'above-every-ceiling', 'stop', { field, params: numbers, caution: CEILING }));
  }
  for (const one of judged.floors) {
    if (one.ppm === null || one.ppm <= 0 || one.ppm >= one.limit.valuePpm * (1 - 1e-9)) continue;
    const numbers = { ...params, ...limitParams(one), role: one.limit.role };
    found.push({
      ...tell(subject, 'below-floor', 'note', { field, params: numbers, caution: CEILING }),
      basis: one.limit.source,
    });
  }
  return found;
}

/** The cold, the scale, the lock and the two people. */
export function handlingFindings<Subject extends StageId>(
  subject: Subject,
  cure: Pick<CureSlice, 'weighedBy' | 'checkedBy'>,
  readabilityG: number | null,
): MuscleFinding<Subject>[] {
  const found: MuscleFinding<Subject>[] = [];
  const caution = 'weigh-curing-salt';
  if (readabilityG === null) {
    found.push(tell(subject, 'scale-unknown', 'note', { field: 'cure.scaleReadability', caution }));
  }
  const weighedBy = cure.weighedBy.trim().toLowerCase();
  const checkedBy = cure.checkedBy.trim().toLowerCase();
  if (weighedBy === '' || checkedBy === '') {
    const field = weighedBy === '' ? 'cure.weighedBy' : 'cure.checkedBy';
    found.push(tell(subject, 'second-person-missing', 'note', { field, caution }));
  } else if (weighedBy === checkedBy) {
    found.push(tell(subject, 'same-person', 'caution', { field: 'cure.checkedBy', caution }));
  }
  found.push(tell(subject, 'lock-up', 'note', { caution: 'lock-up-curing-salt' }));
  return found;
}

/** A cure that lies too warm. */
export function coldFindings<Subject extends StageId>(
  subject: Subject,
  tempC: number | null,
  field: string,
): MuscleFinding<Subject>[] {
  if (tempC === null || tempC <= WARMEST_CURE_C) return [];
  const params = { tempC, warmestC: WARMEST_CURE_C };
  return [tell(subject, 'too-warm', 'stop', { field, params, caution: 'curing-room-cold' })];
}
