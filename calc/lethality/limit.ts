import type { LimitTemp } from '../quantities/index.ts';
import { convert } from '../quantities/index.ts';
import type { Mark, RuleSet, SourceId } from '../sources/index.ts';

/** A time at a temperature. `s` is 0 where the rule says "less than 1 s", "less than 10 s" or "reached". */
export interface Hold {
  readonly s: number;
  /** As the table prints it. */
  readonly printed: string;
}

/** A hold of a poultry table: it serves every product up to this much fat. */
export interface FatColumn extends Hold {
  readonly maxFatPercent: number;
}

/** Hold by fat. Turkey has its own column, every other bird is read as chicken. */
export interface HoldByFat {
  readonly turkey: readonly FatColumn[];
  readonly otherBirds: readonly FatColumn[];
}

/** One pair a plan may name: hold this long at or above this at the coldest point. */
export interface CookLimit {
  readonly id: string;
  /** In the rule's own unit, with its own figure on the other scale where it prints one. */
  readonly stated: LimitTemp;
  /** °C the table prints beside its °F where that is a rounding only. For show, never for judging. */
  readonly printedC?: number;
  readonly hold: Hold | HoldByFat;
  readonly serves: 'no-poultry' | 'poultry' | 'any';
  /** What the pair is written for. Pairs for whole meat may not serve minced meat; the other way round is safe. */
  readonly form: 'any' | 'comminuted' | 'intact' | 'whole-roast';
  readonly source: SourceId;
  readonly mark: Mark;
}

/** What must also be true for a pair of the set to count. Listed beside every result. */
export type CookCondition =
  | 'come-up'
  | 'humidity'
  | 'roast-oven'
  | 'salmonella-only'
  | 'chilled-life'
  | 'advice-only'
  | 'wild-game';

/** Cooking limits of one place. A person picks the set and the one limit the plan names. */
export interface CookRuleSet extends RuleSet {
  readonly limits: readonly CookLimit[];
  readonly conditions: readonly CookCondition[];
}

/**
 * What a probe of one scale must show for a stated limit, °C, before its error is added: the rule's own figure on
 * that scale where it prints one, else the exact conversion.
 * @example thresholdC({ value: 155, unit: 'F', published: 68 }, 'C') // 68
 */
export function thresholdC(stated: LimitTemp, scale: 'C' | 'F'): number {
  if (stated.unit !== scale && stated.published !== undefined) return convert(stated.published, scale, 'C');
  return stated.unit === 'C' ? stated.value : convert(stated.value, 'F', 'C');
}

/** Whether a hold depends on fat. */
export function isByFat(hold: Hold | HoldByFat): hold is HoldByFat {
  return 'turkey' in hold;
}
