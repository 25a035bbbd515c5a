import type { ReadDevicePart } from '@larderwright/calc/exchange';
import { wallOf } from '../parts/clock-text.ts';
import { figureText } from '../state/oven-records.ts';
import { INCOMING_OVEN_WORDS, DEVICE_PART_WORDS as WORDS } from '../words/device-part.ts';
import type { IncomingOven } from './incoming-ovens.ts';

interface OvenTableProps {
  device: ReadDevicePart;
  ovens: readonly IncomingOven[];
  onChange: (ovens: readonly IncomingOven[]) => void;
}

/** What a file holds beside its batches. */
export function OvenTable({ device, ovens, onChange }: OvenTableProps) {
  const tick = (place: number, taken: boolean) =>
    onChange(ovens.map((each) => (each.place === place ? { ...each, taken } : each)));
  return (
    <>
      {ovens.length > 0 ? (
        <section class="desk-incoming" tabindex={0} aria-label={WORDS.title}>
          <table>
            <thead>
              <tr>
                <th scope="col">{WORDS.take}</th>
                <th scope="col">{WORDS.oven}</th>
                <th scope="col">{WORDS.figures}</th>
                <th scope="col">{WORDS.against}</th>
              </tr>
            </thead>
            <tbody>
              {ovens.map(({ place, oven, state, taken }) => (
                <tr key={place} data-incoming-oven={state}>
                  <td>
                    <label class="desk-tick">
                      <input
                        type="checkbox"
                        checked={taken}
                        aria-label={`${WORDS.take} ${oven.name}`}
                        onChange={(event) => tick(place, event.currentTarget.checked)}
                      />
                    </label>
                  </td>
                  <th scope="row">
                    {oven.name} · {wallOf(oven.at)?.date ?? ''}
                  </th>
                  <td>
                    × {figureText(oven.filmFactor)}, × {figureText(oven.heatingFactor)},{' '}
                    {figureText(oven.mediumShiftC)} °C
                  </td>
                  <td>{INCOMING_OVEN_WORDS[state]}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ) : null}
      {device.unreadable > 0 ? <p class="field-problem">{WORDS.damaged(device.unreadable)}</p> : null}
      {device.unknown > 0 ? <p class="say">{WORDS.newer}</p> : null}
    </>
  );
}
