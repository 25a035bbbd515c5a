import type { BrineScale } from '@larderwright/calc/brine';
import { useEffect, useState } from 'preact/hooks';
import * as say from '#words/brine/converter.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { CouldNot } from '../parts/computed.tsx';
import { NotYet } from '../parts/not-yet.tsx';
import { TextBox } from '../parts/text-box.tsx';
import { BRINE_SCALES } from '../words/brine-names.ts';

const KEY = 'larderwright.brine-reading';
const SCALES = Object.entries(BRINE_SCALES).map(([value, { label, unit }]) => ({
  value,
  label: unit === '' ? label : `${label}, ${unit}`,
}));

interface Asked {
  readonly scale: BrineScale;
  readonly text: string;
}

interface Tools {
  readonly convert: typeof import('./convert-reading.ts').convertReading;
  readonly Rows: typeof import('./scale-rows.tsx').ScaleRows;
}

const isScale = (text: string): text is BrineScale => Object.hasOwn(BRINE_SCALES, text);

/** The reading last asked for on this device. */
function remembered(): Asked | null {
  try {
    const [scale = '', text = ''] = (localStorage.getItem(KEY) ?? '').split('\n');
    return isScale(scale) ? { scale, text } : null;
  } catch {
    return null;
  }
}

function remember({ scale, text }: Asked): void {
  try {
    localStorage.setItem(KEY, `${scale}\n${text}`);
  } catch {
    // Storage is blocked: the reading lasts as long as the page.
  }
}

/** A reading of any brine in one scale, told in all of them. It needs no batch and is part of none. */
export function Converter() {
  const [asked, setAsked] = useState<Asked>({ scale: 'salometer', text: '' });
  const [tools, setTools] = useState<Tools | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  useEffect(() => {
    const last = remembered();
    if (last) setAsked(last);
  }, []);
  const wanted = asked.text.trim() !== '';
  useEffect(() => {
    if (!wanted || tools) return;
    Promise.all([import('./convert-reading.ts'), import('./scale-rows.tsx')]).then(
      ([{ convertReading }, { ScaleRows }]) => setTools({ convert: convertReading, Rows: ScaleRows }),
      (error) => setFailure(error instanceof Error ? error.message : String(error)),
    );
  }, [wanted, tools]);
  const change = (next: Asked) => {
    setAsked(next);
    remember(next);
  };
  const found = tools?.convert(asked.scale, asked.text) ?? { state: 'blank' as const };
  return (
    <>
      <div class="fields">
        <ChoiceField
          label={say.measuredIn}
          value={asked.scale}
          choices={SCALES}
          onChoose={(scale) => isScale(scale) && change({ ...asked, scale })}
        />
        <TextBox
          label={say.reading}
          text={asked.text}
          onText={(text) => change({ ...asked, text })}
          hint={say.brineSaltWater60F15}
          problem={found.state === 'bad' ? found.problem : undefined}
        />
      </div>
      {failure !== null ? <CouldNot detail={failure} /> : null}
      {tools && found.state === 'ok' ? (
        <tools.Rows saltFraction={found.saltFraction} caption={say.theSameBrineInEveryScale} />
      ) : (
        <NotYet what={say.writeReadingSeeEveryScale} />
      )}
    </>
  );
}
