/** Says that room on this device is getting short, before it hurts; nothing while there is enough. */
import { deviceRoom, isShort } from './record/device_room';
import { strings } from './strings';

export function RoomNotice() {
  const room = deviceRoom.value;
  if (!room || !isShort(room)) return null;
  return (
    <p class="trouble" role="status">
      {strings.room.short}
    </p>
  );
}
