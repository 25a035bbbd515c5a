import type {
  ChillKind,
  CookMethod,
  PlanLid,
  PlanStageKind,
  PlanVessel,
  PredictedState,
} from '@larderwright/calc/cook-plan';

export const METHOD_NAMES: Readonly<Record<CookMethod, string>> = {
  bath: 'Water bath in an oven',
  oven: 'Oven, no bath',
  steam: 'Steam oven',
  poach: 'Poaching kettle',
};

export const VESSEL_NAMES: Readonly<Record<PlanVessel, string>> = {
  stoneware: 'Stoneware or pottery',
  porcelain: 'Porcelain',
  glass: 'Glass',
  'cast-iron': 'Cast iron',
  'stainless-steel': 'Stainless steel',
  tinplate: 'Tinplate',
  aluminium: 'Aluminium',
  silicone: 'Silicone',
  none: 'None: a roll in cloth or film',
};

export const LID_NAMES: Readonly<Record<PlanLid, string>> = {
  open: 'Nothing',
  foil: 'Foil or film',
  lid: 'A lid of the same material',
};

export const CHILL_KIND_NAMES: Readonly<Record<ChillKind, string>> = {
  'ice-bath': 'Ice water, still',
  'stirred-ice-bath': 'Ice water, stirred',
  blast: 'Blast chiller',
  refrigerate: 'Refrigerator',
};

export const STAGE_NAMES: Readonly<Record<PlanStageKind, string>> = {
  cook: 'in the heat',
  hold: 'held in the heat',
  rest: 'resting',
  press: 'under the press',
  chill: 'in the chill',
};

/** What a prediction says of a limit. Never a pass. */
export const PREDICTED_NAMES: Readonly<Record<PredictedState, string>> = {
  within: 'within, as predicted',
  beyond: 'NOT IN TIME, as predicted',
  'cannot-tell': 'cannot tell',
};

/** How far to trust it. Stands beside every figure of the plan. */
export const COOK_PLAN_TRUST =
  'A plan, not a proof. Nobody has published a measured core curve of a terrine in a water bath. Take every time as ±20 % at best. The probe rules: put it in the coldest spot and go by what it reads.';

/** The same on paper, under a title that says the ±20 %. */
export const COOK_PLAN_TRUST_SHORT =
  'No measured core curve of a terrine in a water bath is published. Probe the coldest spot and go by what it reads.';
