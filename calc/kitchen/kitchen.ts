import { blankEntry, type Entry } from '../quantities/index.ts';
import type { Thermometer } from '../thermometer/index.ts';

/** The version this code writes. Newer ones are refused. */
export const KITCHEN_VERSION = 1;

/** One scale and the smallest step it shows. */
export interface Scale {
  id: string;
  /** As it is marked. */
  name: string;
  /** What its last digit moves by, g. */
  step: Entry;
}

/**
 * What a kitchen sets once for this device: copied into a batch when it begins, and marked there as a default. A
 * change here changes no batch.
 */
export interface Kitchen {
  version: typeof KITCHEN_VERSION;
  /** Heads every printed sheet of a new batch. */
  name: string;
  /** Which scale of temperature is written first and offered first; `rule`: as each rule states it. */
  tempFirst: 'rule' | 'C' | 'F';
  paper: 'a4' | 'letter';
  /** Rule sets a new batch begins with, by id; null: each batch chooses. */
  cureRuleSetId: string | null;
  cookRuleSetId: string | null;
  coolRuleSetId: string | null;
  scales: Scale[];
  /** Height above sea level, m. */
  altitude: Entry;
  /** The kitchen's thermometers with their last check. */
  thermometers: Thermometer[];
  scheme: 'system' | 'light' | 'dark';
}

/** A kitchen nobody has described. */
export function blankKitchen(): Kitchen {
  return {
    version: KITCHEN_VERSION,
    name: '',
    tempFirst: 'rule',
    paper: 'a4',
    cureRuleSetId: null,
    cookRuleSetId: null,
    coolRuleSetId: null,
    scales: [],
    altitude: blankEntry('m'),
    thermometers: [],
    scheme: 'system',
  };
}
