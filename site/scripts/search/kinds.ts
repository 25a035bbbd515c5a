/** What a result can be, in the order of the buttons. */
export const KINDS = ['technique', 'caution', 'table', 'defect', 'glossary', 'worksheet'] as const;
export type Kind = (typeof KINDS)[number];
