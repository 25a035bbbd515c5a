export const theWorkerStopped = 'the worker stopped';
export const aMessageCouldNotBeRead = 'a message could not be read';
