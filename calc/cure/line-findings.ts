import type { Params, Severity } from '../findings/index.ts';
import { CARRIED_WORST_PPM, CARRIED_WORST_SOURCE, isCuringVegetable } from './carried-nitrite.ts';
import { type CureLine, type CuringSalt, curingSalts, STRENGTH_RANGE } from './cure-line.ts';
import type { CureFinding, CureFindingId } from './finding-ids.ts';
import { nitriteCeilingOfSalt } from './nitrite-ceiling-of-salt.ts';
import type { CureState } from './state.ts';
import { NITRATE_FAMILY } from './verdicts.ts';
import { MIN_SCALE_STEPS } from './weighing.ts';

/** Weaker than this, a curing salt is the salt of the mix. Common practice, no source. */
const WEAK_STRENGTH = 0.01;
/** Names under which curing salt and saltpetre stand on shelves and are mistaken for salt. Pink pepper is none. */
const CURE_NAMES = /\b(curing|nitrit|nitrat|saltpet|pink(?! *(?:pepper|berr)))/i;

/** What is to be said about single lines: the packs, their strengths and amounts. */
export function lineFindings(state: CureState): CureFinding[] {
  const cures = curingSalts(state.lines).filter((line) => line.massG !== 0);
  return [
    ...cures.flatMap((line) => [...packFindings(state, line), ...scaleFindings(state, line)]),
    ...state.lines.filter((line) => line.curingSalt === null).flatMap(namedLikeCure),
    ...state.lines.filter(isCuringVegetable).map(vegetableFinding),
    ...boundFindings(state),
  ];
}

function finding(
  id: CureFindingId,
  severity: Severity,
  field: string,
  params: Params,
  caution: string,
): CureFinding {
  return { id, severity, stage: 'cure', field, params, caution };
}

function packFindings(state: CureState, line: CureLine & { curingSalt: CuringSalt }): CureFinding[] {
  const path = `formula.lines.${line.id}`;
  const { name } = line;
  const { problem, nitrateFraction, nitriteFraction, notInGrams } = line.curingSalt;
  const found: CureFinding[] = [];
  const stop = (id: CureFindingId, field: string, caution: string, params: Params = {}) =>
    found.push(finding(id, 'stop', `${path}.${field}`, { name, ...params }, caution));

  if (line.part !== 'curing-salt') stop('cure.entered-as-another-part', 'part', 'pink-salt-mix-ups');
  if (problem === 'pure-chemical') stop('cure.pure-chemical', 'ingredientId', 'no-pure-nitrite');
  if (problem === 'missing') stop('cure.strength-missing', 'cure.nitrite', 'weigh-curing-salt');
  const range = { lowFraction: STRENGTH_RANGE.min, highFraction: STRENGTH_RANGE.max };
  if (problem === 'too-weak') stop('cure.strength-too-weak', 'cure.nitrite', 'weigh-curing-salt', range);
  if (problem === 'too-strong') stop('cure.strength-too-strong', 'cure.nitrite', 'no-pure-nitrite', range);
  if (notInGrams) stop('cure.grams-only', 'amount', 'no-spoons-for-curing-salt');
  if ((nitrateFraction ?? 0) > 0) {
    if (state.slices.formula.familyId === NITRATE_FAMILY) {
      const field = `${path}.cure.nitrate`;
      found.push(finding('cure.nitrate-specialist', 'caution', field, { name }, 'pink-salt-mix-ups'));
    } else stop('cure.nitrate-present', 'cure.nitrate', 'pink-salt-mix-ups');
  }
  if (nitrateFraction === null) {
    found.push(
      finding('cure.nitrate-blank', 'caution', `${path}.cure.nitrate`, { name }, 'pink-salt-mix-ups'),
    );
  }
  if (nitriteFraction !== null && nitriteFraction <= WEAK_STRENGTH)
    found.push(...oneLever(state, line, nitriteFraction));
  return found;
}

/** A weak pack brings its salt along: how much nitrite the wanted salt allows. */
function oneLever(state: CureState, line: CureLine, nitriteFraction: number): CureFinding[] {
  const saltTarget = state.formula.saltTargetFraction;
  if (saltTarget === null || line.saltFraction === null) return [];
  const mostPpm = nitriteCeilingOfSalt(saltTarget, nitriteFraction, line.saltFraction);
  if (mostPpm === null) return [];
  const params = { name: line.name, saltTargetFraction: saltTarget, mostPpm };
  return [finding('cure.one-lever', 'note', 'formula.saltTarget', params, 'nitrite-ceiling-and-floor')];
}

function scaleFindings(state: CureState, line: CureLine): CureFinding[] {
  const weighed = state.values.weighing.find((item) => item.lineId === line.id);
  const { readabilityG } = state;
  if (weighed?.isWeighable !== false || readabilityG === null || line.massG === null) return [];
  const params = {
    name: line.name,
    massG: line.massG,
    readabilityG,
    leastG: readabilityG * MIN_SCALE_STEPS,
    errorFraction: weighed.errorFraction ?? 0,
  };
  const field = `formula.lines.${line.id}.${line.isWeighed ? 'actual' : 'amount'}`;
  return [finding('cure.too-small-to-weigh', 'stop', field, params, 'weigh-curing-salt')];
}

/** A line called "pink salt" that is entered as plain salt or seasoning. */
function namedLikeCure(line: CureLine): CureFinding[] {
  if (line.part !== 'salt' && line.part !== 'seasoning') return [];
  if (line.massG === 0 || line.carriedPpm !== null || !CURE_NAMES.test(line.name)) return [];
  const field = `formula.lines.${line.id}.part`;
  return [finding('cure.named-like-curing-salt', 'caution', field, { name: line.name }, 'pink-salt-mix-ups')];
}

/** A powder or juice that cures without being called curing salt. */
function vegetableFinding({ id, name, carriedPpm }: CureLine): CureFinding {
  const field = `formula.lines.${id}.carriedNitrite`;
  const params = { name, told: carriedPpm === null ? 'no' : 'yes' };
  return finding('cure.vegetable-nitrite', 'caution', field, params, 'nitrite-ceiling-and-floor');
}

/** Goods that may be cured and whose maker's figure is not known. */
function boundFindings(state: CureState): CureFinding[] {
  const isOpen = state.values.ceilings.some(({ reason }) => reason === 'cure.carried-unknown');
  const vegetables = new Set(state.lines.filter(isCuringVegetable).map(({ id }) => id));
  return state.values.carried
    .filter((item) => item.isBound && !vegetables.has(item.lineId))
    .map((item) => {
      const field = `formula.lines.${item.lineId}.carriedNitrite`;
      const highest = item.highG === null ? {} : { highestMg: item.highG * 1000 };
      const params = { name: item.name, worstPpm: CARRIED_WORST_PPM, ...highest };
      const severity = isOpen ? 'caution' : 'note';
      return {
        ...finding('cure.carried-bound', severity, field, params, 'nitrite-ceiling-and-floor'),
        basis: CARRIED_WORST_SOURCE,
      };
    });
}
