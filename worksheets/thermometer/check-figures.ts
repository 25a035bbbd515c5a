import type { Finding, Verdict } from '@larderwright/calc/findings';
import type { ThermometerSlice, ThermometerValues } from '@larderwright/calc/thermometer';

/** What one thermometer means at the limit of the plan. */
export interface AtLimit {
  readonly offsetC: number | null;
  readonly mustShow: { readonly tempC: number; readonly tempF: number } | null;
  /** Logs of the batch that are judged with it. */
  readonly logs: number;
}

/** What calc makes of the check of a batch's thermometers. */
export interface CheckFigures {
  readonly slice: ThermometerSlice;
  readonly values: ThermometerValues;
  readonly verdicts: readonly Verdict[];
  readonly findings: readonly Finding[];
  /** The limit in both scales; null while the plan names none: 70 °C then stands in for it. */
  readonly limit: string | null;
  readonly limitC: number;
  readonly atLimit: ReadonlyMap<string, AtLimit>;
}
