import type { FormulaLine, LinePart } from '../formula/index.ts';
import type { MouldItem } from '../mould/index.ts';
import type { ProbeLog, ProcessStep, StepKind } from '../process/index.ts';
import { blankEntry, defaultEntry, enteredEntry } from '../quantities/index.ts';
import { BATCH_SCHEMA, type Batch } from './record.ts';

/**
 * An empty batch with the shipped defaults, each marked as a default.
 *
 * @param start id of the record, the moment it is begun (ISO 8601 with offset) and the IANA zone
 */
export function newBatch(start: { id: string; at: string; zone: string }): Batch {
  return {
    schema: BATCH_SCHEMA,
    id: start.id,
    demo: false,
    createdAt: start.at,
    updatedAt: start.at,
    zone: start.zone,
    product: {
      name: '',
      batchNo: '',
      kitchen: '',
      portions: blankEntry('count'),
      madeBy: '',
      finished: blankEntry('g'),
      useBy: '',
    },
    formula: { familyId: null, lines: [], saltTarget: defaultEntry('1.7', '%') },
    cure: {
      ruleSetId: null,
      nitriteTarget: blankEntry('ppm'),
      scaleReadability: blankEntry('g'),
      weighedBy: '',
      checkedBy: '',
    },
    mould: { moulds: [], density: defaultEntry('1.04', 'g/mL') },
    process: { cookRuleSetId: null, cookLimitId: null, coolRuleSetId: null, steps: [], logs: [] },
    press: {
      boardLength: blankEntry('mm'),
      boardWidth: blankEntry('mm'),
      load: blankEntry('kg'),
      pressureTarget: blankEntry('kPa'),
      startedAt: null,
    },
    deviations: [],
    signOffs: [],
    notes: '',
    issued: [],
    lifecycle: [],
    dispatches: [],
    history: [],
  };
}

/** An empty line of the formula. Only a curing salt has a strength to declare. */
export function newLine(id: string, part: LinePart): FormulaLine {
  return {
    id,
    name: '',
    part,
    ingredientId: null,
    amount: blankEntry('g'),
    basis: 'mass',
    actual: blankEntry('g'),
    lot: '',
    declared: {
      salt: blankEntry('%'),
      fat: blankEntry('%'),
      protein: blankEntry('%'),
      water: blankEntry('%'),
    },
    cure: part === 'curing-salt' ? { nitrite: blankEntry('%'), nitrate: blankEntry('%') } : null,
    carriedNitrite: blankEntry('ppm'),
  };
}

/** One rectangular mould with nothing measured yet. */
export function newMould(id: string): MouldItem {
  return {
    id,
    name: '',
    shape: 'rectangular',
    dimensions: {
      length: blankEntry('mm'),
      width: blankEntry('mm'),
      depth: blankEntry('mm'),
      baseLength: blankEntry('mm'),
      baseWidth: blankEntry('mm'),
      diameter: blankEntry('mm'),
    },
    waterFill: blankEntry('mL'),
    headspace: defaultEntry('10', 'mm'),
    liningKind: 'none',
    liningThickness: blankEntry('mm'),
    count: defaultEntry('1', 'count'),
    actualFills: [],
  };
}

/** A step of the process that has not begun. */
export function newStep(id: string, kind: StepKind): ProcessStep {
  return {
    id,
    kind,
    medium: blankEntry('C'),
    oven: blankEntry('C'),
    startedAt: null,
    endedAt: null,
    note: '',
  };
}

/** A probe in a mould, without readings. Its offset and error stay unknown until somebody checks it. */
export function newProbeLog(id: string, mouldId: string | null): ProbeLog {
  return {
    id,
    name: '',
    mouldId,
    probeName: '',
    offset: blankEntry('dC'),
    error: blankEntry('dC'),
    readings: [],
  };
}

/** One reading as written down at the bench. */
export function newReading(
  id: string,
  at: string,
  temperatureText: string,
  unit: 'C' | 'F',
  enteredAt: string | null,
): ProbeLog['readings'][number] {
  return {
    id,
    at,
    temperature: enteredEntry(temperatureText, unit),
    enteredAt,
    initials: '',
    excluded: null,
  };
}
