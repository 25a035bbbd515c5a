import { type BrineParts, type BrineSlice, MIXING_ORDER } from '@larderwright/calc/brine';
import { fixedText } from '@larderwright/calc/quantities';
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
      <Answer label={isCure ? 'Curing salt for the nitrite wanted' : label} {...saying(key, computed)} />
      <NumberField
        path={path}
        label={`${NAMES[key]}, as weighed`}
        kind="mass"
        units={isCure ? ['g'] : MASSES}
        gramsOnly={isCure}
        findings={at(computed.findings, path)}
      />
    </>
  );
}

const NAMES: Readonly<Record<keyof BrineSlice['actual'], string>> = {
  water: 'Water',
  phosphate: 'Phosphate',
  salt: 'Plain salt',
  sugar: 'Sugar',
  curingSalt: 'Curing salt',
  accelerator: 'Accelerator',
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
    return { value: null, missing: 'None is wanted', worked: <p>{HOW[key]} Derived: mass balance.</p> };
  return {
    value: grams === null ? null : `Weigh ${stepText(grams)}`,
    missing: missingText(key, computed),
    worked: <p>{HOW[key]} Derived: mass balance.</p>,
  };
}

function missingText(key: keyof BrineSlice['actual'], { values, slice }: BrineComputed): string {
  if (slice.method === null) return 'Cannot tell: choose the way of the brine';
  if (values.greenG === null) return 'Cannot tell: weigh the meat';
  if (values.recipe === null) return 'Cannot tell: weigh the water';
  if (key === 'salt' && values.recipe.refusal === 'cannot-dissolve')
    return 'None, and none can help: no water holds that much salt';
  if (key === 'salt' && values.recipe.refusal !== null)
    return 'None, and none can help: the curing salt alone brings more than is wanted';
  if (key === 'salt') return 'Cannot tell: settle salt and curing salt first';
  return 'Cannot tell: an input is missing';
}

const HOW: Readonly<Record<keyof BrineSlice['actual'], string>> = {
  water: 'As you wrote it.',
  salt: 'All the salt of the brine, less what the curing salt brings. A soak: salt wanted × what it is counted on. An injection: the pump must carry the salt of the pumped meat, s × (1 + pump × share that stays) ÷ (pump × share that stays).',
  sugar:
    'Sugar wanted × meat and water. For an injection or a timed brine: the share of the meat ÷ the share of brine it takes up.',
  accelerator:
    'Accelerator wanted × meat and water. For an injection or a timed brine: the share of the meat ÷ the share of brine it takes up.',
  phosphate:
    'Phosphate wanted × meat. For an injection or a timed brine: ÷ the share of brine the meat takes up.',
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
      ? 'Cannot tell: choose the way of the brine'
      : slice.method === 'timed' && values.pickUpFraction === null
        ? 'No dose: nobody has weighed how much of this brine the meat takes up'
        : values.greenG !== null && values.recipe === null
          ? 'Cannot tell: weigh the water'
          : whyNoDose(ground);
  return {
    value: dose?.ok ? `Weigh ${stepText(dose.doseG)}` : null,
    missing,
    worked: (
      <>
        <p>
          {isShare
            ? 'Nitrite wanted in the meat ÷ the share of brine it takes up × all of the brine ÷ strength of the curing salt.'
            : 'Nitrite wanted × meat and water ÷ strength of the curing salt.'}{' '}
          Derived: mass balance.
        </p>
        {dose?.ok ? (
          <p>
            Before rounding: {fixedText(dose.exactG, 3)} g. To the nearest step of the scale, and down where
            up would break the limit; the last digit is worth ± {percentText(dose.weighingErrorFraction)}.
          </p>
        ) : null}
        {values.ceilingPpmTarget === null ? null : (
          <p>
            No more than {fixedText(values.ceilingPpmTarget, 1, 'down')} mg/kg can be aimed at under this
            rule.
          </p>
        )}
      </>
    ),
  };
}
