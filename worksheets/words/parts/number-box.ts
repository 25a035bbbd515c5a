export const unitOf = (label: string) => `Unit of ${label}`;
