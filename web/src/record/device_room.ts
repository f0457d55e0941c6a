/** How much room the browser gives the record on this device, and how much of it is taken. */
import { signal } from '@preact/signals';
import { openedSite } from './site_record';

export interface DeviceRoom {
  usedBytes: number;
  allBytes: number;
}

/** Undefined where the browser does not say. */
export const deviceRoom = signal<DeviceRoom | undefined>(undefined);

/** The user is told once this share is taken, or so little is left. */
const fullShare = 0.8;
const leastBytes = 50 * 1024 * 1024;

export function isShort({ usedBytes, allBytes }: DeviceRoom): boolean {
  return usedBytes > fullShare * allBytes || allBytes - usedBytes < leastBytes;
}

/** Asks the browser how much room there is now. */
export async function measureRoom(): Promise<void> {
  try {
    const { usage, quota } = await navigator.storage.estimate();
    deviceRoom.value =
      usage !== undefined && quota ? { usedBytes: usage, allBytes: quota } : undefined;
  } catch {
    deviceRoom.value = undefined;
  }
}

/** Measures now and whenever the record has grown. */
export function followRoom(): void {
  void measureRoom();
  openedSite.subscribe(() => void measureRoom());
}
