export const noLimitTheRoomIsNo = 'No limit: the room is no warmer';
