import type { Params, Severity } from '../findings/index.ts';
import { curingSalts } from './cure-line.ts';
import { doseFindings } from './dose-findings.ts';
import { exceeds } from './exceeds.ts';
import type { CureFinding, CureFindingId } from './finding-ids.ts';
import { inLimitForm, limitAsSodiumNitrite } from './in-limit-form.ts';
import type { JudgedLimit } from './judge-limit.ts';
import { nitritePpm } from './nitrite-ppm.ts';
import { CURE_RULE_SETS } from './rule-sets/index.ts';
import type { CureState } from './state.ts';
import { limitParams } from './verdicts.ts';

/** Highest nitrite any rule set carried here lets into a mixed product, as sodium nitrite, mg/kg. */
export const HIGHEST_CEILING_PPM = Math.max(
  ...CURE_RULE_SETS.flatMap((ruleSet) => ruleSet.limits)
    .filter(
      ({ substance, kind, role }) => substance === 'nitrite' && kind === 'ingoing' && role === 'ceiling',
    )
    .map(({ expressedAs, valuePpm }) => limitAsSodiumNitrite(expressedAs, valuePpm)),
);
/** No recipe leads here, only curing salt weighed as if it were salt. Two and a half times the highest ceiling. */
export const GROSS_ERROR_PPM = 2.5 * HIGHEST_CEILING_PPM;
/** Below this nitrite gives colour, and no cooling rule counts the product as cured, mg/kg. */
const CURED_PPM = 100;
/** Above this share of the mix liver uses nitrite up. Common practice, no source. */
const MUCH_LIVER = 0.15;
/** Stronger than this, a curing salt cannot be the only salt of a mix. Common practice, no source. */
const STRONG_STRENGTH = 0.01;
/** From this share of the mix on, it is there in the amount of a plain salt. Common practice, no source. */
const SALT_SIZED = 0.005;

/** What is to be said about the batch as a whole. */
export function batchFindings(state: CureState): CureFinding[] {
  const hasCure = curingSalts(state.lines).some((line) => line.massG !== 0);
  return [
    ...amountFindings(state),
    ...doseFindings(state),
    ...(hasCure ? [...handlingFindings(state), ...productFindings(state)] : []),
  ];
}

const CEILING = 'nitrite-ceiling-and-floor';

function finding(
  id: CureFindingId,
  severity: Severity,
  params: Params,
  caution: string,
  field = 'formula.lines',
): CureFinding {
  return { id, severity, stage: 'cure', field, params, caution };
}

function amountFindings(state: CureState): CureFinding[] {
  const { values, amounts } = state;
  const found: CureFinding[] = [];
  for (const judged of values.ceilings.filter(({ state: verdict }) => verdict === 'fail')) {
    const isLeft = judged.limit.kind === 'residual';
    const over = isLeft
      ? finding('cure.residual-over-limit', 'stop', limitParams(judged), CEILING, 'cure.residual.found')
      : finding('cure.over-limit', 'stop', limitParams(judged), CEILING);
    found.push({ ...over, basis: judged.limit.source });
  }
  // What is certain is enough to stop, even while another curing salt is still unknown.
  const certainly = (basisG: number | null) => nitritePpm(amounts.nitriteG.low, basisG ?? 0) ?? 0;
  const onTotal = certainly(amounts.totalG);
  const highest = Math.max(onTotal, certainly(amounts.meatBlockG));
  if (highest >= GROSS_ERROR_PPM) {
    found.push(finding('cure.gross-error', 'stop', { ppm: highest }, 'pink-salt-mix-ups'));
  } else if (exceeds(onTotal, HIGHEST_CEILING_PPM)) {
    const params = { ppm: onTotal, highestCeilingPpm: HIGHEST_CEILING_PPM };
    found.push(finding('cure.above-every-ceiling', 'stop', params, CEILING));
  }
  found.push(...nearCeiling(state), ...floorFindings(values.floors));
  return found;
}

/** Within the limit as weighed, over it if the scale rounded the wrong way. */
function nearCeiling(state: CureState): CureFinding[] {
  const { readabilityG, values, amounts } = state;
  if (readabilityG === null) return [];
  const halfStepG = curingSalts(state.lines)
    .filter((line) => line.massG !== 0)
    .reduce((sum, line) => sum + (readabilityG / 2) * (line.curingSalt.nitriteFraction ?? 0), 0);
  return values.ceilings
    .filter(
      ({ limit, state: verdict }) =>
        verdict === 'pass' && limit.kind === 'ingoing' && limit.substance === 'nitrite',
    )
    .flatMap((judged) => {
      const basisG = judged.limit.basis === 'meat-block' ? amounts.meatBlockG : amounts.totalG;
      const stepPpm =
        basisG === null ? null : nitritePpm(inLimitForm(judged.limit.expressedAs, halfStepG, 0), basisG);
      const worstPpm = (judged.highestPpm ?? 0) + (stepPpm ?? 0);
      if (!exceeds(worstPpm, judged.limit.valuePpm)) return [];
      return [
        finding('cure.near-ceiling', 'caution', { ...limitParams(judged), worstPpm }, 'weigh-curing-salt'),
      ];
    });
}

/** Some is in, but less than a name or an agency's policy asks for. */
function floorFindings(floors: readonly JudgedLimit[]): CureFinding[] {
  return floors
    .filter(({ limit, ppm }) => ppm !== null && ppm > 0 && ppm < limit.valuePpm * (1 - 1e-9))
    .map((judged) => {
      const id =
        judged.limit.role === 'naming-floor' ? 'cure.not-called-cured' : 'cure.keep-refrigerated-policy';
      return { ...finding(id, 'note', limitParams(judged), CEILING), basis: judged.limit.source };
    });
}

/** The scale, the lock and the two people. */
function handlingFindings(state: CureState): CureFinding[] {
  const { cure } = state.slices;
  const found: CureFinding[] = [];
  if (state.readabilityG === null) {
    found.push(finding('cure.scale-unknown', 'note', {}, 'weigh-curing-salt', 'cure.scaleReadability'));
  }
  const weighedBy = cure.weighedBy.trim().toLowerCase();
  const checkedBy = cure.checkedBy.trim().toLowerCase();
  if (weighedBy === '' || checkedBy === '') {
    const field = weighedBy === '' ? 'cure.weighedBy' : 'cure.checkedBy';
    found.push(finding('cure.second-person-missing', 'note', {}, 'weigh-curing-salt', field));
  } else if (weighedBy === checkedBy) {
    found.push(finding('cure.same-person', 'caution', {}, 'weigh-curing-salt', 'cure.checkedBy'));
  }
  found.push(...swappedSalts(state));
  found.push(finding('cure.lock-up', 'note', {}, 'lock-up-curing-salt'));
  return found;
}

/** A strong curing salt and no plain salt: as much of it as a plain salt would be is a stop. */
function swappedSalts(state: CureState): CureFinding[] {
  const strongG = curingSalts(state.lines)
    .filter((line) => (line.curingSalt.nitriteFraction ?? 0) > STRONG_STRENGTH)
    .reduce((sum, line) => sum + (line.massG ?? 0), 0);
  const plain = state.lines.filter((line) => line.part === 'salt' && line.curingSalt === null);
  if (strongG === 0 || plain.some((line) => line.massG !== 0)) return [];
  const isSaltSized = strongG >= SALT_SIZED * (state.amounts.totalG ?? strongG);
  return [finding('cure.no-plain-salt', isSaltSized ? 'stop' : 'caution', {}, 'pink-salt-mix-ups')];
}

/** What nitrite means for this product. */
function productFindings(state: CureState): CureFinding[] {
  const { values, formula, slices } = state;
  const { cured } = values;
  const found: CureFinding[] = [];
  const onMeat = values.ruleSet?.ingoingBasis === 'meat-block';
  const ppm = onMeat ? cured.ingoingPpmMeat : cured.ingoingPpmTotal;
  if (ppm !== null && ppm > 0 && ppm < CURED_PPM * (1 - 1e-9)) {
    const params = { ppm, curedPpm: CURED_PPM, weightBasis: onMeat ? 'meat-block' : 'total' };
    found.push(finding('cure.colour-only', 'note', params, CEILING));
  }
  const { liverFraction } = cured;
  if (liverFraction !== null && liverFraction > MUCH_LIVER) {
    found.push(
      finding('cure.liver-takes-nitrite', 'note', { liverFraction, muchFraction: MUCH_LIVER }, CEILING),
    );
  }
  const { familyId } = slices.formula;
  if (formula.facts.fish === true || familyId === 'fish-mousseline')
    found.push(finding('cure.fish', 'caution', {}, CEILING));
  if (familyId === 'fresh-sausage')
    found.push(finding('cure.fresh-sausage', 'caution', {}, CEILING, 'formula.familyId'));
  found.push(finding('cure.not-for-infants', 'note', {}, 'nitrite-not-for-infants'));
  return found;
}
