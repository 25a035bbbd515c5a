import { type AltitudePath, altitudePath } from '@larderwright/calc/batch';
import type { Finding } from '@larderwright/calc/findings';
import { useRef } from 'preact/hooks';
import * as say from '#words/parts/altitude-field.ts';
import { $batch } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { at } from './finding-list.tsx';
import { NumberField } from './number-field.tsx';

interface AltitudeFieldProps {
  /** Which worksheet asks: its own field is used while the height is typed nowhere. */
  asking: AltitudePath;
  hint: string;
  findings: readonly Finding[];
}

/** Heights of kitchens, mm as lengths are kept. */
const HEIGHTS = { min: -400_000, max: 5_500_000 };

/** The height above the sea: typed once, the thermometer check and the cook plan share it. */
export function AltitudeField({ asking, hint, findings }: AltitudeFieldProps) {
  const batch = useShared($batch);
  const held = useRef({ id: '', path: asking });
  // A field that is being cleared stays the field it is.
  if (held.current.id !== batch.id) held.current = { id: batch.id, path: altitudePath(batch, asking) };
  const { path } = held.current;
  return (
    <NumberField
      key={path}
      path={path}
      label={say.heightAboveSeaLevel}
      kind="length"
      units={['m', 'ft']}
      range={HEIGHTS}
      hint={hint}
      findings={at(findings, path)}
    />
  );
}
