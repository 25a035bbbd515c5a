import type { BlendMaterial, BlendQuality } from '@larderwright/calc/blend';
import type { Unit } from '@larderwright/calc/quantities';
import * as say from '#words/lean-and-fat/aim-fields.ts';
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
      empty={say.chooseAMaterial}
      choices={materials.map(({ id, name }, place) => ({
        value: id,
        label: name || say.material(place + 1),
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
        label={say.weightMakeFixedMaterials}
        kind="mass"
        units={MASSES}
        findings={useFindings('blend.total')}
      />
      <NumberField
        path="blend.fatTarget"
        label={say.fatWantedOfTheBlend}
        kind="fraction"
        hint={say.fatTestWouldFindLeanLooks}
        findings={useFindings('blend.fatTarget')}
      />
      <FreeChoice path="blend.freeA" label={say.firstFreeMaterial} />
      <FreeChoice path="blend.freeB" label={say.secondFreeMaterial} />
    </div>
  );
}

const BANDS: readonly { quality: BlendQuality; label: string }[] = [
  { quality: 'fat', label: say.fat },
  { quality: 'protein', label: say.protein },
  { quality: 'salt', label: say.salt },
  { quality: 'liver', label: say.liver },
  { quality: 'water-to-protein', label: say.waterToProtein },
];

/** What the cheapest blend must keep to. */
export function BandFields() {
  return (
    <>
      <p class="say">{say.writeWhatBlendMustKeepBlank}</p>
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
        label={say.atLeast(label)}
        kind={kind}
        findings={[...useFindings(`${path}.min`), ...at(answered, `${path}.min`)]}
      />
      <NumberField
        path={`${path}.max`}
        label={say.atMost(label)}
        kind={kind}
        findings={[...useFindings(`${path}.max`), ...at(answered, `${path}.max`)]}
      />
    </>
  );
}
