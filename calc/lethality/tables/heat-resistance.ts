import type { Mark, SourceId } from '../../sources/index.ts';
import type { HeatResistance } from '../lethal-rate.ts';

/** Heat resistance of one organism in one food, as published. For reading and comparing, never for a verdict. */
export interface HeatResistanceRow {
  readonly id: string;
  readonly organism: string;
  readonly food: string;
  /** D, min, at a temperature. */
  readonly points: readonly HeatResistance[];
  /** z as printed, °C; null where the paper prints none. */
  readonly zC: number | null;
  readonly paper: string;
  readonly mark: Mark;
  readonly note: string;
}

/** Source of the table as a whole; each row names its paper. */
export const HEAT_RESISTANCE_SOURCE: SourceId = 'heat-resistance-papers';

const d = (tempC: number, dMin: number): HeatResistance => ({ tempC, dMin });

/** Use a row only inside, or close to, the temperatures measured. Salt, fat, phosphate and slow heating all raise D. */
export const HEAT_RESISTANCE: readonly HeatResistanceRow[] = [
  {
    id: 'salmonella-ground-beef',
    organism: 'Salmonella',
    food: 'ground beef',
    points: [d(51.6, 61.5), d(57.2, 4), d(62.7, 0.65)],
    zC: null,
    paper: 'Goodfellow & Brown 1978, J. Food Prot. 41:598',
    mark: 'confirmed',
    note: 'Basis of the United States roast table. Mid-points of printed ranges.',
  },
  {
    id: 'salmonella-fsis-line',
    organism: 'Salmonella',
    food: 'cooked beef, line behind the 6.5-log column',
    points: [d(65.56, 0.1718)],
    zC: 5.556,
    paper: '67 s at 150 °F for 6.5-log, z = 10 °F',
    mark: 'derived',
    note: 'Does not give back every printed row.',
  },
  {
    id: 'salmonella-chicken-liver',
    organism: 'Salmonella, four strains',
    food: 'chicken liver',
    points: [d(55, 9.01), d(57.5, 2.36), d(60, 0.82), d(62.5, 0.23)],
    zC: 4.8,
    paper: 'Qu et al. 2024, Poultry Science, doi 10.1016/j.psj.2024.103961',
    mark: 'confirmed',
    note: 'Its printed time at 70 °C does not follow from these figures and is not carried.',
  },
  {
    id: 'campylobacter-chicken-liver',
    organism: 'Campylobacter, three strains',
    food: 'chicken liver',
    points: [d(55, 2.22), d(60, 0.19)],
    zC: 4.6,
    paper: 'Qu et al. 2024',
    mark: 'confirmed',
    note: 'Only the end points are printed.',
  },
  {
    id: 'salmonella-broth',
    organism: 'Salmonella, eight serotypes',
    food: 'chicken broth',
    points: [d(55, 4.87), d(58, 2.72), d(60, 1.3), d(62, 0.41)],
    zC: null,
    paper: 'Juneja et al. 2001, J. Food Sci. 66:146',
    mark: 'confirmed',
    note: 'In meat the same strains stood more heat: not for meat.',
  },
  {
    id: 'salmonella-beef-60',
    organism: 'Salmonella, eight serotypes',
    food: 'beef',
    points: [d(60, 5.48)],
    zC: null,
    paper: 'Juneja et al. 2001, same paper',
    mark: 'memory',
    note: 'Pork 6.65, turkey 4.82, chicken 5.2 min, also from memory.',
  },
  {
    id: 'salmonella-senftenberg-turkey',
    organism: 'Salmonella Senftenberg',
    food: 'ground turkey',
    points: [d(55, 211.35), d(60, 13.24), d(65, 3.43)],
    zC: null,
    paper: 'Thermal Food Processing, ch. 7, Table 7.1',
    mark: 'confirmed',
    note: 'A heat-resistant strain, not the usual design organism.',
  },
  {
    id: 'listeria-ham',
    organism: 'Listeria monocytogenes',
    food: 'ham',
    points: [d(55, 17.8), d(60, 1.82)],
    zC: 5.05,
    paper: 'Carlier et al. 1996, J. Food Prot. 59:588',
    mark: 'confirmed',
    note: 'Selective medium; the authors ask for caution.',
  },
  {
    id: 'listeria-ham-heat-shock',
    organism: 'Listeria monocytogenes, 42 °C for 1 h before',
    food: 'ham',
    points: [d(55, 19.2), d(60, 3.48)],
    zC: 6.74,
    paper: 'Carlier et al. 1996',
    mark: 'confirmed',
    note: 'The heat shock nearly doubled D at 60 °C.',
  },
  {
    id: 'listeria-emulsion-slow',
    organism: 'Listeria monocytogenes',
    food: 'meat emulsion, heated at 0.5 °C/min',
    points: [d(60, 12.95), d(63, 5.4), d(66, 2.3)],
    zC: null,
    paper: 'Quintavalla & Campanini 1991',
    mark: 'confirmed',
    note: 'A slow come-up, as in a terrine or ham.',
  },
  {
    id: 'listeria-70-2',
    organism: 'Listeria monocytogenes',
    food: 'chicken, steak, carrot',
    points: [d(70, 2 / 6)],
    zC: null,
    paper: 'NZ MPI Technical Paper 2016/05: 6-log in 2 min at 70 °C',
    mark: 'derived',
    note: 'D is 2 min ÷ 6.',
  },
  {
    id: 'ecoli-beef',
    organism: 'E. coli O157:H7, four strains',
    food: 'ground beef, 90 % lean',
    points: [d(55, 21.13), d(57.5, 4.95), d(60, 3.17), d(62.5, 0.93), d(65, 0.39)],
    zC: 6.0,
    paper: 'Juneja et al. 1997, Int. J. Food Microbiol. 35:231',
    mark: 'confirmed',
    note: '',
  },
  {
    id: 'perfringens-cells-beef',
    organism: 'C. perfringens, growing cells',
    food: 'ground beef',
    points: [d(55, 21.6), d(57.5, 10.2), d(60, 5.3), d(62.5, 1.6)],
    zC: null,
    paper: 'Juneja & Marmer 1998, Food Microbiol. 15:281',
    mark: 'confirmed',
    note: 'Printed z 6.22–6.77 for all treatments. Its spores survive every pasteurisation.',
  },
  {
    id: 'faecalis-convention',
    organism: 'Enterococcus faecalis',
    food: 'cooked cured meat',
    points: [d(70, 2.95)],
    zC: 10,
    paper: 'French pasteurisation-value practice',
    mark: 'confirmed',
    note: 'A convention: three isolates measured in 2012 gave z 5.0–7.5 °C.',
  },
  {
    id: 'hev-medium',
    organism: 'Hepatitis E virus',
    food: 'cell culture medium',
    points: [d(70, 1.5 / 3.6)],
    zC: null,
    paper: 'Johne et al. 2016, doi 10.1128/AEM.00951-16: 3.6-log in 1.5 min',
    mark: 'derived',
    note: 'Virus curves tail; in a liver product 71 °C took 20 min.',
  },
  {
    id: 'botulinum-cold-growing',
    organism: 'C. botulinum, cold-growing, spores',
    food: 'reference process',
    points: [d(90, 10 / 6)],
    zC: 9,
    paper: 'Chilled Food Association 2006: 6-log in 10 min at 90 °C',
    mark: 'derived',
    note: 'z = 10 °C from 90 °C upward; United States guidance takes 7 °C below it.',
  },
];
