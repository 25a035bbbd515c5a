export const failHoldDoNotServe = (title: string) => `FAIL, hold, do not serve: ${title}`;
