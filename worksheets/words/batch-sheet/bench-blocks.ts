import type { Slot } from '../slot.ts';

export const batch = 'Batch';
export const product = 'Product';
export const batchNo = 'Batch no.';
export const kitchen = 'Kitchen';
export const family = 'Family';
export const moulds = 'Moulds';
export const portions = 'Portions';
export const madeBy = 'Made by';
export const shiftStart = 'Shift, start';
export const warnings = 'Warnings';
export const allergens = 'ALLERGENS';
export const audience = 'AUDIENCE';
export const changedInitials = 'Changed, initials';
export const beforeYouStart = 'Before you start';
export const bathAndChillerFree = 'Bath and chiller free';
export const grinderPartsCounted = 'Grinder parts counted';
export const areaCleaned = 'Area cleaned';
export const scaleChecked = 'Scale checked';
export const probe = 'Probe';
export const probe2 = 'Probe ±';
export const iceReads = 'Ice reads';
export const scaleStep = 'Scale step';
export const checkMass = 'Check mass';
export const chillerAir = 'Chiller air';
export const initials = 'Initials';
export const rawMaterials = 'Raw materials';
export const meatFatLiver = 'Meat, fat, liver';
export const planG = 'Plan g';
export const cIn = '°C in';
export const lotApproval = 'Lot, approval';
export const useBy = 'Use by';
export const actualG = 'Actual g';
export const other = 'Other';
export const lot = 'Lot';
export const moreLinesOnTheWeighUp = (length: number) => ` · ${length} more lines on the weigh-up card`;
export const totalInTheBowlMeatBlock = (strong: Slot, strong2: Slot, length: string): Slot => [
  'Total in the bowl: ',
  strong,
  ' · meat block: ',
  strong2,
  length,
];
export const saltAllSources = 'Salt, all sources';
export const ofTotal = '______ % of total';
export const targetTotalOnWater = (
  strong: Slot,
  strong2: Slot,
  strong3: Slot,
  sources: string,
  lined: string,
): Slot => ['Target ', strong, ' · total ', strong2, ' · on water ', strong3, sources, lined];
export const afterTestPoach = 'After test poach';
export const cTimeInitials = '°C, time, initials';
export const testPoachTasteCold = 'Test poach, taste cold';
export const raw = 'Raw';
export const cooked = 'Cooked';
export const loss = 'Loss';
export const core = 'Core';
export const tastedAt = 'Tasted at';
export const verdict = 'Verdict';
export const fill = 'Fill';
export const lining = (lining: string) => `, lining: ${lining}`;
export const fillHeadspace = (name: string, strong: Slot, cell: Slot, lining: string): Slot => [
  name,
  ': fill ',
  strong,
  ', headspace ',
  cell,
  lining,
  ' ·',
];
export const fillPerMouldGHeadspaceMm = 'Fill per mould ________ g, headspace ______ mm · ';
export const density = (moulds: Slot, cell: Slot): Slot => [moulds, 'density ', cell];
export const mould = (index: number) => `Mould ${index}`;
export const filledAt = 'Filled at';
