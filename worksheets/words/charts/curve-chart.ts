export const hoursMinutesSinceItWentIn = 'hours : minutes since it went in';
