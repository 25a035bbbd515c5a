import type { Mark, SourceId } from '../../sources/index.ts';

/** A rule that is no pair to hold, or stands beside the cook: shown for reading, not judged here. */
export interface PlaceRule {
  readonly place: string;
  readonly topic: string;
  readonly rule: string;
  readonly source: SourceId;
  readonly mark: Mark;
}

export const COOK_RULES_BY_PLACE: readonly PlaceRule[] = [
  {
    place: 'United States',
    topic: 'cooked beef, roast beef, corned beef',
    rule: '6.5-log Salmonella, or as sure',
    source: 'us-cooking-classes',
    mark: 'confirmed',
  },
  {
    place: 'United States',
    topic: 'fully cooked poultry',
    rule: '7-log Salmonella, or as sure',
    source: 'us-cooking-classes',
    mark: 'confirmed',
  },
  {
    place: 'United States',
    topic: 'mixed with any poultry',
    rule: '7-log Salmonella',
    source: 'us-cooking-classes',
    mark: 'memory',
  },
  {
    place: 'United States',
    topic: 'other ready-to-eat meat: ham, cured sausage, pâté, terrine',
    rule: 'no figure in the law; 6.5-log recommended, or 5-log with support',
    source: 'us-cooking-classes',
    mark: 'memory',
  },
  {
    place: 'United States',
    topic: 'patties, cooked uncured, 151–157 °F',
    rule: '41, 32, 26, 20, 16, 13, 10 s',
    source: 'us-9-cfr-318-23',
    mark: 'memory',
  },
  {
    place: 'United States',
    topic: 'raw animal food in a microwave',
    rule: '165 °F (74 °C), then stand covered 2 min',
    source: 'food-code-cooking',
    mark: 'confirmed',
  },
  {
    place: 'United States',
    topic: 'plant food for hot holding',
    rule: '135 °F (57 °C)',
    source: 'food-code-cooking',
    mark: 'confirmed',
  },
  {
    place: 'United States',
    topic: 'reheating for hot holding',
    rule: '165 °F (74 °C) for 15 s, within 2 h from 41 °F (5 °C)',
    source: 'food-code-reheating',
    mark: 'confirmed',
  },
  {
    place: 'United States',
    topic: 'cooking in two heatings',
    rule: 'first heating 60 min at most, cool at once, written procedure approved beforehand',
    source: 'food-code-reheating',
    mark: 'confirmed',
  },
  {
    place: 'United States',
    topic: 'hot holding',
    rule: '135 °F (57 °C); roasts 130 °F (54 °C)',
    source: 'food-code-reheating',
    mark: 'confirmed',
  },
  {
    place: 'Scotland',
    topic: 'reheating',
    rule: '82 °C, unless it would spoil the food',
    source: 'uk-reheating',
    mark: 'confirmed',
  },
  {
    place: 'New Zealand, older card',
    topic: 'poultry',
    rule: '65 °C 10 min, 70 °C 2 min, 75 °C reached',
    source: 'nz-food-control-2011',
    mark: 'confirmed',
  },
  {
    place: 'Ireland',
    topic: 'cook-chill, reheating',
    rule: '70 °C or more',
    source: 'fsai-gn15',
    mark: 'confirmed',
  },
  {
    place: 'France',
    topic: 'Salmonella',
    rule: 'P(70, z 10) of 40 min',
    source: 'dgal-pasteurisation-value',
    mark: 'confirmed',
  },
  {
    place: 'France',
    topic: '21 days chilled',
    rule: 'P(70, z 10) of 100 min',
    source: 'dgal-pasteurisation-value',
    mark: 'memory',
  },
  {
    place: 'France',
    topic: '42 days chilled',
    rule: 'P(70, z 10) of 1000 min',
    source: 'dgal-pasteurisation-value',
    mark: 'confirmed',
  },
  {
    place: 'European Union',
    topic: 'animal disease, not hygiene',
    rule: 'sealed F0 3; 80 °C or 70 °C throughout; or 65 °C with P(70, z 10) of 40 min',
    source: 'eu-2005-432',
    mark: 'confirmed',
  },
];
