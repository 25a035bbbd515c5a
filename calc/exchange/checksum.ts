import { strToU8 } from 'fflate';
import type { Batch } from '../batch/index.ts';

/** Reversed polynomial of the CRC-32 of ISO/IEC/IEEE 8802-3 (Ethernet) and ISO/IEC 9899-era archives. */
const POLYNOMIAL = 0xedb88320;
/** Digits and letters that are not mistaken for each other when read off paper: no I, L, O, U. */
const DIGITS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
/** 32 bits in fives. */
const LENGTH = 7;

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  return rest >>> 0;
});

/** CRC-32 of bytes, 0 … 2³² − 1. It finds slips and cut texts; it is no protection against a forger. */
export function crc32(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (const byte of bytes) rest = (TABLE[(rest ^ byte) & 0xff] ?? 0) ^ (rest >>> 8);
  return (rest ^ 0xffffffff) >>> 0;
}

function inDigits(value: number): string {
  let rest = value;
  let text = '';
  for (let place = 0; place < LENGTH; place++) {
    text = DIGITS.charAt(rest % 32) + text;
    rest = Math.floor(rest / 32);
  }
  return text;
}

const isEntry = (value: object): value is { text: string; unit: string; origin: string } =>
  'text' in value && 'unit' in value && 'origin' in value;

/** What says something: blanks are left out, so that a worksheet merely opened changes nothing. Keys in order. */
function said(value: unknown): unknown {
  if (value === null || value === undefined || value === '' || value === false) return undefined;
  if (Array.isArray(value)) return value.length === 0 ? undefined : value.map((row) => said(row) ?? null);
  if (typeof value !== 'object') return value;
  if (isEntry(value)) return value.text === '' ? undefined : `${value.text} ${value.unit}`;
  const parts = Object.entries(value)
    .map(([key, part]) => [key, said(part)] as const)
    .filter(([, part]) => part !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return parts.length === 0 ? undefined : Object.fromEntries(parts);
}

/**
 * Seven digits and letters that change when what a sheet prints from changes: formula, weights, readings, signatures.
 * The clock of the last edit and the assessments kept at printing do not count.
 *
 * @example recordChecksum(batch) // '3K8QF2M'
 */
export function recordChecksum(batch: Batch): string {
  const { id, product, formula, cure, mould, process, press } = batch;
  const {
    deviations,
    signOffs,
    notes,
    dryCure,
    brine,
    drying,
    binder,
    seasoning,
    label,
    storage,
    thermometers,
    ruleSetDefaults,
  } = batch;
  const told = batch.cookPlan?.told;
  const printed = { id, product, formula, cure, mould, process, press, deviations, signOffs, notes };
  const begun = {
    dryCure,
    brine,
    drying,
    binder,
    seasoning,
    label,
    storage,
    thermometers,
    ruleSetDefaults,
    told,
  };
  const text = JSON.stringify(said({ ...printed, ...begun }));
  return inDigits(crc32(strToU8(text)));
}
