import type { BrineMethod } from '@larderwright/calc/brine';
import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/brine/brine-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { DateField } from '../parts/date-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { SALT_BASES } from '../words/brine-names.ts';
import { choicesOf } from '../words/whole-muscle-names.ts';
import { MASSES } from './meat-fields.tsx';

interface FieldProps {
  findings: readonly Finding[];
}

/** Where nothing is soaked to an end, a share is of the meat; else of meat and water. */
function baseOf(method: BrineMethod | null): string {
  return method === 'inject' || method === 'timed' ? say.ofTheMeat : say.ofMeatAndWaterTogether;
}

/** What the brine is to be: water, salt, nitrite, sugar. */
export function BrineFields({ findings }: FieldProps) {
  const method = useAt('brine.method') as BrineMethod | null;
  const saltBase = useAt('brine.saltBase');
  const base = baseOf(method);
  return (
    <div class="fields">
      <NumberField
        path="brine.water"
        label={say.waterOfTheBrine}
        kind="mass"
        units={MASSES}
        hint={say.weighedLitreWaterKilogram}
        findings={at(findings, 'brine.water')}
      />
      {method === 'timed' ? (
        <NumberField
          path="brine.strength"
          label={say.strengthOfTheBrineSaltBy}
          kind="fraction"
          range={{ min: 0, max: 0.26395 }}
          findings={at(findings, 'brine.strength')}
        />
      ) : (
        <>
          <NumberField
            path="brine.saltTarget"
            label={say.saltWanted}
            kind="fraction"
            range={{ min: 0, max: 0.2 }}
            hint={method === 'inject' ? say.inThePumpedMeatFromAll : say.fromAllSources}
            findings={at(findings, 'brine.saltTarget')}
          />
          {method === 'inject' ? null : (
            <ChoiceField
              label={say.saltCountedOn}
              value={String(saltBase)}
              choices={choicesOf(SALT_BASES)}
              onChoose={(value) => editAt('brine.saltBase', value)}
              hint={say.theThreeDifferByATenth}
              findings={at(findings, 'brine.saltBase')}
            />
          )}
        </>
      )}
      <NumberField
        path="brine.nitriteTarget"
        label={say.nitriteWantedAsSodiumNitrite}
        kind="ppm"
        range={{ min: 0, max: 1000 }}
        hint={say.type0WhenNoneIsWanted(base)}
        findings={at(findings, 'brine.nitriteTarget')}
      />
      <NumberField
        path="brine.sugar"
        label={say.sugarWanted}
        kind="fraction"
        range={{ min: 0, max: 0.3 }}
        hint={base}
        findings={at(findings, 'brine.sugar')}
      />
    </div>
  );
}

/** Accelerator and phosphate. */
export function AdditiveFields({ findings }: FieldProps) {
  const method = useAt('brine.method') as BrineMethod | null;
  const form = useAt('brine.acceleratorForm');
  return (
    <div class="fields">
      <ChoiceField
        label={say.accelerator}
        value={typeof form === 'string' ? form : ''}
        empty={say.notChosen}
        choices={[
          { value: 'sodium-salt', label: say.sodiumAscorbateOrErythorbate },
          { value: 'acid', label: say.ascorbicOrErythorbicAcid },
        ]}
        onChoose={(value) => editAt('brine.acceleratorForm', value === '' ? null : value)}
        findings={at(findings, 'brine.acceleratorForm')}
      />
      <NumberField
        path="brine.acceleratorTarget"
        label={say.acceleratorWanted}
        kind="ppm"
        range={{ min: 0, max: 5000 }}
        hint={say.blankNoneGoesIn(baseOf(method))}
        findings={at(findings, 'brine.acceleratorTarget')}
      />
      <NumberField
        path="brine.phosphate"
        label={say.phosphateWantedOfTheMeat}
        kind="fraction"
        range={{ min: 0, max: 0.05 }}
        hint={say.blankNoneGoesIn2}
        findings={at(findings, 'brine.phosphate')}
      />
    </div>
  );
}

/** The brine as it lies: its age, its cold, and how long. */
export function KeepingFields({ findings }: FieldProps) {
  const use = useAt('brine.use');
  return (
    <div class="fields">
      <ChoiceField
        label={say.freshOrUsed}
        value={typeof use === 'string' ? use : ''}
        empty={say.notSaid}
        choices={[
          { value: 'fresh', label: say.mixedFresh },
          { value: 'used', label: say.meatHasLainInItBefore },
        ]}
        onChoose={(value) => editAt('brine.use', value === '' ? null : value)}
        findings={at(findings, 'brine.use')}
      />
      <DateField path="brine.mixedOn" label={say.mixedOn} findings={at(findings, 'brine.mixedOn')} />
      <DateField
        path="brine.startedOn"
        label={say.meatIntoTheBrineOn}
        findings={at(findings, 'brine.startedOn')}
      />
      <NumberField
        path="brine.brineTemp"
        label={say.coldOfTheBrine}
        kind="temperature"
        units={['C', 'F']}
        hint={say.warmestGetsOwnThermometer}
        findings={at(findings, 'brine.brineTemp')}
      />
      <NumberField
        path="brine.days"
        label={say.timeInTheBrine}
        kind="time"
        units={['d', 'h']}
        findings={at(findings, 'brine.days')}
      />
    </div>
  );
}

/** The pump and the pick-up: planned, and as the scale showed them. */
export function UptakeFields({ findings }: FieldProps) {
  const method = useAt('brine.method') as BrineMethod | null;
  const injects = method === null || method === 'inject' || method === 'inject-cover';
  const share = (key: string, label: string, hint: string) => (
    <NumberField
      path={`brine.${key}`}
      label={label}
      kind="fraction"
      hint={hint}
      findings={at(findings, `brine.${key}`)}
    />
  );
  const mass = (key: string, label: string, hint: string) => (
    <NumberField
      path={`brine.${key}`}
      label={label}
      kind="mass"
      units={MASSES}
      hint={hint}
      findings={at(findings, `brine.${key}`)}
    />
  );
  return (
    <div class="fields">
      {injects ? (
        <>
          {share('injection', say.brineInjectedOfTheMeat, say.byWeightBeforeItDrains)}
          {share('retained', say.shareOfItThatStaysIn, say.afterDraining)}
          {mass('afterInjection', say.allTheMeatAfterInjecting, say.drainedItOutranksThePlan)}
        </>
      ) : null}
      {method === 'inject' ? null : (
        <>
          {share('pickUp', say.brineTakenUpBySoakingOf, say.weighedPieceBeforeHasNoDefault)}
          {mass('afterBrine', say.allTheMeatOutOfThe, say.drainedItOutranksTheShareAbove)}
        </>
      )}
    </div>
  );
}

const OWN = [
  ...[
    'method',
    'federalMethod',
    'skinOff',
    'skinOn',
    'heaviest',
    'thickness',
    'meatWater',
    'water',
    'strength',
  ],
  ...[
    'saltTarget',
    'saltBase',
    'nitriteTarget',
    'sugar',
    'acceleratorForm',
    'acceleratorTarget',
    'phosphate',
  ],
  ...['use', 'mixedOn', 'startedOn', 'brineTemp', 'days'],
  ...['injection', 'retained', 'afterInjection', 'pickUp', 'afterBrine'],
  ...['water', 'salt', 'curingSalt', 'sugar', 'accelerator', 'phosphate'].map((key) => `actual.${key}`),
];

/** Fields a way of the brine hides: what is found there is told in the list instead. */
function hiddenFields(method: BrineMethod | null): readonly string[] {
  switch (method) {
    case 'inject':
      return ['federalMethod', 'strength', 'saltBase', 'pickUp', 'afterBrine'];
    case 'timed':
      return ['saltTarget', 'saltBase', 'injection', 'retained', 'afterInjection'];
    case 'equilibrium':
      return ['strength', 'injection', 'retained', 'afterInjection'];
    default:
      return ['strength'];
  }
}

/** Fields of the vat that show their own findings, by the way of the brine. */
export function ownFields(method: BrineMethod | null): readonly string[] {
  const hidden = hiddenFields(method);
  return OWN.filter((key) => !hidden.includes(key)).map((key) => `brine.${key}`);
}
