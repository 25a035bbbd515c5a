import { type BrineParts, type BrineSlice, MIXING_ORDER } from '@larderwright/calc/brine';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/brine/mixing.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { percentText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { stepText } from '../whole-muscle/planned.ts';
import { whyNoDose } from '../whole-muscle/why-no-dose.ts';
import { BRINE_PARTS } from '../words/brine-names.ts';
import type { BrineComputed } from './compute.ts';
import { $brine } from './computed.ts';
import { MASSES } from './meat-fields.tsx';

/** Where a part of the mixing order stands in the slice. Spice has no weight here. */
const KEY_OF = {
  'cold-water': 'water',
  phosphate: 'phosphate',
  salt: 'salt',
  sugar: 'sugar',
  'strained-spice': null,
  'curing-salt': 'curingSalt',
  accelerator: 'accelerator',
} as const satisfies Record<(typeof MIXING_ORDER)[number], keyof BrineSlice['actual'] | null>;

/** The brine in the order it is mixed: what to weigh, and what the scale showed. */
export function Mixing() {
  return (
    <Computed of={useShared($brine)}>
      {(computed) => (
        <ol class="mixing">
          {MIXING_ORDER.map((part) => (
            <li key={part} data-part={part}>
              <Part part={part} computed={computed} />
            </li>
          ))}
        </ol>
      )}
    </Computed>
  );
}

function Part({ part, computed }: { part: (typeof MIXING_ORDER)[number]; computed: BrineComputed }) {
  const key = KEY_OF[part];
  const label = BRINE_PARTS[part];
  if (key === null) return <p class="answer-label">{label}</p>;
  const path = `brine.actual.${key}`;
  const isCure = key === 'curingSalt';
  return (
    <>
      <Answer label={isCure ? say.curingSaltForTheNitriteWanted : label} {...saying(key, computed)} />
      <NumberField
        path={path}
        label={say.asWeighed(NAMES[key])}
        kind="mass"
        units={isCure ? ['g'] : MASSES}
        gramsOnly={isCure}
        findings={at(computed.findings, path)}
      />
    </>
  );
}

const NAMES: Readonly<Record<keyof BrineSlice['actual'], string>> = {
  water: say.water,
  phosphate: say.phosphate,
  salt: say.plainSalt,
  sugar: say.sugar,
  curingSalt: say.curingSalt,
  accelerator: say.accelerator,
};

const PLAN_KEYS = {
  water: 'waterG',
  phosphate: 'phosphateG',
  salt: 'plainSaltG',
  sugar: 'sugarG',
  curingSalt: 'curingSaltG',
  accelerator: 'acceleratorG',
} as const satisfies Record<keyof BrineSlice['actual'], keyof BrineParts>;

function saying(key: keyof BrineSlice['actual'], computed: BrineComputed) {
  const { values, slice } = computed;
  const grams = values.recipe?.[PLAN_KEYS[key]] ?? null;
  if (key === 'curingSalt') return cureSaying(computed);
  const wanted = { sugar: slice.sugar, accelerator: slice.acceleratorTarget, phosphate: slice.phosphate };
  const target = key === 'sugar' || key === 'accelerator' || key === 'phosphate' ? wanted[key] : null;
  if (target !== null && target.text.trim() === '')
    return { value: null, missing: say.noneIsWanted, worked: <p>{say.derivedMassBalance(HOW[key])}</p> };
  return {
    value: grams === null ? null : say.weigh(stepText(grams)),
    missing: missingText(key, computed),
    worked: <p>{say.derivedMassBalance(HOW[key])}</p>,
  };
}

function missingText(key: keyof BrineSlice['actual'], { values, slice }: BrineComputed): string {
  if (slice.method === null) return say.cannotTellChooseWayBrine;
  if (values.greenG === null) return say.cannotTellWeighTheMeat;
  if (values.recipe === null) return say.cannotTellWeighTheWater;
  if (key === 'salt' && values.recipe.refusal === 'cannot-dissolve') return say.noneNoneCanHelpNoWater;
  if (key === 'salt' && values.recipe.refusal !== null) return say.noneNoneCanHelpCuringSalt;
  if (key === 'salt') return say.cannotTellSettleSaltCuringSalt;
  return say.cannotTellAnInputIsMissing;
}

const HOW: Readonly<Record<keyof BrineSlice['actual'], string>> = {
  water: say.asYouWroteIt,
  salt: say.allSaltBrineLessWhatCuring,
  sugar: say.sugarWantedMeatWaterInjection,
  accelerator: say.acceleratorWantedMeatWater,
  phosphate: say.phosphateWantedMeatInjection,
  curingSalt: '',
};

function cureSaying({ values, slice, targetPpm, readabilityG }: BrineComputed) {
  const dose = values.recipe?.dose ?? null;
  const ground = {
    dose,
    targetPpm,
    ruleSet: values.ruleSet,
    hasProduct: slice.product !== null,
    ceilingPpm: values.ceilingPpmTarget,
    pack: values.pack,
    readabilityG,
    greenG: values.greenG,
  };
  const isShare = slice.method === 'inject' || slice.method === 'timed';
  const missing =
    slice.method === null
      ? say.cannotTellChooseWayBrine
      : slice.method === 'timed' && values.pickUpFraction === null
        ? say.noDoseNobodyHasWeighedHow
        : values.greenG !== null && values.recipe === null
          ? say.cannotTellWeighTheWater
          : whyNoDose(ground);
  return {
    value: dose?.ok ? say.weigh2(stepText(dose.doseG)) : null,
    missing,
    worked: (
      <>
        <p>
          {say.derivedMassBalance2(
            isShare ? say.nitriteWantedMeatShareBrine : say.nitriteWantedMeatWaterStrength,
          )}
        </p>
        {dose?.ok ? (
          <p>
            {say.beforeRoundingGNearestStep(
              fixedText(dose.exactG, 3),
              percentText(dose.weighingErrorFraction),
            )}
          </p>
        ) : null}
        {values.ceilingPpmTarget === null ? null : (
          <p>{say.noMoreMgKgCanAimed(fixedText(values.ceilingPpmTarget, 1, 'down'))}</p>
        )}
      </>
    ),
  };
}
