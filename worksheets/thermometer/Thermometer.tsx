import { newThermometerSlice } from '@larderwright/calc/thermometer';
import * as say from '#words/thermometer/Thermometer.ts';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { CheckCard } from './check-card.tsx';
import { $thermometers } from './computed.ts';
import { PlaceFields } from './place-fields.tsx';
import { ThermometerList } from './thermometer-list.tsx';

const ToKitchen = later(() => import('./to-kitchen.tsx').then((m) => m.ToKitchen));

provideSlice('thermometers', newThermometerSlice);

/** Thermometer check: ice and boil at the height of the kitchen, and what each display must show. */
export default function Thermometer({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($thermometers);
  const ready = computed.state === 'ready' ? computed.value : null;
  const findings = ready?.findings ?? [];
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="place">
        <h2 id="place">{say.whereWaterBoilsHere}</h2>
        <PlaceFields findings={findings} />
      </section>
      <section aria-labelledby="check">
        <h2 id="check">{say.theCheck}</h2>
        <ThermometerList findings={findings} />
        <ToKitchen />
      </section>
      <CardDesk about={say.recordCheckWhatEachThermometer}>
        {(paper) => <CheckCard computed={ready} paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}
