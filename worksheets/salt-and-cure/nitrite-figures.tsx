import type { CureValues } from '@larderwright/calc/cure';
import { fixedText } from '@larderwright/calc/quantities';
import { Computed } from '../parts/computed.tsx';
import { gramsText } from '../parts/number-text.ts';
import { Worked } from '../parts/worked.tsx';
import { useShared } from '../state/use-shared.ts';
import { $cure } from './computed.ts';

/** mg/kg to the tenth; never shown lower than it is. */
const ppmText = (ppm: number | null) => (ppm === null ? 'cannot tell' : `${fixedText(ppm, 1, 'up')} mg/kg`);

/** Nitrite on both weights and in both forms, from every source. */
export function NitriteFigures() {
  return (
    <Computed of={useShared($cure)}>
      {({ cure }) => (
        <>
          <p class="say">
            {cure.inUse === 'as-weighed'
              ? 'By the weights off the scale; the plan stands in for lines not weighed yet.'
              : 'By the plan: nothing has been weighed yet.'}
          </p>
          <NitriteTable cure={cure} />
          <Carried cure={cure} />
          <Worked>
            <p>
              Grams of curing salt × its strength, and what cured ingredients bring by their makers, added up:{' '}
              {cure.nitriteG === null
                ? 'cannot tell'
                : `${fixedText(cure.nitriteG * 1000, 0)} mg as sodium nitrite`}
              . Divided by the kilograms it is counted on.
            </p>
            <p>
              As ion × 0.6668: the weight of nitrite in sodium nitrite (46.0055 ÷ 68.9953, derived from atomic
              weights).
            </p>
          </Worked>
        </>
      )}
    </Computed>
  );
}

function NitriteTable({ cure }: { cure: CureValues }) {
  const open = cure.highestPpmTotal !== cure.nitritePpmTotal || cure.highestPpmMeat !== cure.nitritePpmMeat;
  const weighed = cure.inUse === 'as-weighed';
  const rows = [
    {
      on: 'Meat block',
      massG: cure.meatBlockG,
      salt: cure.nitritePpmMeat,
      ion: cure.nitriteIonPpmMeat,
      highest: cure.highestPpmMeat,
      planned: cure.plannedPpmMeat,
    },
    {
      on: 'Everything in the bowl',
      massG: cure.totalG,
      salt: cure.nitritePpmTotal,
      ion: cure.nitriteIonPpmTotal,
      highest: cure.highestPpmTotal,
      planned: cure.plannedPpmTotal,
    },
  ];
  return (
    <div class="scroll">
      <table class="nitrite">
        <caption>Nitrite put in, from every source</caption>
        <thead>
          <tr>
            <th scope="col">Counted on</th>
            <th scope="col" class="n">
              Weight
            </th>
            <th scope="col" class="n">
              As sodium nitrite
            </th>
            <th scope="col" class="n">
              As nitrite ion
            </th>
            {open ? (
              <th scope="col" class="n">
                At worst, as sodium nitrite
              </th>
            ) : null}
            {weighed ? (
              <th scope="col" class="n">
                As planned
              </th>
            ) : null}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ on, massG, salt, ion, highest, planned }) => (
            <tr key={on}>
              <th scope="row">{on}</th>
              <td class="n">{massG === null ? 'not known' : gramsText(massG)}</td>
              <td class="n">{ppmText(salt)}</td>
              <td class="n">{ppmText(ion)}</td>
              {open ? <td class="n">{ppmText(highest)}</td> : null}
              {weighed ? <td class="n">{ppmText(planned)}</td> : null}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Carried({ cure }: { cure: CureValues }) {
  if (cure.carried.length === 0) return null;
  return (
    <ul class="carried">
      {cure.carried.map(({ lineId, name, lowG, highG, isBound }) => (
        <li key={lineId}>
          {name || 'Unnamed line'}:{' '}
          {isBound
            ? `its maker’s figure is not known; counted from nothing to ${highG === null ? 'no known end' : `${fixedText(highG * 1000, 1, 'up')} mg`}`
            : `brings ${fixedText(lowG * 1000, 1, 'up')} mg by its maker`}
        </li>
      ))}
    </ul>
  );
}
