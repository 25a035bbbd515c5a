import { newProbeLog } from '@larderwright/calc/batch';
import type { Finding } from '@larderwright/calc/findings';
import type { MouldItem } from '@larderwright/calc/mould';
import type { ProbeLog } from '@larderwright/calc/process';
import { blankEntry } from '@larderwright/calc/quantities';
import type { Thermometer } from '@larderwright/calc/thermometer';
import * as say from '#words/readings/probe-list.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { later } from '../parts/later.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { TextBox } from '../parts/text-box.tsx';
import { newId } from '../state/clock.ts';
import { addRow, removeRow } from '../state/rows.ts';
import { $batch, $life } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { changeLog, FIRST, logName } from './edits.ts';

const ProbeCheck = later(() => import('./probe-check.tsx').then((m) => m.ProbeCheck));

const LIST = 'process.logs';
const BLANK_LOG: ProbeLog = {
  id: FIRST,
  name: '',
  mouldId: null,
  probeName: '',
  offset: blankEntry('dC'),
  error: blankEntry('dC'),
  readings: [],
};

/** Every probe of the batch with its mould and its errors. The first stands ready to be filled in. */
export function ProbeList({ findings = [] }: { findings?: readonly Finding[] }) {
  const logs = useAt(LIST) as readonly ProbeLog[];
  const moulds = useAt('mould.moulds') as readonly MouldItem[];
  const checked = useShared($batch).thermometers?.thermometers ?? [];
  const waking = useShared($life) === 'waking';
  const shown = logs.length > 0 ? logs : [BLANK_LOG];
  return (
    <div class="probes">
      {shown.map((log, index) => (
        <ProbeCard
          // The first card keeps its place while the record behind it is born.
          key={index === 0 ? FIRST : log.id}
          log={log}
          name={logName(log, index)}
          moulds={moulds}
          checked={checked}
          findings={findings}
          removable={shown.length > 1 && log.readings.length === 0}
        />
      ))}
      <RemovedRowLine list={LIST} />
      <p class="buttons">
        <button
          type="button"
          disabled={waking}
          onClick={() => {
            // A second probe needs the first to exist, or it would become the first.
            if ($batch.get().process.logs.length === 0) addRow(LIST, newProbeLog(newId(), null));
            addRow(LIST, newProbeLog(newId(), null));
          }}
        >
          {say.addAnotherProbe}
        </button>
      </p>
    </div>
  );
}

interface ProbeCardProps {
  log: ProbeLog;
  name: string;
  moulds: readonly MouldItem[];
  checked: readonly Thermometer[];
  findings: readonly Finding[];
  removable: boolean;
}

function ProbeCard({ log, name, moulds, checked, findings, removable }: ProbeCardProps) {
  const named = checked.find(({ id }) => id === log.thermometerId);
  const path = `${LIST}.${log.id}`;
  const change = (patch: Partial<ProbeLog>) => changeLog(log.id, (before) => ({ ...before, ...patch }));
  return (
    <fieldset class="probe">
      <legend>{name}</legend>
      <div class="fields">
        <TextBox
          label={say.probe}
          hint={say.markedIceCheckCanFound}
          text={log.probeName}
          onText={(probeName) => change({ probeName })}
        />
        <TextBox
          label={say.whereItSits}
          hint={say.thermalCentreLastHeatLargest}
          text={log.name}
          onText={(where) => change({ name: where })}
        />
        {moulds.length > 0 ? (
          <ChoiceField
            label={say.mould}
            value={log.mouldId ?? ''}
            empty={say.notSaid}
            choices={moulds.map((mould, i) => ({ value: mould.id, label: mould.name || say.mould2(i + 1) }))}
            onChoose={(mouldId) => change({ mouldId: mouldId || null })}
          />
        ) : null}
        {checked.length > 0 ? (
          <ChoiceField
            label={say.checkedThermometer}
            value={named?.id ?? ''}
            empty={say.noneOffsetAndErrorTypedHere}
            choices={checked.map((each, i) => ({
              value: each.id,
              label: each.name.trim() || say.thermometer(i + 1),
            }))}
            onChoose={(thermometerId) => change({ thermometerId: thermometerId || null })}
            hint={say.itsCheckGivesOffsetAndError}
          />
        ) : null}
        {named ? null : (
          <>
            <NumberBox
              label={say.readsHighOrLowBy}
              kind="temperature-difference"
              units={['dC', 'dF']}
              entry={log.offset}
              onEntry={(offset) => change({ offset })}
              hint={say.iceCheck06MeltingIce}
              findings={at(findings, `${path}.offset`)}
            />
            <NumberBox
              label={say.error}
              kind="temperature-difference"
              units={['dC', 'dF']}
              entry={log.error}
              onEntry={(error) => change({ error })}
              hint={say.whatProbeMayStillOffEither}
              findings={at(findings, `${path}.error`)}
            />
          </>
        )}
      </div>
      {named ? <ProbeCheck logId={log.id} /> : null}
      {removable ? (
        <p class="buttons">
          <button type="button" onClick={() => removeRow(LIST, log.id, name)}>
            {say.remove(name)}
          </button>
        </p>
      ) : null}
    </fieldset>
  );
}
