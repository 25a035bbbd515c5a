export const binder = 'Binder';
export const binder2 = (place: number) => `binder ${place}`;
export const countedAs = (name: string) => `Counted as, ${name}`;
