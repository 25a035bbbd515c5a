/** What slicing may have to say. */
export type SlicingFindingId =
  | 'slicing.outside-habit'
  | 'slicing.portion-outside-habit'
  | 'slicing.ends-are-all'
  | 'slicing.no-slice'
  | 'slicing.fewer-than-planned';
