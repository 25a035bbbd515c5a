import { exceeds } from '../cure/index.ts';
import type { Params, Verdict } from '../findings/index.ts';
import { sourceOf } from '../sources/index.ts';
import {
  type AdditiveLimit,
  acceleratorLimit,
  PHOSPHATE_LIMIT,
  PUMPED_BACON_LEVELS,
} from './additive-limits.ts';
import type { BrineFindingId } from './finding-ids.ts';
import type { AcceleratorForm } from './slice.ts';

type BrineVerdict = Verdict<BrineFindingId>;

/** How far off a level that the law asks for may be weighed. House rule: rounding to the scale. */
const LEVEL_TOLERANCE = 0.01;

/** What the United States' additive limits are judged on. Concentrations on green weight. */
export interface AdditiveFacts {
  readonly isBacon: boolean;
  readonly isPumped: boolean;
  readonly form: AcceleratorForm | null;
  readonly usesAccelerator: boolean;
  readonly acceleratorFraction: { readonly low: number | null; readonly high: number | null };
  readonly usesPhosphate: boolean;
  readonly phosphateFraction: { readonly low: number | null; readonly high: number | null };
  /** By the pump, mg/kg; null unknown. */
  readonly nitritePpm: number | null;
}

/** Verdicts on accelerator, phosphate and pumped bacon under the rule set of the United States. */
export function additiveVerdicts(facts: AdditiveFacts): BrineVerdict[] {
  const verdicts: BrineVerdict[] = [];
  const needsAccelerator = facts.isBacon && facts.isPumped;
  if (facts.usesAccelerator || needsAccelerator) verdicts.push(acceleratorVerdict(facts));
  if (facts.usesPhosphate)
    verdicts.push(ceiling('brine.phosphate', PHOSPHATE_LIMIT, facts.phosphateFraction));
  if (needsAccelerator) verdicts.push(baconLevel(facts.nitritePpm));
  return verdicts;
}

function acceleratorVerdict(facts: AdditiveFacts): BrineVerdict {
  const id = 'brine.accelerator';
  if (facts.form === null) return say(id, 'cannot-tell', 'brine.additive-unknown', null, {});
  const product = facts.isBacon ? 'bacon' : 'other';
  const limit = acceleratorLimit(facts.form, product, facts.isPumped ? 'pumped' : 'immersion');
  if (limit === null) return say(id, 'fail', 'brine.additive-wrong-form', null, {});
  const judged = ceiling(id, limit, facts.acceleratorFraction);
  const { low, high } = facts.acceleratorFraction;
  if (!limit.isRequired || low === null || high === null) return judged;
  // A level is met within the rounding of the scale, from below and from above.
  const isMet = Math.abs(high / limit.valueFraction - 1) <= LEVEL_TOLERANCE + 1e-9;
  const reason = isMet ? 'brine.additive-within' : 'brine.additive-not-at-level';
  return say(id, isMet ? 'pass' : 'fail', reason, limit, judged.params);
}

function ceiling(
  id: string,
  limit: AdditiveLimit,
  of: { low: number | null; high: number | null },
): BrineVerdict {
  const params = {
    ...(of.low === null ? {} : { lowFraction: of.low }),
    ...(of.high === null ? {} : { highFraction: of.high }),
  };
  if (of.low !== null && exceeds(of.low, limit.valueFraction)) {
    return say(id, 'fail', 'brine.additive-over', limit, params);
  }
  if (of.high === null || of.low === null)
    return say(id, 'cannot-tell', 'brine.additive-unknown', limit, params);
  return exceeds(of.high, limit.valueFraction)
    ? say(id, 'cannot-tell', 'brine.additive-uptake-unknown', limit, params)
    : say(id, 'pass', 'brine.additive-within', limit, params);
}

/** 9 CFR 424.22(b)(1): 120 mg/kg, or an alternative with conditions of its own. */
function baconLevel(ppm: number | null): BrineVerdict {
  const id = 'brine.bacon-level';
  const { required, alternativeA, alternativeB, source, mark } = PUMPED_BACON_LEVELS;
  const tell = (state: BrineVerdict['state'], reason: BrineFindingId): BrineVerdict => ({
    id,
    stage: 'brine',
    state,
    reason,
    params: {
      ...(ppm === null ? {} : { ppm }),
      requiredPpm: required.ppm,
      alternativePpm: alternativeA.ppm,
      lowPpm: alternativeB.ppm[0],
      highPpm: alternativeB.ppm[1],
    },
    basis: source,
    mark,
  });
  if (ppm === null) return tell('cannot-tell', 'brine.bacon-level-unknown');
  const isAt = (level: number) => Math.abs(ppm / level - 1) <= LEVEL_TOLERANCE + 1e-9;
  if (isAt(required.ppm) && !exceeds(ppm, required.ppm)) return tell('pass', 'brine.bacon-level-met');
  const [low, high] = alternativeB.ppm;
  const isAlternative =
    (isAt(alternativeA.ppm) && !exceeds(ppm, alternativeA.ppm)) || (ppm >= low && ppm <= high);
  return isAlternative
    ? tell('cannot-tell', 'brine.bacon-level-alternative')
    : tell('fail', 'brine.bacon-level-missed');
}

function say(
  id: string,
  state: BrineVerdict['state'],
  reason: BrineFindingId,
  limit: AdditiveLimit | null,
  params: Params,
): BrineVerdict {
  const what = id.slice('brine.'.length);
  const facts = limit === null ? {} : { limitFraction: limit.valueFraction, limitPrinted: limit.printed };
  const review = limit === null ? {} : { edition: sourceOf(limit.source).edition };
  return {
    id,
    stage: 'brine',
    state,
    reason,
    params: { what, ...facts, ...review, ...params },
    basis: limit?.source ?? 'us-9-cfr-424-22-b',
    mark: limit?.mark ?? 'confirmed',
  };
}
