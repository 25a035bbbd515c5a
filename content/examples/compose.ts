import { type Batch, newBatch, newMould, newProbeLog, newStep } from '@larderwright/calc/batch';
import type { CureSlice } from '@larderwright/calc/cure';
import type { FormulaLine, FormulaSlice } from '@larderwright/calc/formula';
import type { MouldItem } from '@larderwright/calc/mould';
import type { PressSlice } from '@larderwright/calc/press';
import type { ProcessSlice } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';
import { readings } from '../demo/compose.ts';

const DAY = '2026-02-17';
const OFFSET = '+00:00';
const ZONE = 'Europe/London';

/** A clock time of the day every example is made on. */
export const at = (clock: string) => `${DAY}T${clock}:00${OFFSET}`;

const blank = newBatch({ id: 'example', at: at('07:00'), zone: ZONE });

/** What an example fills in. */
export type Filled = Omit<Partial<Batch>, 'product'> & { product?: Partial<Batch['product']> };

/**
 * The example of one technique page: invented, marked as a demo, with only what the page works on.
 *
 * @param slug the name the page calls it by
 * @param parts the slices that are filled in; the rest stays blank
 */
export function example(slug: string, name: string, kitchen: string, filled: Filled): Batch {
  return derived(blank, slug, { ...filled, product: { name, kitchen, ...filled.product } });
}

/** The example of a page that goes on from another invented batch. */
export function derived(from: Batch, slug: string, filled: Filled): Batch {
  return {
    ...from,
    ...filled,
    id: `example-${slug}`,
    demo: true,
    product: { ...from.product, ...filled.product },
  };
}

/** The mix; the salt wanted is a share of the whole. */
export function formula(
  familyId: string | null,
  saltTarget: string | null,
  lines: readonly FormulaLine[],
): FormulaSlice {
  return {
    familyId,
    lines: [...lines],
    saltTarget: saltTarget === null ? blank.formula.saltTarget : enteredEntry(saltTarget, '%'),
  };
}

/** A curing salt weighed and read back by a second person. The scale's step is in g. */
export function cure(ruleSetId: string, nitritePpm: string, stepG = '0.1'): CureSlice {
  return {
    ruleSetId,
    nitriteTarget: enteredEntry(nitritePpm, 'ppm'),
    scaleReadability: enteredEntry(stepG, 'g'),
    weighedBy: 'Bench 2',
    checkedBy: 'Bench 4',
  };
}

/** Rectangular moulds by their inside, mm. */
export function loaves(
  name: string,
  [length, width, depth]: readonly [string, string, string],
  headspace: string,
  count: string,
  more: Partial<MouldItem> = {},
): MouldItem {
  const mould = newMould('loaf');
  return {
    ...mould,
    name,
    dimensions: {
      ...mould.dimensions,
      length: enteredEntry(length, 'mm'),
      width: enteredEntry(width, 'mm'),
      depth: enteredEntry(depth, 'mm'),
    },
    headspace: enteredEntry(headspace, 'mm'),
    count: enteredEntry(count, 'count'),
    ...more,
  };
}

interface Work {
  /** Cooking rule set and the one limit the plan names. */
  limit: readonly [ruleSetId: string, limitId: string];
  coolRuleSetId?: string;
  cook?: readonly [from: string, to: string, bathC: string, note: string];
  chill?: readonly [from: string, to: string, mediumC: string, note: string];
  /** `08:40 7.0, 08:50 7.4` */
  core?: string;
  /** What the probe shows too much, and how far it may be off after that, °C. */
  probe?: readonly [name: string, offset: string, error: string];
  place?: string;
  /** The checked thermometer that the probe is. */
  thermometerId?: string;
}

/** Cook and chill of one probe in one mould. */
export function work(given: Work): ProcessSlice {
  const {
    limit,
    coolRuleSetId = null,
    cook,
    chill,
    core,
    probe = ['T-2', '0', '0.5'],
    place,
    thermometerId,
  } = given;
  const step = (
    kind: 'cook' | 'chill',
    [from, to, medium, note]: readonly [string, string, string, string],
  ) => ({
    ...newStep(kind, kind),
    medium: enteredEntry(medium, 'C'),
    startedAt: at(from),
    endedAt: at(to),
    note,
  });
  return {
    cookRuleSetId: limit[0],
    cookLimitId: limit[1],
    coolRuleSetId,
    steps: [...(cook ? [step('cook', cook)] : []), ...(chill ? [step('chill', chill)] : [])],
    logs: [
      {
        ...newProbeLog('probe', null),
        ...(thermometerId === undefined ? {} : { thermometerId }),
        name: place ?? 'Centre of the first mould',
        probeName: probe[0],
        offset: enteredEntry(probe[1], 'dC'),
        error: enteredEntry(probe[2], 'dC'),
        readings: core === undefined ? [] : readings(DAY, OFFSET, 'mk', core),
      },
    ],
  };
}

/** A board of the mould's inside, mm, with its load in kg and the pressure wanted in kPa. */
export function press(
  length: string,
  width: string,
  load: string,
  target: string,
  clock: string,
): PressSlice {
  return {
    boardLength: enteredEntry(length, 'mm'),
    boardWidth: enteredEntry(width, 'mm'),
    load: enteredEntry(load, 'kg'),
    pressureTarget: enteredEntry(target, 'kPa'),
    startedAt: at(clock),
  };
}
