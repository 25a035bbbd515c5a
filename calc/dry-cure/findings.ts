import type { CureSlice } from '../cure/index.ts';
import type { Params, Severity } from '../findings/index.ts';
import type { DryCureFinding, DryCureFindingId } from './finding-ids.ts';
import {
  coldFindings,
  doseFindings,
  gramsOnly,
  handlingFindings,
  limitFindings,
  packFindings,
  scaleFindings,
} from './muscle-findings.ts';
import type { WholeMuscleKind } from './rule-sets/index.ts';
import type { DryCurePiece, DryCureSlice } from './slice.ts';
import type { DryCureValues, PieceValues } from './values.ts';

/** Salt of an equilibrium cure. Common practice, no source. */
const SALT_HABIT = { min: 0.02, max: 0.035 } as const;
/** Thicker than this, salt is long in coming to the middle. Common practice, no source. */
export const THICK_MM = 60;

const SUBJECT = 'dry-cure';

/** What the findings speak of. */
export interface DryCureState {
  readonly slice: DryCureSlice;
  readonly cure: CureSlice;
  readonly kind: WholeMuscleKind;
  readonly values: DryCureValues;
  readonly readabilityG: number | null;
  readonly usesCure: boolean;
  readonly saltTargetFraction: number | null;
  readonly lossTargetFraction: number | null;
}

/** What is worth telling about a dry cure. */
export function dryCureFindings(state: DryCureState): DryCureFinding[] {
  const { slice, values } = state;
  if (slice.pieces.length === 0) return [];
  return [
    ...coldFindings(SUBJECT, values.chillC, 'dryCure.chillTemp'),
    ...(state.usesCure ? cureFindings(state) : []),
    ...saltFindings(state),
    ...slice.pieces.flatMap((piece, index) => {
      const of = values.pieces[index];
      return of === undefined ? [] : pieceFindings(state, piece, of);
    }),
    ...driedFindings(state),
  ];
}

function finding(
  id: DryCureFindingId,
  severity: Severity,
  field: string,
  params: Params,
  caution?: string,
): DryCureFinding {
  return { id, severity, stage: SUBJECT, field, params, ...(caution === undefined ? {} : { caution }) };
}

function cureFindings(state: DryCureState): DryCureFinding[] {
  const { values, kind, slice, cure, readabilityG } = state;
  const found: DryCureFinding[] = [
    ...packFindings(SUBJECT, values.pack, kind, 'dryCure.pack'),
    ...handlingFindings(SUBJECT, cure, readabilityG),
  ];
  if (slice.method !== 'equilibrium') {
    found.push(finding('dry-cure.uptake-unknown', 'caution', 'dryCure.method', { method: slice.method }));
  } else found.push(finding('dry-cure.nitrite-lags', 'note', 'dryCure.pieces', {}));
  return found;
}

function saltFindings(state: DryCureState): DryCureFinding[] {
  const fraction = state.saltTargetFraction;
  if (fraction === null || state.slice.method !== 'equilibrium') return [];
  if (fraction >= SALT_HABIT.min && fraction <= SALT_HABIT.max) return [];
  const params = { saltFraction: fraction, lowFraction: SALT_HABIT.min, highFraction: SALT_HABIT.max };
  return [finding('dry-cure.salt-outside-habit', 'note', 'dryCure.saltTarget', params)];
}

function pieceFindings(state: DryCureState, piece: DryCurePiece, of: PieceValues): DryCureFinding[] {
  const path = `dryCure.pieces.${piece.id}`;
  const named = { name: piece.name };
  const found: DryCureFinding[] = [...gramsOnly(SUBJECT, piece.curingSaltActual, `${path}.curingSaltActual`)];
  if (of.isSkinEstimated) {
    const params = { ...named, greenG: of.greenG ?? 0 };
    const note = finding('dry-cure.skin-estimated', 'note', `${path}.skinOn`, params);
    found.push({ ...note, basis: 'us-fsis-7620-3' });
  }
  const target = {
    ...named,
    ...(of.plan?.dose && state.values.ceilingPpmMeat !== null
      ? { ceilingPpm: state.values.ceilingPpmMeat }
      : {}),
    ...(state.readabilityG === null ? {} : { readabilityG: state.readabilityG }),
  };
  const cureField = `${path}.curingSaltActual`;
  const weighedG = of.inUse.isCureWeighed ? of.inUse.curingSaltG : null;
  found.push(
    ...doseFindings(SUBJECT, of.plan?.dose ?? null, target, 'dryCure.nitriteTarget'),
    ...scaleFindings(SUBJECT, weighedG, state.readabilityG, named, cureField),
    ...limitFindings(SUBJECT, of, of.nitritePpmMeat, named, cureField),
  );
  const overG = of.plan?.saltOverG ?? null;
  if (overG !== null) {
    const params = { ...named, overG, saltFraction: state.saltTargetFraction ?? 0 };
    found.push(finding('dry-cure.cure-brings-too-much-salt', 'stop', 'dryCure.saltTarget', params));
  }
  return [...found, ...timeFindings(path, named, of)];
}

function timeFindings(path: string, named: Params, of: PieceValues): DryCureFinding[] {
  const found: DryCureFinding[] = [];
  const field = `${path}.thickness`;
  const { thicknessMm, time } = of;
  if (thicknessMm === null) return found;
  if (thicknessMm > THICK_MM) {
    const params = { ...named, thicknessMm, thickMm: THICK_MM };
    found.push(finding('dry-cure.thick', 'caution', field, params, 'curing-room-cold'));
  }
  const outside = time.rules.find(({ inRange }) => !inRange);
  if (outside !== undefined) {
    const params = { ...named, thicknessMm, days: outside.days, lowMm: 25, highMm: 60 };
    found.push(finding('dry-cure.thumb-rule-outside-range', 'note', field, params));
  }
  const days = time.guidanceDays;
  if (days !== null) {
    const params = { ...named, lowDays: days.low, highDays: days.high };
    found.push(finding('dry-cure.time-is-guidance', 'note', field, params, 'curing-room-cold'));
  }
  return found;
}

function driedFindings(state: DryCureState): DryCureFinding[] {
  const { slice, lossTargetFraction } = state;
  const isDried = slice.finish === 'dried-raw' || (lossTargetFraction ?? 0) > 0;
  if (!isDried) return [];
  return [finding('dry-cure.dried-specialist', 'stop', 'dryCure.finish', {}, 'curing-room-cold')];
}
