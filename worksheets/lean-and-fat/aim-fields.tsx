import type { BlendMaterial, BlendQuality } from '@larderwright/calc/blend';
import type { Unit } from '@larderwright/calc/quantities';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { $asked } from './asked.ts';
import { $blend } from './computed.ts';

const MASSES: readonly Unit[] = ['kg', 'g', 'lb'];

/** The findings of the blend at a field, and of the answer that was asked for. */
function useFindings(path: string) {
  const computed = useShared($blend);
  return computed.state === 'ready' ? at(computed.value.findings, path) : [];
}

function FreeChoice({ path, label }: { path: string; label: string }) {
  const materials = useAt('blend.materials') as readonly BlendMaterial[];
  const chosen = useAt(path);
  return (
    <ChoiceField
      label={label}
      value={typeof chosen === 'string' ? chosen : ''}
      empty="Choose a material"
      choices={materials.map(({ id, name }, place) => ({
        value: id,
        label: name || `Material ${place + 1}`,
      }))}
      onChoose={(id) => editAt(path, id === '' ? null : id)}
    />
  );
}

/** What the square aims at. */
export function AimFields() {
  return (
    <div class="fields">
      <NumberField
        path="blend.total"
        label="Weight to make, fixed materials included"
        kind="mass"
        units={MASSES}
        findings={useFindings('blend.total')}
      />
      <NumberField
        path="blend.fatTarget"
        label="Fat wanted, of the blend"
        kind="fraction"
        hint="Fat that a test would find. Lean that looks clean still holds some."
        findings={useFindings('blend.fatTarget')}
      />
      <FreeChoice path="blend.freeA" label="First free material" />
      <FreeChoice path="blend.freeB" label="Second free material" />
    </div>
  );
}

const BANDS: readonly { quality: BlendQuality; label: string }[] = [
  { quality: 'fat', label: 'Fat' },
  { quality: 'protein', label: 'Protein' },
  { quality: 'salt', label: 'Salt' },
  { quality: 'liver', label: 'Liver' },
  { quality: 'water-to-protein', label: 'Water to protein' },
];

/** What the cheapest blend must keep to. */
export function BandFields() {
  return (
    <>
      <p class="say">
        Write what the blend must keep to; a blank field binds nothing, the same figure twice is a target. The
        weight to make stands above.
      </p>
      <div class="bands">
        {BANDS.map(({ quality, label }) => (
          <BandField key={quality} quality={quality} label={label} />
        ))}
      </div>
    </>
  );
}

function BandField({ quality, label }: { quality: BlendQuality; label: string }) {
  const asked = useShared($asked);
  const slice = useAt('blend');
  const path = `blend.bands.${quality}`;
  const kind = quality === 'water-to-protein' ? 'ratio' : 'fraction';
  const answered = asked.state === 'answered' && asked.slice === slice ? asked.findings : [];
  return (
    <>
      <NumberField
        path={`${path}.min`}
        label={`${label}, at least`}
        kind={kind}
        findings={[...useFindings(`${path}.min`), ...at(answered, `${path}.min`)]}
      />
      <NumberField
        path={`${path}.max`}
        label={`${label}, at most`}
        kind={kind}
        findings={[...useFindings(`${path}.max`), ...at(answered, `${path}.max`)]}
      />
    </>
  );
}
