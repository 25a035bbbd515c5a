import type { BrineMethod } from '@larderwright/calc/brine';
import type { Finding } from '@larderwright/calc/findings';
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
  return method === 'inject' || method === 'timed' ? 'Of the meat.' : 'Of meat and water together.';
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
        label="Water of the brine"
        kind="mass"
        units={MASSES}
        hint="Weighed. A litre of water is a kilogram."
        findings={at(findings, 'brine.water')}
      />
      {method === 'timed' ? (
        <NumberField
          path="brine.strength"
          label="Strength of the brine, salt by weight"
          kind="fraction"
          range={{ min: 0, max: 0.26395 }}
          findings={at(findings, 'brine.strength')}
        />
      ) : (
        <>
          <NumberField
            path="brine.saltTarget"
            label="Salt wanted"
            kind="fraction"
            range={{ min: 0, max: 0.2 }}
            hint={method === 'inject' ? 'In the pumped meat, from all sources.' : 'From all sources.'}
            findings={at(findings, 'brine.saltTarget')}
          />
          {method === 'inject' ? null : (
            <ChoiceField
              label="Salt counted on"
              value={String(saltBase)}
              choices={choicesOf(SALT_BASES)}
              onChoose={(value) => editAt('brine.saltBase', value)}
              hint="The three differ by a tenth to a third."
              findings={at(findings, 'brine.saltBase')}
            />
          )}
        </>
      )}
      <NumberField
        path="brine.nitriteTarget"
        label="Nitrite wanted, as sodium nitrite"
        kind="ppm"
        range={{ min: 0, max: 1000 }}
        hint={`${base} Type 0 when none is wanted.`}
        findings={at(findings, 'brine.nitriteTarget')}
      />
      <NumberField
        path="brine.sugar"
        label="Sugar wanted"
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
        label="Accelerator"
        value={typeof form === 'string' ? form : ''}
        empty="Not chosen"
        choices={[
          { value: 'sodium-salt', label: 'Sodium ascorbate or erythorbate' },
          { value: 'acid', label: 'Ascorbic or erythorbic acid' },
        ]}
        onChoose={(value) => editAt('brine.acceleratorForm', value === '' ? null : value)}
        findings={at(findings, 'brine.acceleratorForm')}
      />
      <NumberField
        path="brine.acceleratorTarget"
        label="Accelerator wanted"
        kind="ppm"
        range={{ min: 0, max: 5000 }}
        hint={`${baseOf(method)} Blank: none goes in.`}
        findings={at(findings, 'brine.acceleratorTarget')}
      />
      <NumberField
        path="brine.phosphate"
        label="Phosphate wanted, of the meat"
        kind="fraction"
        range={{ min: 0, max: 0.05 }}
        hint="Blank: none goes in."
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
        label="Fresh or used"
        value={typeof use === 'string' ? use : ''}
        empty="Not said"
        choices={[
          { value: 'fresh', label: 'Mixed fresh' },
          { value: 'used', label: 'Meat has lain in it before' },
        ]}
        onChoose={(value) => editAt('brine.use', value === '' ? null : value)}
        findings={at(findings, 'brine.use')}
      />
      <DateField path="brine.mixedOn" label="Mixed on" findings={at(findings, 'brine.mixedOn')} />
      <DateField
        path="brine.startedOn"
        label="Meat into the brine on"
        findings={at(findings, 'brine.startedOn')}
      />
      <NumberField
        path="brine.brineTemp"
        label="Cold of the brine"
        kind="temperature"
        units={['C', 'F']}
        hint="The warmest it gets, by its own thermometer."
        findings={at(findings, 'brine.brineTemp')}
      />
      <NumberField
        path="brine.days"
        label="Time in the brine"
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
          {share('injection', 'Brine injected, of the meat', 'By weight, before it drains.')}
          {share('retained', 'Share of it that stays in', 'After draining.')}
          {mass('afterInjection', 'All the meat after injecting', 'Drained. It outranks the plan.')}
        </>
      ) : null}
      {method === 'inject' ? null : (
        <>
          {share(
            'pickUp',
            'Brine taken up by soaking, of the meat',
            'Weighed on a piece before. It has no default.',
          )}
          {mass('afterBrine', 'All the meat out of the brine', 'Drained. It outranks the share above.')}
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
