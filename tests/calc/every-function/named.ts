import {
  type Assessment,
  assess,
  type Batch,
  cookPlanContext,
  issueAssessment,
} from '@larderwright/calc/batch';
import { newBinderSlice } from '@larderwright/calc/binder';
import { newBlendSlice } from '@larderwright/calc/blend';
import { newBrineSlice } from '@larderwright/calc/brine';
import { newCasingsSlice } from '@larderwright/calc/casings';
import {
  meatHeat,
  newChillBudgetSlice,
  WATER_HEATS,
  WORKING_WATER_HEATS,
} from '@larderwright/calc/chill-budget';
import { newCookPlanSlice, planGround } from '@larderwright/calc/cook-plan';
import { COOL_RULE_SETS } from '@larderwright/calc/cooling';
import { CURE_RULE_SETS } from '@larderwright/calc/cure';
import { newDryCureSlice, WHOLE_MUSCLE_RULE_SETS } from '@larderwright/calc/dry-cure';
import { newDryingSlice } from '@larderwright/calc/drying';
import { FAMILIES } from '@larderwright/calc/formula';
import { newGeleeSlice } from '@larderwright/calc/gelee';
import { LACTIC_2013, LISTERIA_2009, newStorageSlice, PERFRINGENS_SETS } from '@larderwright/calc/growth';
import {
  airGap,
  constantMaterial,
  enthalpyTable,
  fatLining,
  foodMaterial,
  normalised,
  ovenPan,
  pastry,
  solidOfShape,
} from '@larderwright/calc/heat';
import type { loadIngredientDetails, loadIngredients } from '@larderwright/calc/ingredients';
import { MEAT_LIMITS, newLabelSlice, ROUNDING_RULE_SETS } from '@larderwright/calc/label';
import {
  COOK_RULE_SETS,
  LINE_70_Z7_5,
  LINE_70_Z10,
  LINE_90_UK,
  LINE_90_US,
  organismLines,
} from '@larderwright/calc/lethality';
import { MOULD_SIZES, mouldGeometry, newCrustSlice } from '@larderwright/calc/mould';
import { newPlanSlice } from '@larderwright/calc/plan';
import { UNITS, type Unit } from '@larderwright/calc/quantities';
import { newSeasoningSlice } from '@larderwright/calc/seasoning';
import { newSlicingSlice } from '@larderwright/calc/slicing';
import {
  checkThermometer,
  newThermometer,
  newThermometerSlice,
  placeOf,
} from '@larderwright/calc/thermometer';
import { newYieldSlice } from '@larderwright/calc/yield';
import fc from 'fast-check';
import { demos } from '../../../content/demo/index.ts';
import { examples } from '../../../content/examples/index.ts';
import { anyBatch } from '../exchange/any-batch.ts';
import { randomProcess, seeded } from '../heat/random-batches.ts';
import { oddTexts } from './of-name.ts';
import type { Named } from './of-type.ts';

const units = Object.keys(UNITS).filter((unit): unit is Unit => unit in UNITS);

const typedNumber = fc.oneof(
  { weight: 4, arbitrary: fc.double({ min: 0, max: 5000, noNaN: true }).map((value) => value.toFixed(2)) },
  {
    weight: 2,
    arbitrary: fc.constantFrom('0', '1', '0,0001', '70', '160 F', '2 lb', '1 1/2', '0.25 %', '-5', '1e6'),
  },
  { weight: 2, arbitrary: fc.constantFrom('10000000', '999999999', '99.999 %', '400', '-200', '5256000') },
  { weight: 2, arbitrary: oddTexts },
);

const entries = fc.record({
  text: typedNumber,
  unit: fc.constantFrom(...units),
  origin: fc.constantFrom('entered' as const, 'default' as const),
});

type Holder = Record<string, unknown> | unknown[];
interface Leaf {
  readonly holder: Holder;
  readonly key: string;
}

/** Every text, list and unknown value a record holds, with the object it stands in. */
function leavesOf(value: unknown, out: Leaf[] = []): Leaf[] {
  if (typeof value !== 'object' || value === null) return out;
  for (const [key, member] of Object.entries(value)) {
    if (typeof member !== 'number' && typeof member !== 'boolean' && key !== 'unit' && key !== 'origin')
      out.push({ holder: value as Holder, key });
    leavesOf(member, out);
  }
  return out;
}

/** One slip of a person or of a broken file that the schema still lets through: a text typed over, a row lost or doubled. */
function slip(record: unknown, at: number, text: string): void {
  const leaves = leavesOf(record);
  const leaf = leaves[at % Math.max(1, leaves.length)];
  if (!leaf) return;
  const held: unknown = Reflect.get(leaf.holder, leaf.key);
  if (typeof held === 'string' && !CHOICES.has(leaf.key)) Reflect.set(leaf.holder, leaf.key, text);
  else if (Array.isArray(held)) {
    if (at % 2 === 0) held.pop();
    else if (held[0] !== undefined) held.push(structuredClone(held[0]));
  }
}
/** Texts that come from a list and not from fingers. */
const CHOICES = new Set(
  'id kind shape role state decision method form liningKind what part basis product heating place source scale'.split(
    ' ',
  ),
);

const starts: readonly Batch[] = [...Object.values(demos), ...Object.values(examples)];

/** An invented batch of the site with a few slips in it, so that most of it still computes. */
const slipped: fc.Arbitrary<Batch> = fc
  .tuple(fc.nat(starts.length - 1), fc.array(fc.tuple(fc.nat(100_000), typedNumber), { maxLength: 5 }))
  .map(([start, slips]) => {
    const batch = structuredClone(starts[start]) as Batch;
    for (const [at, text] of slips) slip(batch, at, text);
    return batch;
  });

const batches = fc.oneof({ weight: 3, arbitrary: slipped }, { weight: 1, arbitrary: anyBatch });

const TODAY = '2026-11-25';

/** Arbitraries for the types of calc whose members alone do not say what they may hold together. */
export function namedTypes(
  table: Awaited<ReturnType<typeof loadIngredients>>,
  details: Awaited<ReturnType<typeof loadIngredientDetails>>,
): Named {
  const assessed = (batch: Batch): Assessment => assess(batch, { composition: table, today: TODAY });
  const part = <T>(pick: (assessment: Assessment) => T) => slipped.map((batch) => pick(assessed(batch)));
  const slice = <T>(pick: (batch: Batch) => T) => batches.map(pick);
  const compositions = fc
    .record({
      water: fc.double({ min: 0, max: 1, noNaN: true }),
      protein: fc.double({ min: 0, max: 1, noNaN: true }),
      fat: fc.double({ min: 0, max: 1, noNaN: true }),
      carbohydrate: fc.double({ min: 0, max: 0.3, noNaN: true }),
      fibre: fc.double({ min: 0, max: 0.1, noNaN: true }),
      ash: fc.double({ min: 0, max: 0.3, noNaN: true }),
    })
    .map((given) => normalised(inThousandths(given)) ?? LEAN);
  const materials = compositions.map((given) => foodMaterial(given) ?? constantMaterial(0.45, 1050, 3500));
  const processes = fc.integer({ min: 0, max: 1000 }).map((seed) => randomProcess(seed, seeded(seed + 1)));
  const problems = fc.constantFrom(
    ...starts.flatMap((batch) => {
      const { problem } = planGround(batch.cookPlan ?? newCookPlanSlice(), cookPlanContext(batch, table));
      return problem ? [problem] : [];
    }),
  );
  const timed = (of: fc.Arbitrary<number>, key: 'timeMin' | 'atMs') =>
    fc
      .array(
        fc.record({
          [key]: of,
          tempC: fc.double({ min: -40, max: 150, noNaN: true }),
          unit: fc.constantFrom('C', 'F'),
          counts: fc.boolean(),
        }),
        { maxLength: 12 },
      )
      .map((list) => list.sort((a, b) => Number(a[key]) - Number(b[key])));
  const curve = timed(fc.double({ min: 0, max: 6000, noNaN: true }), 'timeMin');
  const readings = timed(fc.integer({ min: 0, max: 90_000_000 }), 'atMs');
  return {
    Batch: batches,
    Entry: entries,
    CompositionTable: fc.constant(table),
    DetailsTable: fc.constant(details),
    IngredientDetails: fc.constantFrom(...details.values()),
    Ingredient: fc.constantFrom(...table.values()),
    PickItem: fc.constantFrom(...table.values()),
    Assessment: part((assessment) => assessment),
    IssuedAssessment: slipped.map((batch) =>
      issueAssessment(batch, assessed(batch), table, '2026-11-25T10:00:00Z'),
    ),
    Mix: part(({ formula }) => formula.values.mix),
    FormulaValues: part(({ formula }) => formula.values),
    CureValues: part(({ cure }) => cure.values),
    BrineValues: part(({ brine, cure }) => brine?.values ?? { cured: cure.values.cured, reachesCore: null }),
    MouldValues: part(({ mould }) => mould.values),
    CookValues: part(({ cook }) => cook.values),
    CookLogResult: part(({ cook }) => cook.values.logs[0]).filter((result) => result !== undefined),
    FormulaSlice: slice(({ formula }) => formula),
    CureSlice: slice(({ cure }) => cure),
    MouldSlice: slice(({ mould }) => mould),
    ProcessSlice: slice(({ process }) => process),
    PressSlice: slice(({ press }) => press),
    BinderSlice: slice(({ binder }) => binder ?? newBinderSlice()),
    BlendSlice: slice(({ blend }) => blend ?? newBlendSlice()),
    BrineSlice: slice(({ brine }) => brine ?? newBrineSlice()),
    CasingsSlice: slice(({ casings }) => casings ?? newCasingsSlice()),
    ChillBudgetSlice: slice(({ chillBudget }) => chillBudget ?? newChillBudgetSlice()),
    CookPlanSlice: slice(({ cookPlan }) => cookPlan ?? newCookPlanSlice()),
    CookPlanContext: slipped.map((batch) => cookPlanContext(batch, table)),
    CrustSlice: slice(({ crust }) => crust ?? newCrustSlice()),
    DryCureSlice: slice(({ dryCure }) => dryCure ?? newDryCureSlice()),
    DryingSlice: slice(({ drying }) => drying ?? newDryingSlice()),
    GeleeSlice: slice(({ gelee }) => gelee ?? newGeleeSlice()),
    LabelSlice: slice(({ label }) => label ?? newLabelSlice()),
    PlanSlice: slice(({ plan }) => plan ?? newPlanSlice()),
    SeasoningSlice: slice(({ seasoning }) => seasoning ?? newSeasoningSlice()),
    SlicingSlice: slice(({ slicing }) => slicing ?? newSlicingSlice()),
    StorageSlice: slice(({ storage }) => storage ?? newStorageSlice()),
    ThermometerSlice: slice(({ thermometers }) => thermometers ?? newThermometerSlice()),
    YieldSlice: slice((batch) => batch.yield ?? newYieldSlice()),
    CureRuleSet: fc.constantFrom(...CURE_RULE_SETS),
    CureLimit: fc.constantFrom(...CURE_RULE_SETS.flatMap(({ limits }) => limits)),
    WholeMuscleRuleSet: fc.constantFrom(...WHOLE_MUSCLE_RULE_SETS),
    CookRuleSet: fc.constantFrom(...COOK_RULE_SETS),
    CookLimit: fc.constantFrom(...COOK_RULE_SETS.flatMap(({ limits }) => limits)),
    CoolRuleSet: fc.constantFrom(...COOL_RULE_SETS),
    CoolLeg: fc.constantFrom(...COOL_RULE_SETS.flatMap(({ legs }) => legs)),
    RoundingRule: fc.constantFrom(
      ...Object.values(ROUNDING_RULE_SETS).flatMap((set) => Object.values(set.rules)),
    ),
    Family: fc.constantFrom(...FAMILIES),
    GrowthSet: fc.constantFrom(...PERFRINGENS_SETS),
    Composition: compositions,
    Material: materials,
    EnthalpyTable: materials.map((material) => enthalpyTable(material)),
    BatchThermal: processes.map(({ batch }) => batch),
    HeatShape: processes.map(({ batch }) => batch.shape),
    Solid: processes.map(({ batch }) => solidOfShape(batch.shape, 1)),
    HeatStage: processes.map(({ stages }) => stages[0]),
    OvenBath: fc
      .record({ waterG: fc.integer({ min: 200, max: 9000 }), covered: fc.boolean() })
      .map((of) => ovenPan({ ...of, mouldPlanMm2: 24_000 })),
    Course: fc.oneof(
      fc.double({ min: -40, max: 250, noNaN: true }),
      fc.record({
        fromC: fc.double({ min: -40, max: 250, noNaN: true }),
        toC: fc.double({ min: -40, max: 250, noNaN: true }),
        tauMin: fc.double({ min: 0.1, max: 600, noNaN: true }),
      }),
    ),
    Fit: fc.constant(null),
    PlanProblem: problems,
    Layer: fc
      .record({
        coat: fc.constantFrom(fatLining, pastry, airGap),
        mm: fc.double({ min: 0.1, max: 20, noNaN: true }),
      })
      .map(({ coat, mm }) => coat(mm)),
    WaterHeats: fc.constantFrom(WATER_HEATS, WORKING_WATER_HEATS),
    HeatContent: compositions.map((given) => meatHeat(given)),
    MouldGeometry: fc
      .constantFrom(...MOULD_SIZES)
      .map(({ shape, measures }) => mouldGeometry(shape, measures))
      .filter((geometry) => geometry !== null),
    CheckedThermometer: fc
      .tuple(batches, fc.record({ ice: entries, boil: entries, step: entries, error: entries }))
      .map(([batch, read]) => {
        const place = placeOf(batch.thermometers ?? newThermometerSlice());
        return checkThermometer({ ...newThermometer('t'), ...read }, { ...place, days: [TODAY] });
      }),
    LethalityLine: fc.constantFrom(LINE_70_Z7_5, LINE_70_Z10, LINE_90_UK, LINE_90_US),
    OrganismLine: fc.constantFrom(...MEATS.flatMap((meat) => organismLines([meat], true))),
    ProductFactors: fc.constantFrom(LISTERIA_2009, LACTIC_2013),
    MeatLimits: fc.constantFrom(...Object.values(MEAT_LIMITS)),
    ProbeLine: fc.record({
      iceShownC: fc.double({ min: -2, max: 2, noNaN: true }),
      boilShownC: fc.double({ min: 90, max: 103, noNaN: true }),
      boilsAtC: fc.double({ min: 85, max: 101, noNaN: true }),
    }),
    random: fc.nat(1000).map((seed) => seeded(seed + 1)),
    curve,
    readings,
  };
}

/** Nobody knows a food closer than to a thousandth. */
function inThousandths<T extends Readonly<Record<string, number>>>(given: T): T {
  return Object.fromEntries(
    Object.entries(given).map(([part, share]) => [part, Math.round(share * 1000) / 1000]),
  ) as T;
}

const MEATS = ['beef', 'pork', 'turkey', 'chicken-liver', 'other'] as const;
const LEAN = { water: 0.75, protein: 0.22, fat: 0.02, carbohydrate: 0, fibre: 0, ash: 0.01 };
