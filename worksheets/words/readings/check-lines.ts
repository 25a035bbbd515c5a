export const notRead = 'not read';
export const offAtTheLimit = (checked: string) => `Off at the limit: ${checked}`;
export const errorNotWrittenDown = 'error not written down';
export const errorC = (errorC: number) => `error ± ${errorC} °C`;
export const itsDisplayMustShow = (mustShow: string) => `its display must show ${mustShow}`;
